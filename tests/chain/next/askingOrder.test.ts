import fc from 'fast-check'
import { expect, it } from 'vitest'
import { runs } from '../../support/long.js'
import { answersToSettle, askedCase, type Order } from './askedCases.js'

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

it('asked in the order of next, generated cases are settled by fewer answers than in the order of the form', {
  timeout: 120_000,
}, () => {
  const cases = fc.sample(askedCase, { numRuns: runs(200), seed: 17 })
  const answers = (order: Order) => mean(cases.map((one) => answersToSettle(one, order)))
  const [given, form] = [answers('given'), answers('form')]
  expect(given).toBeGreaterThan(1)
  expect(given).toBeLessThan(form)
})
