import { describe, expect, it } from 'vitest'
import { heldAgainst } from '../../server/plan/limits.js'

describe('a reading that may not rise', () => {
  const limits = { low: null, high: null, notAbove: 'together.lamp-volts' }

  // from the head: a meter with its leads turned shows the same volts with a minus
  it.each([
    [12, 12, 'within'],
    [12.1, 12, 'risen'],
    [-12.1, 12, 'risen'],
    [-11, -12, 'within'],
    [-13, -12, 'risen'],
  ])('is held by its size: %d after %d is %s', (value, before, as) => {
    expect(heldAgainst(value, limits, before).as).toBe(as)
  })
})
