import { describe, expect, it } from 'vitest'
import { minimumLoadRows } from '../../server/tables/minimumLoad.js'
import { speedRows } from '../../server/tables/speeds.js'
import { variableTransformerRows } from '../../server/tables/variableTransformer.js'

describe('tables of first power', () => {
  it('give the speed of what follows the mains as the one frequency over the other: 50 / 60 and 60 / 50', () => {
    const following = speedRows.filter(({ what }) => !/brushes/.test(what))
    expect(following.length).toBe(speedRows.length - 1)
    for (const { what, madeHz, getsHz, ratio } of following) expect(ratio, what).toBeCloseTo(getsHz / madeHz, 4)
    expect(speedRows.find(({ what }) => /brushes/.test(what))?.ratio).toBe(1)
  })

  // 1 A of 14 A on each +12 V, 1.5 A of 18 A, 1 A of 22 A, a tenth
  it('give least loads as shares of the rating', () => {
    const shares = minimumLoadRows.flatMap(({ share }) => share ?? [])
    expect(shares).toEqual([0.07, 0.083, 0.045, 0.1, 0.1])
    for (const [at, share] of [1 / 14, 1.5 / 18, 1 / 22].entries()) expect(shares[at]).toBeCloseTo(share, 2)
  })

  // 50 V of 115 V, 90 V of 120 V; 45 V of 120 V
  it('give start voltages as shares of the mains', () => {
    const of = (input: string) => variableTransformerRows.find((row) => row.input === input)
    expect(of('switch-mode')?.startsFrom).toBeCloseTo(50 / 115, 2)
    expect(of('switch-mode')?.startsTo).toBeCloseTo(90 / 120, 2)
    expect(of('ferroresonant')?.startsFrom).toBeCloseTo(45 / 120, 1)
  })
})
