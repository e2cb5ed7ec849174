import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { pairing, supplySide } from '../../server/bench/shelf/matches.js'
import { matrixRow } from '../../server/bench/shelf/matrix.js'
import { deviceReady, supplyReady } from '../../server/bench/shelf/prepared.js'
import { assess } from '../../server/chain/assess.js'
import { judgeSupplySide } from '../../server/chain/assessPrepared.js'
import { prepareCase } from '../../server/chain/case/case.js'
import { prepareSite } from '../../server/chain/case/prepareSite.js'
import type { Device, Supply } from '../../server/chain/case/request.js'
import { byWorst, outcomes } from '../../server/chain/finding.js'
import { mainsOfSupply } from '../../server/chain/judging.js'
import { among, anyRequest, maybe } from '../chain/anyRequest.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

/** Left to the check, as the pages say: a shelf keeps no cords. */
const ofTheCord = ['socket', 'cord', 'inlet']

/** Transformers with an AC output, among others, and machines whose plates name a frequency and a motor. */
const anySupply: fc.Arbitrary<Supply> = fc.oneof(
  anyRequest.map(({ supply }) => supply),
  fc.record({
    label: among('PRI 230V 50Hz 12VA SEC 9V~ 1A', 'INPUT 120V 60Hz 10W OUTPUT 12V AC 0.5A', ''),
    technology: maybe(among('transformer' as const, 'switch-mode' as const)),
    outputs: maybe(among<Supply['outputs']>([{ kind: 'ac', voltageV: 9, currentA: 1 }])),
  }),
)
const anyDevice: fc.Arbitrary<Device> = fc.oneof(
  anyRequest.map(({ device }) => device),
  fc.record({
    label: among('CLOCK 9V AC 60Hz 0.3A', 'TURNTABLE 9V~ 50Hz 0.3A', '12V AC 60Hz 0.5A', 'MOTOR 9V~ 400Hz'),
    mains: maybe(
      fc.record({ motor: maybe(among('synchronous' as const, 'induction' as const, 'universal' as const)) }),
    ),
  }),
)
const anyCountry = maybe(among('DE', 'US', 'JP', 'BR', 'SA', 'GB'))

describe('a pair of the shelf', () => {
  it('is never judged better than the check of the same pair, the cord set aside', () => {
    fc.assert(
      fc.property(anySupply, anyDevice, anyCountry, (supply, device, country) => {
        const site = prepareSite({ country })
        const [ready, machine] = [supplyReady(supply), deviceReady(device)]
        const checked = assess({ site: { country }, supply, device })
          .findings.filter(({ topic }) => !ofTheCord.includes(topic))
          .toSorted(byWorst)
        const worst = checked[0]?.outcome ?? 'unknown'
        const { counts } = pairing(supplySide(site, ready), machine)
        expect(counts).toEqual(outcomes.map((one) => checked.filter(({ outcome }) => outcome === one).length))
        expect(matrixRow(site, ready, [machine])[0]?.outcome).toBe(worst)
      }),
      { numRuns: 200 },
    )
  })

  // 60 Hz / 50 Hz: a winding for 60 Hz at its full voltage has 1.2 times its flux, and a clock loses a sixth of an hour
  it('hears of the frequency that its machine gets through a transformer', () => {
    const supply = supplyReady({
      label: 'PRI 230V 50Hz 12VA SEC 9V~ 1A',
      technology: 'transformer',
      protectionClass: 'II',
    })
    const side = supplySide(prepareSite({ country: 'DE' }), supply)
    const of = (label: string) => pairing(side, deviceReady({ label }))
    const [, , cautions = 0] = of('CLOCK 9V AC 50Hz 0.3A').counts
    expect(of('CLOCK 9V AC 60Hz 0.3A').counts[2]).toBeGreaterThan(cautions)
  })

  it('looks at the machine wherever a topic of the mains side does', () => {
    fc.assert(
      fc.property(anySupply, anyDevice, anyCountry, (supply, device, country) => {
        const { site, supply: ready, device: machine } = prepareCase({ site: { country }, supply, device })
        const of = (one: typeof machine | null) =>
          judgeSupplySide(site, ready, null, null, one, mainsOfSupply).map(({ topic, outcome }) => [topic, outcome])
        expect(of(machine)).toEqual(of(null))
      }),
      { numRuns: 200 },
    )
  })
})
