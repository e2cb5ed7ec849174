import fc from 'fast-check'
import { expect, it, vi } from 'vitest'
import { byBest, pairing, supplySide } from '../../server/bench/shelf/matches.js'
import { matrixRow } from '../../server/bench/shelf/matrix.js'
import { deviceReady, supplyReady } from '../../server/bench/shelf/prepared.js'
import { prepareSite } from '../../server/chain/case/prepareSite.js'
import type { Device, Supply } from '../../server/chain/case/request.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

const kind = fc.constantFrom('dc' as const, 'ac' as const, null)
const voltageV = fc.constantFrom(5, 9, 12, -12, 12.5, 19)
const currentA = fc.option(fc.constantFrom(0.2, 0.5, 1, 2, 5))
const plug = fc.option(
  fc.record({
    outerMm: fc.option(fc.constantFrom(5.5, 4)),
    innerMm: fc.option(fc.constantFrom(2.1, 2.5)),
    polarity: fc.option(fc.constantFrom('centre-positive' as const, 'centre-negative' as const)),
  }),
)
const supply: fc.Arbitrary<Supply> = fc.record({
  input: fc.option(fc.constantFrom({ voltages: [{ min: 100, max: 240 }] }, { voltages: [{ min: 120, max: 120 }] })),
  technology: fc.constantFrom('switch-mode' as const, 'transformer' as const, null),
  regulated: fc.option(fc.boolean()),
  protectionClass: fc.constantFrom('II' as const, null),
  outputs: fc.array(fc.record({ kind, voltageV, currentA, powerW: fc.option(fc.constantFrom(6, 24)) }), {
    maxLength: 2,
  }),
  plug,
  measured: fc.option(
    fc.record({ offLoadV: fc.option(fc.constantFrom(12, 17)), loadedV: fc.option(fc.constantFrom(12, 9)) }),
  ),
  lead: fc.option(fc.constantFrom({ lengthM: 1.5, areaMm2: 0.5 }, { lengthM: 20, areaMm2: 0.1 })),
})
const device: fc.Arbitrary<Device> = fc.record({
  inputs: fc.array(
    fc.record({
      kind,
      voltageV,
      currentA,
      currentIs: fc.option(fc.constantFrom('plate' as const, 'measured' as const)),
    }),
    { maxLength: 2 },
  ),
  regulatedNeeded: fc.option(fc.boolean()),
  jack: plug,
})

it('gives each cell the outcome that judging the pair alone gives, and the topic it comes from', () => {
  const site = prepareSite({ country: 'DE' })
  fc.assert(
    fc.property(supply, fc.array(device, { minLength: 1, maxLength: 12 }), (facts, machines) => {
      const ready = supplyReady(facts)
      const side = supplySide(site, ready)
      const prepared = machines.map(deviceReady)
      const row = matrixRow(site, ready, prepared)
      prepared.forEach((one, column) => {
        const { counts } = pairing(side, one)
        const worst = ['stop', 'unknown', 'caution', 'clear'][counts.findIndex((count) => count > 0)] ?? 'unknown'
        expect(row[column]?.outcome).toBe(worst)
        const against = pairing(side, one).against
        if (against) expect(row[column]?.topic).toBe(against.topic)
      })
    }),
    { numRuns: 400 },
  )
})

it('orders by fewer stops, then fewer unknowns, then fewer cautions', () => {
  const of = (...counts: number[]) => ({ verdict: 'take-care' as const, against: null, counts })
  const ordered = [of(0, 0, 0, 9), of(0, 0, 0, 8), of(0, 0, 2, 9), of(0, 1, 0, 9), of(1, 0, 0, 9)]
  expect([...ordered].reverse().sort(byBest)).toEqual(ordered)
})
