import { expect, it } from 'vitest'
import { duration } from '../../server/words/quantity.js'
import { tell } from '../../server/words/tell.js'

it.each([
  [0.5, '500\u00a0ms'],
  [60, '60\u00a0s'],
  [120, '2\u00a0min'],
  [900, '15\u00a0min'],
  [7200, '2\u00a0h'],
  [14_400, '4\u00a0h'],
])('%d s is said as %s', (value, text) => {
  expect(tell(duration(value))).toBe(text)
})
