import { z } from 'zod'
import { whatWasSeen } from '../../tables/whatWasSeen.js'
import { examineCheck } from '../examineCheck.js'
import * as answers from '../schemas/answers.js'
import { examineSchema } from '../schemas/examine.js'
import { type Call, call } from './call.js'

/** From what was seen to what to examine. */
export const examineCalls: readonly Call[] = [
  call({
    method: 'get',
    path: '/api/observations',
    group: 'Examining',
    summary: 'What can be seen, heard, smelt, read or have happened',
    answer: z.array(answers.observationAnswer),
    run: () =>
      whatWasSeen.map(({ key, words, kinds, place, atOnce, holds }) => ({
        key,
        words,
        appliesTo: kinds,
        place,
        atOnce,
        holdsPower: holds,
      })),
  }),
  call({
    method: 'post',
    path: '/api/examine',
    group: 'Examining',
    summary: 'From what was seen to what to examine, in order',
    body: examineSchema,
    answer: answers.examineAnswer,
    run: ({ lamps, ...asked }) => examineCheck({ ...asked, lamps: lamps ? { lamps, arrangement: 'series' } : null }),
  }),
]
