import { describe, expect, it } from 'vitest'
import { regulationFor } from '../../server/tables/transformerRegulation.js'

describe('regulation of small transformers', () => {
  it.each([
    { ratedVA: 2.7, loadedV: 9.37, openV: 11.2, source: 'OpenEnergyMonitor, second adaptor report' },
    { ratedVA: 6, loadedV: 9.09, openV: 11.36, source: 'OpenEnergyMonitor, adaptor report of 2013' },
    { ratedVA: 7, loadedV: 7, openV: 9, source: 'PTC7 data sheet, 7 V winding' },
    { ratedVA: 7, loadedV: 9, openV: 11.5, source: 'PTC7 data sheet, 9 V winding' },
    { ratedVA: 7, loadedV: 12, openV: 15.6, source: 'PTC7 data sheet, 12 V winding' },
    { ratedVA: 7, loadedV: 15, openV: 19.2, source: 'PTC7 data sheet, 15 V winding' },
    { ratedVA: 7, loadedV: 18, openV: 23.6, source: 'PTC7 data sheet, 18 V winding' },
    { ratedVA: 7, loadedV: 22, openV: 28.3, source: 'PTC7 data sheet, 22 V winding' },
  ])('$ratedVA VA, $openV V open against $loadedV V loaded, lies in the range ($source)', (seen) => {
    const range = regulationFor(seen.ratedVA)
    const seenRegulation = Number((seen.openV / seen.loadedV - 1).toFixed(2))
    expect(seenRegulation).toBeGreaterThanOrEqual(Math.floor((range?.low ?? 1) * 100) / 100)
    expect(seenRegulation).toBeLessThanOrEqual(range?.high ?? 0)
  })

  /** mpja.com, power transformers: 20 to 30 % under 30 VA. */
  it.each([10, 15, 25])('%d VA allows for a rise of 30 %%', (ratedVA) => {
    expect(regulationFor(ratedVA)?.high).toBeGreaterThanOrEqual(0.3)
  })

  /** Bremer Transformatoren, off-load voltage: 15 % from 63 to 250 VA. */
  it.each([64, 100, 250])('%d VA may rise by 15 %% off load', (ratedVA) => {
    expect(regulationFor(ratedVA)?.allowedRise).toBe(0.15)
  })

  /** IEC 61558-2-6, from memory. */
  it.each([
    { ratedVA: 10, allowedRise: 1 },
    { ratedVA: 11, allowedRise: 0.5 },
    { ratedVA: 25, allowedRise: 0.5 },
    { ratedVA: 26, allowedRise: 0.2 },
    { ratedVA: 63, allowedRise: 0.2 },
    { ratedVA: 300, allowedRise: 0.1 },
  ])('$ratedVA VA may rise by $allowedRise', ({ ratedVA, allowedRise }) => {
    expect(regulationFor(ratedVA)?.allowedRise).toBe(allowedRise)
  })
})
