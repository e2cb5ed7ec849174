import { describe, expect, it } from 'vitest'
import { toldApart } from '../../server/physics/toldApart.js'

describe('how well an examination tells causes apart', () => {
  it.each([
    [[], 5, 0, 'it tells of none'],
    [[1], 1, 0.5, '1 − 2/4'],
    [[1, 1], 1, 2 / 3, '1 − 3/9'],
    [[9], 22, 396 / 961, '1 − (81 + 484) / 961'],
  ])('%j against %d is %d: %s', (told, rest, expected) => expect(toldApart(told, rest)).toBeCloseTo(expected, 12))

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a weight of %d', (weight) => {
    expect(() => toldApart([weight], 1)).toThrow(RangeError)
    expect(() => toldApart([1], weight)).toThrow(RangeError)
  })
})
