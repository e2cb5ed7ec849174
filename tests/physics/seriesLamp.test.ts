import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LampString, stringAt, stringCurrentA } from '../../server/physics/lampString.js'
import {
  judgeStart,
  largestPower,
  operatingPoint,
  quadratureLampV,
  type SeriesLoad,
} from '../../server/physics/seriesLamp.js'
import { switchOn } from '../../server/physics/transient.js'
import { type LampSetup, lampsFault, lampsOf } from '../../server/plan/firstPower/lamps.js'
import { bridgeDiode, settledBand } from '../../server/tables/seriesLamp.js'
import { lampChoice, lampReading, seriesLamp } from '../support/told.js'

const lamp = fc.record({
  ratedV: fc.double({ min: 90, max: 260, noNaN: true }),
  ratedW: fc.double({ min: 10, max: 1000, noNaN: true }),
})

const setup: fc.Arbitrary<LampSetup> = fc
  .record({
    mains: fc.record({
      voltageV: fc.double({ min: 50, max: 500, noNaN: true }),
      frequencyHz: fc.double({ min: 16, max: 400, noNaN: true }),
    }),
    lamps: fc.array(lamp, { minLength: 1, maxLength: 3 }),
    arrangement: fc.constantFrom('series' as const, 'parallel' as const),
  })
  .filter((candidate) => lampsFault(candidate) === null)

