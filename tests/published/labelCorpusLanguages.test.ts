import { describe, expect, it } from 'vitest'
import { comparePlates } from '../support/platesByHand.js'

describe('plates in many languages, annotated by hand', () => {
  const { plates, rightShare, misreadShare, summary } = comparePlates(
    new URL('./labelCorpusLanguages.csv', import.meta.url),
  )

  it('has every row of the list', () => {
    expect(plates).toBe(81)
  })

  it('reads at least 97 % of the fields as annotated and at most 1 % wrongly', () => {
    console.log(summary)
    expect(rightShare).toBeGreaterThanOrEqual(0.97)
    expect(misreadShare).toBeLessThanOrEqual(0.01)
  })
})
