import { describe, expect, it } from 'vitest'
import { cordRows } from '../../server/tables/cordRows.js'
import { largestPlugFuseFor, minimumAreaFor } from '../../server/tables/cords.js'

/** IEC 60335-1 table 11 as reproduced in a pump manual, p. 87; the area in a short cord by BS EN 60950-1 table 3B and IEC 60799. */
describe('the smallest conductor', () => {
  it.each([
    { currentA: 0.5, lengthM: 1.8, areaMm2: 0.5 },
    { currentA: 3, lengthM: 2, areaMm2: 0.5 },
    { currentA: 3, lengthM: 2.1, areaMm2: 0.75 },
    { currentA: 3, lengthM: null, areaMm2: 0.75 },
    { currentA: 3.1, lengthM: 1, areaMm2: 0.75 },
    { currentA: 6, lengthM: 5, areaMm2: 0.75 },
    { currentA: 6.1, lengthM: 2, areaMm2: 0.75 },
    { currentA: 10, lengthM: 3, areaMm2: 1 },
    { currentA: 10, lengthM: null, areaMm2: 1 },
    { currentA: 16, lengthM: 3, areaMm2: 1.5 },
    { currentA: 16, lengthM: 2, areaMm2: 1 },
  ])('for $currentA A and $lengthM m is $areaMm2 mm²', ({ currentA, lengthM, areaMm2 }) => {
    expect(minimumAreaFor(currentA, lengthM)?.areaMm2).toBe(areaMm2)
  })

  it('is undefined above 16 A', () => {
    expect(minimumAreaFor(16.1, 1)).toBeUndefined()
  })
})

/** The lowest figure of the rows of one size. */
const leastA = (of: (row: (typeof cordRows)[number]) => boolean): number =>
  Math.min(...cordRows.filter(of).map(({ ratedA }) => ratedA))

describe('what a flexible cord carries', () => {
  it.each([
    { areaMm2: 0.5, ratedA: 3, source: 'PVC insulated types (HD 21)' },
    { areaMm2: 0.75, ratedA: 6, source: 'PVC insulated types (HD 21)' },
    { areaMm2: 1, ratedA: 10, source: 'PVC insulated types (HD 21)' },
    { areaMm2: 1.25, ratedA: 12, source: '関西電気保安協会, cable05; 13 A in the UK' },
    { areaMm2: 1.5, ratedA: 15, source: 'pat-testing-training.net; 16 A elsewhere' },
  ])('$areaMm2 mm² carries $ratedA A ($source)', ({ areaMm2, ratedA }) => {
    expect(leastA((row) => row.areaMm2 === areaMm2)).toBe(ratedA)
  })

  /** NEC table 400.5(A), two current-carrying conductors, as quoted in a UL appliance standard. */
  it.each([
    { awg: 18, ratedA: 10 },
    { awg: 17, ratedA: 12 },
    { awg: 16, ratedA: 13 },
    { awg: 14, ratedA: 18 },
  ])('$awg AWG carries $ratedA A', ({ awg, ratedA }) => {
    expect(leastA((row) => row.awg === awg)).toBe(ratedA)
  })
})

/** BS 1363-1 table 2 as quoted at v7.heyodo.com. */
describe('the largest plug fuse', () => {
  it.each([
    { areaMm2: 0.5, largestFuseA: 3 },
    { areaMm2: 0.75, largestFuseA: 13 },
    { areaMm2: 1, largestFuseA: 13 },
    { areaMm2: 1.25, largestFuseA: 13 },
    { areaMm2: 1.5, largestFuseA: 13 },
  ])('on $areaMm2 mm² is $largestFuseA A', ({ areaMm2, largestFuseA }) => {
    expect(largestPlugFuseFor(areaMm2)?.largestFuseA).toBe(largestFuseA)
  })
})
