import { assess } from '../../../server/chain/assess.js'
import { assessPrepared } from '../../../server/chain/assessPrepared.js'
import { prepareSite } from '../../../server/chain/prepareSite.js'
import type { CheckRequest } from '../../../server/chain/request.js'
import { readPlate } from '../../../server/plate/readPlate.js'
import { deviceReady, supplyReady } from '../../../server/shelf/prepared.js'
import { figure, type Measured, type Part } from './measured.js'
import { perSecond } from './rate.js'
import { plates, situations, typedIn } from './situations.js'
import { targets } from './targets.js'

function row<Case>(
  told: Pick<Measured, 'what' | 'target'>,
  cases: readonly Case[],
  work: (one: Case) => unknown,
): Measured {
  const found = perSecond((turn) => work(cases[turn % cases.length] as Case))
  return {
    ...told,
    unit: 'a second',
    value: found.perSecond,
    note: `${figure(found.least)} to ${figure(found.most)} in 5 runs`,
  }
}

const prepared = ({ site, supply, device, cord, converter }: CheckRequest) =>
  [prepareSite(site), supplyReady(supply), deviceReady(device), cord, converter] as const

export const chain: Part = {
  name: 'chain',
  title: 'Judging and reading, in process',
  method:
    'The four worked cases of the start page in eight countries each, by the processor time it takes: every topic is judged and every finding worded. Plates: those annotated by hand in `tests/published/labelCorpus.csv`.',
  measure: async () => [
    row(targets.assess, situations.map(typedIn), assess),
    row({ what: '`assess` with both plates to be read' }, situations, assess),
    row({ what: 'judging and wording alone, everything prepared' }, situations.map(prepared), (one) =>
      assessPrepared(...one),
    ),
    row(targets.plates, plates, (text) => readPlate(text, 'supply')),
  ],
}
