import { describe, expect, it } from 'vitest'
import { reviewFuse } from '../../support/told.js'
import { changed, outcomesOn } from '../cases.js'

const review = (marking: string, prescribed = 'T500mAL250V') =>
  reviewFuse({ marking, prescribed, position: 'mains', circuit: { voltageV: 230, currentA: 0.3 } })

describe('what is written of a link beside its marking', () => {
  it.each(['T500mAL250V blown', 'T500mAL250V (open)', 'burnt T500mAL250V', 'T500mAL250V durchgebrannt'])(
    '“%s” is no link to keep: the cause is found first',
    (marking) => {
      expect(review(marking).outcome).toBe('find-out-first')
    },
  )
  it.each(['T500mAL250V wrapped in foil', 'T500mAL250V bridged', 'T500mAL250V, copper wire across', 'nail'])(
    '“%s” breaks nothing and is replaced by what is prescribed',
    (marking) => {
      expect(review(marking).outcome).toBe('replace')
    },
  )
  it('does not take ordinary words for damage', () => {
    for (const marking of ['T500mAL250V', 'T500mAL250V ceramic, wire leads', 'T500mAL250V (spare)'])
      expect(review(marking).outcome).toBe('keep')
  })
  it('reaches the check of the whole chain', () => {
    const label = 'INPUT 230V 50Hz FUSE T500mAL250V'
    expect(outcomesOn('fuse', changed({ supply: { label, fuse: 'T500mAL250V blown' } }))).toEqual(['unknown'])
    expect(outcomesOn('fuse', changed({ supply: { label, fuse: 'T500mAL250V in foil' } }))).toEqual(['stop'])
  })
})
