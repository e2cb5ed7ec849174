import { describe, expect, it } from 'vitest'
import { prepareSite } from '../../server/chain/case/prepareSite.js'
import { prepareSupply } from '../../server/chain/case/prepareSupply.js'
import { fuseRequestOf } from '../../server/chain/fuse.js'
import { reachOf } from '../../server/chain/reach.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { changed, findingsOn, onlyFinding } from './cases.js'

const plate = (fuse: string) => `INPUT 230V~ 50Hz 0.2A\nFUSE ${fuse}\nOUTPUT 12V DC 2A`

describe('fuse', () => {
  it('is not spoken of where no marking is given', () => {
    expect(findingsOn('fuse', changed({}))).toEqual([])
  })

  it('finds no conflict where what is fitted is what the plate prescribes', () => {
    const finding = onlyFinding('fuse', changed({ supply: { label: plate('T500mAH250V'), fuse: 'T500mAH250V' } }))
    expect(finding.outcome).not.toBe('stop')
  })

  it.each([
    { name: 'a larger rating', fitted: 'T2AH250V' },
    { name: 'a voltage under the mains', fitted: 'T500mAH125V' },
  ])('stops $name than the plate’s', ({ fitted }) => {
    expect(onlyFinding('fuse', changed({ supply: { label: plate('T500mAH250V'), fuse: fitted } })).outcome).toBe('stop')
  })

  it('does not know without a prescription', () => {
    expect(onlyFinding('fuse', changed({ supply: { fuse: 'T500mAH250V' } })).outcome).toBe('unknown')
  })

  it('does not know without any voltage', () => {
    expect(
      onlyFinding('fuse', changed({ site: { country: null }, supply: { input: null, fuse: 'T500mAH250V' } })).outcome,
    ).toBe('unknown')
  })

  it('does not know without a site, unless it is wrong everywhere', () => {
    const at = (fuse: string) =>
      onlyFinding('fuse', changed({ site: { country: null }, supply: { label: plate('T500mAH250V'), fuse } })).outcome
    expect(at('T500mAH250V')).toBe('unknown')
    expect(at('T2AH250V')).toBe('stop')
  })

  it('puts the check as a question to the fuse review: marking, prescription, voltage, current, former voltage', () => {
    const supply = prepareSupply({ label: 'INPUT 120V~ 60Hz 0.5A FUSE T1AL250V', fuse: 'T2AL250V' }, readPlate)
    const [mains] = prepareSite({ country: 'DE' }).systems
    if (!mains) throw new Error('no mains')
    expect(fuseRequestOf({ supply, reach: reachOf(mains, null) })).toEqual({
      marking: 'T2AL250V',
      prescribed: 'T1AL250V',
      position: 'mains',
      // 120 V × 0.5 A = 60 VA; 60 VA / 230 V
      circuit: { voltageV: 230, currentA: expect.closeTo(0.26087, 5) },
      formerVoltageV: 120,
      live: null,
    })
  })
})
