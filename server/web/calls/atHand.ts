import { keepAtHand, readAtHand } from '../../bench/atHand/atHand.js'
import { atHandSchema } from '../schemas/atHand.js'
import { type Call, call } from './call.js'

/** What is at hand, one for the installation. A check sent as JSON never reads it. */
export const atHandCalls: readonly Call[] = [
  call({
    method: 'get',
    path: '/api/at-hand',
    group: 'At hand',
    summary: 'What is at hand: lamps, resistors, sources, meters, and the place',
    answer: atHandSchema,
    run: (_body, { store }) => readAtHand(store),
  }),
  call({
    method: 'put',
    path: '/api/at-hand',
    group: 'At hand',
    summary: 'Say what is at hand, in place of what was said before',
    body: atHandSchema,
    answer: atHandSchema,
    run: (sent, { store }) => keepAtHand(store, sent),
  }),
]
