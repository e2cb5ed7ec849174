import { describe, expect, it } from 'vitest'
import { countFields } from '../support/plateFields.js'
import { benches } from './collected/benches.js'
import { eastern } from './collected/eastern.js'
import { european } from './collected/european.js'
import { fresh } from './collected/fresh.js'
import { last } from './collected/last.js'
import { machinePlates, modern } from './collected/modern.js'
import { oldSupplies } from './collected/oldSupplies.js'
import { lookAlikes, wornPrint } from './collected/wornPrint.js'

describe('plates of many makers and years, annotated from what a person reads', () => {
  const lists = { oldSupplies, european, eastern, wornPrint, lookAlikes, modern, machinePlates, fresh, last, benches }
  const plates = Object.values(lists).flat()

  it('has at least 510 plates', () => {
    expect(plates.length).toBeGreaterThanOrEqual(510)
  })

  it('reads at least 97 % of the fields as annotated and at most 0.5 % wrongly', () => {
    const { rightShare, misreadShare, summary } = countFields(plates)
    console.log(summary)
    expect(rightShare).toBeGreaterThanOrEqual(0.97)
    expect(misreadShare).toBeLessThanOrEqual(0.005)
  })
})
