import { z } from 'zod'
import { answerCheck } from '../../chain/answer.js'
import { prepareSite } from '../../chain/case/prepareSite.js'
import { prepareSupply } from '../../chain/case/prepareSupply.js'
import { chooseConverter } from '../../chain/chooseConverter.js'
import { leadLoss } from '../../chain/leadLoss.js'
import { facts, type Placed } from '../../facts/boxes.js'
import { checkSchema } from '../../facts/check.js'
import { readPlate } from '../../plate/readPlate.js'
import * as answers from '../schemas/answers.js'
import { chooseConverterSchema, leadDropSchema } from '../schemas/check.js'
import { labelRequest } from '../schemas/label.js'
import { type Call, call } from './call.js'

const factJson = ({ key, fact, list }: Placed) => ({
  key,
  label: fact.label,
  question: fact.question,
  unit: 'unit' in fact ? fact.unit : null,
  choices: ('choices' in fact ? (fact.choices ?? []) : []).map(({ value, label, drawing }) => ({
    value,
    label,
    drawing: drawing ?? null,
  })),
  link: fact.link,
  howToFindOut: fact.findOut.map(({ how }) => how).join(' '),
  needsPower: fact.findOut.every(({ power }) => power !== 'none'),
  many: list !== null,
  address: fact.address,
})

/** From plates and facts to the judgement. */
export const checkCalls: readonly Call[] = [
  call({
    method: 'post',
    path: '/api/label',
    group: 'Check',
    summary: 'Read the words of a rating plate',
    body: labelRequest,
    answer: answers.labelAnswer,
    run: ({ text, of }) => readPlate(text, of ?? 'supply'),
  }),
  call({
    method: 'post',
    path: '/api/check',
    group: 'Check',
    summary: 'Judge a supply, a machine and a place',
    body: checkSchema,
    answer: answers.checkAnswer,
    run: answerCheck,
  }),
  call({
    method: 'get',
    path: '/api/facts',
    group: 'Check',
    summary: 'Every fact that a check may hold',
    answer: z.array(answers.factAnswer),
    run: () => facts.map(factJson),
  }),
  call({
    method: 'post',
    path: '/api/converter',
    group: 'Check',
    summary: 'Size and kind of converter a supply would need',
    body: chooseConverterSchema,
    answer: answers.converterAnswer,
    run: ({ site, supply }) => chooseConverter(prepareSite(site), prepareSupply(supply, readPlate)),
  }),
  call({
    method: 'post',
    path: '/api/lead-drop',
    group: 'Check',
    summary: 'Voltage lost in a lead',
    body: leadDropSchema,
    answer: answers.leadDropAnswer,
    run: leadLoss,
  }),
]
