import { reviewFuse } from '../../chain/fuse/review.js'
import { readFuseMarking } from '../../plate/fuseMarking.js'
import { fuseAnswer, fuseMarkingAnswer } from '../schemas/answers.js'
import { fuseMarkingRequest, fuseRequest } from '../schemas/fuse.js'
import { type Call, call } from './call.js'

/** Fuse-links: their marking, and whether one may stay. */
export const fuseCalls: readonly Call[] = [
  call({
    method: 'post',
    path: '/api/fuse',
    group: 'Fuse',
    summary: 'Review a fuse-link',
    body: fuseRequest,
    answer: fuseAnswer,
    run: reviewFuse,
  }),
  call({
    method: 'post',
    path: '/api/fuse/marking',
    group: 'Fuse',
    summary: 'Read a marking',
    body: fuseMarkingRequest,
    answer: fuseMarkingAnswer,
    run: ({ text }) => readFuseMarking(text),
  }),
]
