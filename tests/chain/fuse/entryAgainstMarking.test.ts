import { describe, expect, it } from 'vitest'
import { reviewFuse } from '../../support/told.js'

const circuit = { voltageV: 230, currentA: 0.5 }

describe('what was entered against what the marking reads', () => {
  it.each([
    ['T10AL250V', { ratedA: 1 }, 'find-out-first'],
    ['F1AL250V', { characteristic: 'T' }, 'find-out-first'],
    ['T1AL250V', { ratedA: 1, characteristic: 'T' }, 'keep'],
  ] as const)('%s with %o: %s', (marking, fuse, outcome) => {
    expect(reviewFuse({ marking, fuse, prescribed: 'T1AL250V', position: 'mains', circuit }).outcome).toBe(outcome)
  })
})
