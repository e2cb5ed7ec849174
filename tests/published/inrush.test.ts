import { describe, expect, it } from 'vitest'
import { inrush, inrushLimiter } from '../../server/physics/inrush.js'
import { bridgeDiode } from '../../server/tables/seriesLamp.js'
import { meanFrom, rmsFrom, simulate } from '../support/simulator.js'

const s17 = {
  mainsV: 230,
  frequencyHz: 50,
  seriesOhm: 5.5,
  bulkF: 220e-6,
  loadOhm: 1000,
  durationS: 0.2,
  diode: bridgeDiode,
}

describe('inrush of a bridge and a capacitor', () => {
  // worked example S17: ngspice, 230 V 50 Hz, 5.5 Ω, 220 µF, 1000 Ω, diodes IS 1e-9 A, N 1.2, 0.02 Ω
  it.each([
    { switchAt: 'crest' as const, peakA: 58.43, firstHalfCycleI2t: 1.927, totalI2t: 2.057 },
    { switchAt: 'zero' as const, peakA: 16.72, firstHalfCycleI2t: 0.894, totalI2t: 1.02 },
  ])('S17: switched at $switchAt it passes $peakA A and $totalI2t A²s', ({ switchAt, ...printed }) => {
    const found = inrush({ ...s17, switchAt })
    // half a unit of the last printed digit and the simulator's own tolerance of 0.1 %
    for (const [name, value] of Object.entries(printed))
      expect(Math.abs((found[name as keyof typeof found] as number) / value - 1)).toBeLessThan(0.001)
    for (const [name, value] of Object.entries({ meanV: 309.2, rippleV: 11.48, rmsA: 0.7806 }))
      expect(Math.abs((found[name as keyof typeof found] as number) / value - 1), name).toBeLessThan(0.001)
  })

  it('S17 by hand: 59.14 A, 11.64 J and 2.116 A²s, with the diodes left out', () => {
    const { resistanceOhm, energyJ } = inrushLimiter(Math.SQRT2 * 230, 220e-6, 59.14)
    expect(resistanceOhm).toBeCloseTo(5.5, 2)
    expect(energyJ).toBeCloseTo(11.64, 2)
    const bare = inrush({
      ...s17,
      loadOhm: null,
      switchAt: 'crest',
      diode: { ...bridgeDiode, emission: 1e-6, seriesOhm: 1e-9 },
    })
    expect(bare.peakA).toBeCloseTo(59.14, 2)
    expect(bare.totalI2t).toBeLessThan(2.116)
  })

  // worked example S20: Ametherm selection page: 480 V a.c. + 10 %, 2350 µF, 30 A gives 746.59 V, 655.00 J, 25 Ω
  it('S20: 528 V, 2350 µF and 30 A call for 24.89 Ω and 655 J', () => {
    const { resistanceOhm, energyJ } = inrushLimiter(746.59, 2350e-6, 30)
    expect(resistanceOhm).toBeCloseTo(24.89, 2)
    // the page prints 655.00 J; its own 746.59 V gives 654.9 J
    expect(energyJ).toBeCloseTo(654.9, 1)
  })

  it.each([
    { mainsV: 120, frequencyHz: 60, seriesOhm: 2.5, bulkF: 470e-6, loadOhm: 200, switchAt: 'crest' as const },
    { mainsV: 120, frequencyHz: 60, seriesOhm: 2.5, bulkF: 470e-6, loadOhm: 200, switchAt: 'zero' as const },
    { mainsV: 230, frequencyHz: 50, seriesOhm: 16, bulkF: 47e-6, loadOhm: 4700, switchAt: 'crest' as const },
    { mainsV: 230, frequencyHz: 50, seriesOhm: 16, bulkF: 47e-6, loadOhm: 4700, switchAt: 'zero' as const },
  ])(
    'agrees with ngspice within 1 %: $mainsV V, $seriesOhm Ω, $bulkF F, at $switchAt',
    async (circuit) => {
      const durationS = 0.2
      const simulated = await simulate(
        [
          'bridge inrush',
          `Vmains line 0 SIN(0 ${Math.SQRT2 * circuit.mainsV} ${circuit.frequencyHz} 0 0 ${circuit.switchAt === 'crest' ? 90 : 0})`,
          `Rs line ac ${circuit.seriesOhm}`,
          `.model dr D(IS=${bridgeDiode.saturationA} N=${bridgeDiode.emission} RS=${bridgeDiode.seriesOhm} CJO=20p)`,
          'D1 ac bus dr',
          'D2 0 bus dr',
          'D3 ret ac dr',
          'D4 ret 0 dr',
          `Cbulk bus ret ${circuit.bulkF} ic=0`,
          `Rload bus ret ${circuit.loadOhm}`,
          'Rfloat ret 0 1e9',
          `.tran 5u ${durationS} 0 5u uic`,
          '.end',
        ].join('\n'),
      )
      const found = inrush({ ...circuit, durationS, diode: bridgeDiode })
      const currentA = simulated.of('i(vmains)')
      const bus = simulated.of('v(bus)').map((volt, at) => volt - (simulated.of('v(ret)')[at] as number))
      const fromS = durationS - 1 / circuit.frequencyHz
      const window = bus.filter((_, at) => (simulated.timeS[at] as number) >= fromS)
      const theirs = {
        peakA: Math.max(...currentA.map(Math.abs)),
        totalI2t: rmsFrom(simulated.timeS, currentA, 0) ** 2 * durationS,
        meanV: meanFrom(simulated.timeS, bus, fromS),
        rippleV: Math.max(...window) - Math.min(...window),
        rmsA: rmsFrom(simulated.timeS, currentA, fromS),
      }
      for (const [name, value] of Object.entries(theirs))
        expect(Math.abs((found[name as keyof typeof found] as number) / value - 1), name).toBeLessThan(0.01)
    },
    60_000,
  )

  it('refuses what is not more than 0, NaN included', () => {
    for (const bad of [0, -1, Number.NaN])
      for (const name of ['mainsV', 'frequencyHz', 'seriesOhm', 'bulkF', 'loadOhm', 'durationS'])
        expect(() => inrush({ ...s17, switchAt: 'crest', [name]: bad }), `${name} ${bad}`).toThrow(RangeError)
  })
})