const load: fc.Arbitrary<SeriesLoad> = fc.oneof(
  fc.record({
    kind: fc.constant('resistance' as const),
    resistanceOhm: fc.double({ min: 0.001, max: 1e9, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant('constant-power' as const),
    powerW: fc.double({ min: 1e-6, max: 5000, noNaN: true }),
    minimumV: fc.option(fc.double({ min: 0, max: 500, noNaN: true })),
  }),
  fc.constant({ kind: 'short' as const }),
  fc.constant({ kind: 'open' as const }),
)

/** Every number anywhere in an answer. */
function numbers(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  if (value === null || typeof value !== 'object') return []
  return Object.values(value).flatMap(numbers)
}

const one = (ratedV: number, ratedW: number): LampString =>
  lampsOf({ lamps: [{ ratedV, ratedW }], arrangement: 'series' })

describe('the largest power', () => {
  it.each([
    [230, 60, 230],
    [120, 100, 120],
    [240, 25, 230],
    [230, 150, 115],
  ])('of a %d V %d W lamp on %d V is found by trying every lamp voltage, and no more', (ratedV, ratedW, mainsV) => {
    const lamps = one(ratedV, ratedW)
    const tries = 400_000
    let most = 0
    for (let at = 0; at <= tries; at += 1) {
      const lampV = (mainsV * at) / tries
      most = Math.max(most, stringCurrentA(lamps, lampV) * (mainsV - lampV))
    }
    const { powerW, lampV } = largestPower(lamps, mainsV)
    expect(Math.abs(powerW / most - 1)).toBeLessThan(1e-8)
    expect(stringCurrentA(lamps, lampV) * (mainsV - lampV)).toBeCloseTo(powerW, 9)
  })
})

describe('the operating point', () => {
  it('is finite in every number, and its volts and currents agree, for every accepted input', () => {
    fc.assert(
      fc.property(setup, load, (lamps, what) => {
        const answer = seriesLamp(lamps, what)
        expect(numbers(answer).every(Number.isFinite)).toBe(true)
        expect(answer.lampV + answer.loadV).toBeCloseTo(lamps.mains.voltageV, 6)
        expect(answer.lampW).toBeCloseTo(answer.lampV * answer.currentA, 6)
        expect(answer.currentA).toBeLessThanOrEqual(answer.shortA * (1 + 1e-9))
        expect(answer.loadV).toBeGreaterThanOrEqual(0)
        if (what.kind === 'constant-power' && answer.state === 'runs')
          expect(Math.abs(answer.loadW / what.powerW - 1)).toBeLessThan(1e-6)
        if (what.kind === 'constant-power' && what.powerW > answer.largestConstantPowerW)
          expect(answer.starts).toBe(false)
      }),
      { numRuns: 150 },
    )
  }, 60_000)

  it('never has the lamps dimmer for more load', () => {
    fc.assert(
      fc.property(
        setup,
        fc.double({ min: 0.1, max: 1e6, noNaN: true }),
        fc.double({ min: 1.001, max: 100, noNaN: true }),
        (lamps, resistanceOhm, times) => {
          const string = lampsOf(lamps)
          const at = (ohm: number) =>
            operatingPoint(string, lamps.mains.voltageV, { kind: 'resistance', resistanceOhm: ohm }).lamp.filamentK
          expect(at(resistanceOhm)).toBeGreaterThanOrEqual(at(resistanceOhm * times))
        },
      ),
      { numRuns: 150 },
    )
  }, 60_000)

  it('never has them dimmer for more power, up to the most they pass', () => {
    fc.assert(
      fc.property(
        setup,
        fc.double({ min: 0.01, max: 0.98 }),
        fc.double({ min: 1.001, max: 1.02 }),
        (lamps, part, times) => {
          if (Number.isNaN(part) || Number.isNaN(times)) return
          const string = lampsOf(lamps)
          const { powerW } = largestPower(string, lamps.mains.voltageV)
          const at = (watts: number) =>
            operatingPoint(string, lamps.mains.voltageV, { kind: 'constant-power', powerW: watts }).lamp.filamentK
          expect(at(part * powerW * times)).toBeGreaterThanOrEqual(at(part * powerW))
        },
      ),
      { numRuns: 100 },
    )
  }, 60_000)

  it('of an open load is dark lamps and the whole mains on the load', () => {
    const answer = seriesLamp(
      { mains: { voltageV: 230 }, lamps: [{ ratedV: 230, ratedW: 60 }], arrangement: 'series' },
      { kind: 'open' },
    )
    expect(answer).toMatchObject({ currentA: 0, lampV: 0, loadV: 230, glow: 'none', filamentK: 300, starts: null })
    expect(answer.lampResistanceOhm).toBeCloseTo(58.8, 1)
  })

  it('without a running point reports the currents at the least voltage of the load, or of a short', () => {
    const lamps: LampSetup = { mains: { voltageV: 120 }, lamps: [{ ratedV: 120, ratedW: 100 }], arrangement: 'series' }
    const short = seriesLamp(lamps, { kind: 'constant-power', powerW: 45 })
    expect(short).toMatchObject({ starts: false, state: 'starved', loadV: 0 })
    expect(short.currentA).toBeCloseTo(100 / 120, 4)
    const dropped = seriesLamp(lamps, { kind: 'constant-power', powerW: 45, minimumV: 85 })
    expect(dropped).toMatchObject({ starts: false, state: 'starved', loadV: 85 })
    expect(dropped.loadW).toBeLessThan(45)
  })

  it('of unequal lamps in series puts most of the voltage on the smaller and says so', () => {
    const answer = seriesLamp(
      {
        mains: { voltageV: 230 },
        lamps: [
          { ratedV: 120, ratedW: 40 },
          { ratedV: 120, ratedW: 100 },
        ],
        arrangement: 'series',
      },
      { kind: 'short' },
    )
    expect(answer.lamps[0]?.voltageV).toBeGreaterThan(150)
    expect(answer.cautions.join(' ')).toMatch(/unequal/)
    expect(answer.cautions[0]).toMatch(/fails at once/)
  })

  it('of lamps in parallel passes the sum of their currents', () => {
    const pair = lampsOf({
      lamps: [
        { ratedV: 120, ratedW: 40 },
        { ratedV: 120, ratedW: 60 },
      ],
      arrangement: 'parallel',
    })
    expect(stringAt(pair, 120).currentA).toBeCloseTo(100 / 120, 4)
  })

  it('says of two lamps in series, each for the whole mains, that a short does not light them fully', () => {
    const answer = seriesLamp(
      {
        mains: { voltageV: 230 },
        lamps: [
          { ratedV: 230, ratedW: 60 },
          { ratedV: 230, ratedW: 60 },
        ],
        arrangement: 'series',
      },
      { kind: 'short' },
    )
    expect(answer.glow).toBe('part')
    expect(answer.cautions.join(' ')).toMatch(/do not reach full brightness even into a dead short/)
  })

  it('refuses a mains voltage at which a filament melts, no resistance and no power', () => {
    const string = one(24, 60)
    expect(() => operatingPoint(string, 230, { kind: 'short' })).toThrow(RangeError)
    for (const bad of [0, -5, Number.NaN]) {
      expect(() => operatingPoint(one(230, 60), 230, { kind: 'resistance', resistanceOhm: bad })).toThrow(RangeError)
      expect(() => operatingPoint(one(230, 60), 230, { kind: 'constant-power', powerW: bad })).toThrow(RangeError)
      expect(() => operatingPoint(one(230, 60), bad, { kind: 'short' })).toThrow(RangeError)
    }
  })
})

describe('whether a load starts', () => {
  const known = { mainsV: 230, loadV: 220, rectifierLoadV: 190, minimumV: 160, assuredShare: 0.9 }
  it.each([
    { name: 'no point: it does not', change: { loadV: undefined }, starts: false },
    { name: 'steady volts below its least: it does not', change: { minimumV: 221 }, starts: false },
    { name: 'both forms above its least: it does', change: {}, starts: true },
    { name: 'only the steady form above its least: cannot be told', change: { minimumV: 200 }, starts: null },
    { name: 'too much for a rectifier: cannot be told', change: { rectifierLoadV: undefined }, starts: null },
    {
      name: 'least voltage not known and below 90 % of the mains: cannot be told',
      change: { minimumV: null },
      starts: null,
    },
    {
      name: 'least voltage not known, but 90 % of the mains left: it does',
      change: { minimumV: null, rectifierLoadV: 208 },
      starts: true,
    },
  ])('$name', ({ change, starts }) => {
    expect(judgeStart({ ...known, ...change }).starts).toBe(starts)
  })
})

describe('the reading across the lamp', () => {
  it('turns back into the current and the volt-amperes of the operating point', () => {
    fc.assert(
      fc.property(setup, fc.double({ min: 1, max: 1e5, noNaN: true }), (lamps, resistanceOhm) => {
        const point = seriesLamp(lamps, { kind: 'resistance', resistanceOhm })
        const read = lampReading(lamps, Math.min(point.lampV, lamps.mains.voltageV))
        expect(read.currentA).toBeCloseTo(point.currentA, 9)
        expect(read.loadVA).toBeCloseTo(point.loadW, 6)
        expect(read.glow).toBe(point.glow)
      }),
      { numRuns: 60 },
    )
  }, 60_000)

  it('never reads a dark lamp as no load', () => {
    const read = lampReading(
      { mains: { voltageV: 230 }, lamps: [{ ratedV: 230, ratedW: 60 }], arrangement: 'series' },
      15,
    )
    expect(read.glow).toBe('none')
    expect(read.currentA).toBeGreaterThan(0.3 * (60 / 230))
    expect(read.cautions.join(' ')).toMatch(/dark lamp does not mean no load/)
  })
})

describe('a transformer that only magnetises', () => {
  // 0.6, 0.8 and 1 make a right angle: 138 V and 184 V give 230 V; at 0.6 of its voltage the lamp passes 0.6^0.541 of 0.2609 A,
  // 0.1979 A, so X = 184 V / 0.1979 A = 930 Ω and Q = 230² / 930 = 56.9 VA; the law holds within 1 %
  it('stands at right angles to the lamp', () => {
    const string = lampsOf({ lamps: [{ ratedV: 230, ratedW: 60 }], arrangement: 'series' })
    expect(quadratureLampV(string, 230, 56.9) / 138).toBeCloseTo(1, 1.5)
    expect(() => quadratureLampV(string, 230, 0)).toThrow(RangeError)
    expect(() => quadratureLampV(string, Number.NaN, 10)).toThrow(RangeError)
  })
})

describe('a lamp of a wattage in which no tungsten lamp is made', () => {
  it.each([5, 12, 13, 23])('is not used but asked about: %d W', (ratedW) => {
    const { options, cautions } = lampChoice({ voltageV: 230 }, { idleW: 3, ratedW: 30, minimumV: 90 }, [
      { ratedV: 230, ratedW, count: 2 },
    ])
    expect(options).toEqual([])
    expect(cautions.join(' ')).toMatch(/LED or compact fluorescent lamp or was misread/)
  })
})

describe('the choice of lamps', () => {
  it('offers every standard wattage, from the least current into a short', () => {
    const { options } = lampChoice({ voltageV: 230 }, { idleW: 3, ratedW: 30, minimumV: 90 }, null)
    expect(options.map((option) => option.ratedW)).toEqual([15, 25, 40, 60, 75, 100, 150, 200])
    expect(options.map((option) => option.shortA)).toEqual(options.map((option) => option.shortA).sort((a, b) => a - b))
  })

  it('uses first the least lamp the load starts behind, next the least it runs behind at its rating, last the largest', () => {
    const { order, options } = lampChoice({ voltageV: 230 }, { idleW: 6, ratedW: 30, minimumV: 90 }, null)
    expect(order.map(({ use }) => use)).toEqual(['first', 'next', 'last'])
    // 0.32 of the lamp watts is what a rectifier gets, a quarter to spare: 7.5 W want 23 W of lamp, 37.5 W want 117 W
    expect(order.map(({ ratedW }) => ratedW)).toEqual([25, 150, 200])
    expect(options[0]).toMatchObject({ ratedW: 15, suits: false, startsIdle: false })
  })

  it('pairs 120 V lamps in series on 230 V where there are two, and offers nothing for one', () => {
    const two = lampChoice({ voltageV: 230 }, { idleW: 2, ratedW: 20, minimumV: null }, [
      { ratedV: 120, ratedW: 60, count: 2 },
    ])
    expect(two.options).toHaveLength(1)
    expect(two.options[0]).toMatchObject({ count: 2, arrangement: 'series' })
    const none = lampChoice({ voltageV: 230 }, { idleW: 2, ratedW: 20, minimumV: null }, [
      { ratedV: 120, ratedW: 60, count: 1 },
    ])
    expect(none.options).toEqual([])
    expect(none.order).toEqual([])
    expect(none.cautions[0]).toMatch(/None of the lamps at hand/)
  })

  it('offers two in parallel where there are two for the mains', () => {
    const { options } = lampChoice({ voltageV: 120 }, { idleW: 2, ratedW: 45, minimumV: 85 }, [
      { ratedV: 120, ratedW: 100, count: 2 },
    ])
    expect(options.map(({ count, arrangement }) => `${count} ${arrangement}`)).toEqual(['1 series', '2 parallel'])
    // 45 W is too much for one 100 W lamp, not for two
    expect(options.map(({ startsRated }) => startsRated)).toEqual([false, true])
  })

  it('says which lamps at hand it left out, and why', () => {
    const { options, cautions } = lampChoice({ voltageV: 230 }, { idleW: 2, ratedW: 20, minimumV: null }, [
      { ratedV: 230, ratedW: 60, count: 1 },
      { ratedV: 12, ratedW: 50, count: 3 },
    ])
    expect(options).toHaveLength(1)
    expect(cautions[0]).toMatch(/Left out: 50\sW 12\sV, 3 at hand/)
  })

  it('says why LED and compact fluorescent lamps do not serve', () => {
    const { unsuitable } = lampChoice({ voltageV: 230 }, { idleW: 2, ratedW: 20, minimumV: null }, null)
    expect(unsuitable.map(({ kind }) => kind).join(' ')).toMatch(/LED.*fluorescent/)
  })
})

describe('the switch-on', () => {
  const run = fc.record({
    mainsV: fc.double({ min: 50, max: 500, noNaN: true }),
    frequencyHz: fc.double({ min: 16, max: 400, noNaN: true }),
    switchAt: fc.constantFrom('crest' as const, 'zero' as const),
    bulkF: fc.double({ min: 1e-6, max: 0.1, noNaN: true }),
    durationS: fc.double({ min: 0.001, max: 0.6, noNaN: true }),
    shortAfterS: fc.option(fc.double({ min: 0, max: 0.6, noNaN: true }), { nil: undefined }),
    load: fc.oneof(
      fc.constant({ kind: 'none' as const }),
      fc.record({
        kind: fc.constant('resistance' as const),
        resistanceOhm: fc.double({ min: 1, max: 1e9, noNaN: true }),
      }),
      fc
        .record({
          powerW: fc.double({ min: 0.01, max: 5000, noNaN: true }),
          startV: fc.double({ min: 5, max: 800, noNaN: true }),
        })
        .map(({ powerW, startV }) => ({
          kind: 'constant-power' as const,
          powerW,
          startV,
          stopV: 0.75 * startV,
          restartS: 0.3,
        })),
    ),
  })

  it('ends, is finite in every number and loses no energy over a run, for every accepted input', () => {
    fc.assert(
      fc.property(
        run,
        setup,
        fc.option(fc.double({ min: 0.01, max: 10000, noNaN: true })),
        (circuit, lamps, seriesOhm) => {
          const series = seriesOhm ?? lampsOf(lamps)
          const mainsV = seriesOhm === null ? lamps.mains.voltageV : circuit.mainsV
          const found = switchOn({ ...circuit, mainsV, series, diode: bridgeDiode, samples: 200, settledBand })
          expect(numbers(found).every(Number.isFinite)).toBe(true)
          const { sourceJ, radiatedJ, filamentJ, resistorJ, bridgeJ, loadJ, capacitorJ, shortedJ } = found.energy
          const out = radiatedJ + filamentJ + resistorJ + bridgeJ + loadJ + capacitorJ + shortedJ
          expect(Math.abs(out - sourceJ)).toBeLessThanOrEqual(0.005 * sourceJ + 1e-12)
          expect(found.timeS.length).toBe(found.filamentK.length)
          expect(found.timeS.length).toBe(found.bulkV.length)
          expect(found.timeS.length).toBe(found.currentA.length)
          expect(Math.max(...found.currentA)).toBeLessThanOrEqual(found.peakA * 1.001 + 1e-12)
          expect(Math.max(...found.bulkV)).toBeLessThanOrEqual(Math.SQRT2 * mainsV)
          expect(Math.min(...found.bulkV)).toBeGreaterThanOrEqual(-1e-6)
        },
      ),
      { numRuns: 200 },
    )
  }, 120_000)

  it('takes longer for a load that stays than for a capacitor alone, and flashes again and again for too large a load', () => {
    const of = (powerW: number) =>
      switchOn({
        mainsV: 230,
        frequencyHz: 50,
        switchAt: 'crest',
        series: one(230, 60),
        diode: bridgeDiode,
        bulkF: 100e-6,
        load: { kind: 'constant-power', powerW, startV: 200, stopV: 150, restartS: 0.3 },
        durationS: 4,
        samples: 400,
        settledBand,
      })
    expect(of(10).gaveUp).toBe(0)
    expect(of(45).gaveUp).toBeGreaterThan(3)
    expect(of(45).settlesToS).toBeNull()
  })

  it('refuses an odd number of steps', () => {
    const circuit = {
      mainsV: 230,
      frequencyHz: 50,
      switchAt: 'crest' as const,
      series: 10,
      diode: bridgeDiode,
      bulkF: 1e-4,
      load: { kind: 'none' as const },
      durationS: 0.1,
      samples: 10,
      settledBand,
    }
    expect(() => switchOn({ ...circuit, stepsPerHalfCycle: 99 })).toThrow(RangeError)
    expect(() => switchOn({ ...circuit, samples: 0 })).toThrow(RangeError)
  })
})
