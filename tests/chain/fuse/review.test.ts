import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type FuseRequest, fusePositions, fuseSchemes, inrushShapes } from '../../../server/chain/fuse/fuseRequest.js'
import { readFuseMarking } from '../../../server/plate/fuseMarking.js'
import { breakingLetters, characteristics } from '../../../server/tables/fuseMarks.js'
import { reviewFuse } from '../../support/told.js'

const mains = { position: 'mains', circuit: { voltageV: 230, currentA: 0.5 } } as const

const review = (request: Partial<FuseRequest>) => reviewFuse({ ...mains, ...request })

const titles = (request: Partial<FuseRequest>, outcome?: string) =>
  review(request)
    .findings.filter((finding) => outcome === undefined || finding.outcome === outcome)
    .map((finding) => finding.title)

describe('the prescription wins', () => {
  it('keeps a link that is as prescribed', () => {
    const { outcome, findings } = review({ marking: 'T2AL250V', prescribed: 'T2AL250V' })
    expect(outcome).toBe('keep')
    expect(new Set(findings.map((finding) => finding.outcome))).toEqual(new Set(['clear']))
  })

  it.each([
    { fitted: 'T5AL250V', prescribed: 'T500mAL250V', says: /5.A is fitted where 500.mA is prescribed: 10 times/ },
    { fitted: 'T2AL250V', prescribed: 'F2AL250V', says: /slower \(T\) than prescribed \(F\)/ },
    { fitted: 'T2AL250V', prescribed: 'T2AH250V', says: /Breaking capacity L is fitted where H/ },
    { fitted: 'T2A L 125V', prescribed: 'T2AL250V', says: /rated 125.V; the circuit is 230.V/ },
    { fitted: 'T2AL250V 6.3x32', prescribed: 'T2AL250V 5x20', says: /6.3 × 32 mm is fitted where 5 × 20 mm/ },
    { fitted: 'T2AL250V', prescribed: '2A time-delay 250V', says: /IEC link is fitted where a UL link/ },
  ])('replaces $fitted where $prescribed is marked', ({ fitted, prescribed, says }) => {
    const answer = review({ marking: fitted, prescribed })
    expect(answer.outcome).toBe('replace')
    expect(titles({ marking: fitted, prescribed }, 'stop').join('\n')).toMatch(says)
  })

  it.each([
    { fitted: 'T1AL250V', prescribed: 'T2AL250V', says: /less than marked/ },
    { fitted: 'T2AH250V', prescribed: 'T2AL250V', says: null },
  ])('lets $fitted stay where $prescribed is marked', ({ fitted, prescribed, says }) => {
    const answer = review({ marking: fitted, prescribed })
    expect(answer.outcome).toBe('keep')
    if (says) expect(titles({ marking: fitted, prescribed }, 'caution').join('\n')).toMatch(says)
  })

  it.each([
    { fitted: '2A 250V', prescribed: 'T2AL250V', says: /speed of the fitted link is not marked/ },
    { fitted: 'T2AL250V', prescribed: '2A', says: /The print gives no speed/ },
    { fitted: 'T2A 250V', prescribed: 'T2AH250V', says: /shows no letter/ },
    { fitted: 'T2AL', prescribed: 'T2AL250V', says: /rated voltage of the fitted link is not marked/ },
    { fitted: 'zzz', prescribed: 'T2AL250V', says: /No rated current could be read from “zzz”/ },
    { fitted: undefined, prescribed: 'T2AL250V', says: /Nothing is known of the link/ },
    { fitted: 'T2AL250V', prescribed: undefined, says: /What link is prescribed is not known/ },
    { fitted: 'T2AL250V', prescribed: 'qwerty', says: /No rated current could be read from the prescription “qwerty”/ },
  ])('asks to find out first: $fitted against $prescribed', ({ fitted, prescribed, says }) => {
    const answer = review({ marking: fitted, prescribed })
    expect(answer.outcome).toBe('find-out-first')
    expect(titles({ marking: fitted, prescribed }, 'unknown').join('\n')).toMatch(says)
  })

  it('is chosen by the voltage in use where several are printed', () => {
    const prescribed = '115V T1.6A / 230V T800mA'
    expect(review({ prescribed }).prescribed?.ratedA).toBe(0.8)
    expect(review({ prescribed, circuit: { voltageV: 120 } }).prescribed?.ratedA).toBe(1.6)
    expect(review({ prescribed, circuit: { voltageV: 170 } }).prescribed).toBeNull()
  })

  it('names exactly what to fit, and who may do it', () => {
    const [finding] = review({ marking: 'T5AL250V', prescribed: 'T500mAL250V' }).findings
    expect(finding?.action).toMatch(/Fit T 500.mA L 250.V/)
    expect(finding?.action).toMatch(/licensed electrician or other qualified person/)
  })
})

describe('a UL and an IEC link of one number', () => {
  it('says what each does at 135, 150, 200 and 210 %', () => {
    const finding = review({ marking: 'T2AL250V', prescribed: '2A time-delay 250V' }).findings.find((one) =>
      /not the same link/.test(one.title),
    )
    expect(finding?.working.map((line) => line.split(':')[0])).toEqual([
      'At 135\u00a0%',
      'At 150\u00a0%',
      'At 200\u00a0%',
      'At 210\u00a0%',
    ])
  })

  it('is thought of where the prescribed number is not one of the IEC series', () => {
    expect(titles({ marking: 'T3.15AL250V', prescribed: '3A 250V' }, 'caution').join()).toMatch(
      /3.A is not a rating of the IEC series/,
    )
    expect(titles({ marking: 'T2AL250V', prescribed: '2A 250V' }).join()).not.toMatch(/IEC series/)
  })

  it('only warns where the UL link stands in for the IEC one: it opens earlier', () => {
    expect(titles({ marking: '2A time-delay 250V', prescribed: 'T2A 250V' }, 'caution').join()).toMatch(
      /UL link is fitted where an IEC link/,
    )
  })
})

describe('a unit from another mains', () => {
  it.each([
    { formerVoltageV: 120, voltageV: 230, prescribed: 'T2A 250V', says: /1\.92 times too large/ },
    { formerVoltageV: 230, voltageV: 120, prescribed: 'T1A 250V', says: /1\.92 times the current/ },
    { formerVoltageV: 100, voltageV: 230, prescribed: 'T2A 250V', says: /2\.3 times too large/ },
  ])(
    'from $formerVoltageV V to $voltageV V: worked out, and not made fit by a fuse',
    ({ formerVoltageV, voltageV, prescribed, says }) => {
      const answer = review({ marking: prescribed, prescribed, formerVoltageV, circuit: { voltageV, powerW: 60 } })
      expect(answer.outcome).toBe('find-out-first')
      const finding = answer.findings.find((one) => says.test(one.title))
      expect(finding?.outcome).toBe('unknown')
      expect(finding?.action).toMatch(/single-voltage unit is not made fit/)
      expect(answer.required.recommendedRatedA).toBeLessThanOrEqual(readFuseMarking(prescribed).ratedA ?? 0)
    },
  )

  it('is worked out from the fitted link where nothing is prescribed', () => {
    expect(titles({ marking: 'T2A 250V', formerVoltageV: 120 }, 'unknown').join()).toMatch(
      /The fitted 2.A is for 120.V: at 230.V it is 1\.92 times too large/,
    )
  })

  it('gets no recommendation from a rating for the other mains alone', () => {
    const { required } = review({ prescribed: 'T2A 250V', formerVoltageV: 120, circuit: { voltageV: 230 } })
    expect(required.recommendedRatedA).toBeNull()
  })

  it('is no other mains within 10 %: 220, 230 and 240 V', () => {
    expect(review({ marking: 'T2AL250V', prescribed: 'T2AL250V', formerVoltageV: 220 }).outcome).toBe('keep')
  })

  it('needs nothing where the print has a rating for the mains in use', () => {
    expect(
      titles({ marking: 'T800mAL250V', prescribed: '115V T1.6A / 230V T800mA', formerVoltageV: 120 }).join(),
    ).not.toMatch(/too large/)
  })
})

describe('the circuit', () => {
  it.each([
    { marking: 'T2AL250V', faultA: 35, outcome: 'clear' },
    { marking: 'T2AL250V', faultA: 36, outcome: 'stop' },
    { marking: 'T4AL250V', faultA: 40, outcome: 'clear' },
    { marking: 'T2AH250V', faultA: 1500, outcome: 'clear' },
    { marking: 'T2AH250V', faultA: 1501, outcome: 'stop' },
    { marking: 'T2A 250V', faultA: 100, outcome: 'unknown' },
    // UL 248-14 at 250 V: 1.1 A to 3.5 A 100 A; at 125 V 10 kA
    { marking: '3A SB 250V', faultA: 100, outcome: 'clear' },
    { marking: '3A SB 250V', faultA: 101, outcome: 'stop' },
  ])('a fault of $faultA A against $marking: $outcome', ({ marking, faultA, outcome }) => {
    const { findings } = review({ marking, circuit: { voltageV: 230, prospectiveFaultA: faultA } })
    expect(findings.find((one) => /a fault can draw|A fault can draw/.test(one.title))?.outcome).toBe(outcome)
  })

  it.each([
    { scheme: 'UL', minimum: 2 / 0.75, recommended: 3 },
    { scheme: 'IEC', minimum: 2 / 0.9, recommended: 2.5 },
  ] as const)('2 A on a $scheme link needs $minimum A (UL 75 %, IEC 90 %)', ({ scheme, minimum, recommended }) => {
    const { required } = review({ fuse: { scheme }, circuit: { voltageV: 230, currentA: 2 } })
    expect(required.minimumRatedA).toBeCloseTo(minimum, 9)
    expect(required.recommendedRatedA).toBe(recommended)
    expect(required.scheme).toBe(scheme)
  })

  it('is re-rated only at a published point, and says so where there is none', () => {
    const hot = (ambientC: number, marking = 'T2AL250V') =>
      review({ marking, circuit: { voltageV: 230, currentA: 1, ambientC } })
    expect(hot(60).required.minimumRatedA).toBeCloseTo(1 / (0.9 * 0.83), 9)
    expect(hot(45).required.minimumRatedA).toBeCloseTo(1 / 0.9, 9)
    expect(
      hot(45)
        .findings.map((one) => one.title)
        .join(),
    ).toMatch(/No published curve/)
    expect(
      hot(60, 'F2AL250V')
        .findings.map((one) => one.title)
        .join(),
    ).toMatch(/No published curve/)
    expect(
      hot(25)
        .findings.map((one) => one.title)
        .join(),
    ).not.toMatch(/No published curve/)
  })

  it('that draws more than is prescribed is a fault to find, not a reason for a larger link', () => {
    const answer = review({
      marking: 'T500mAL250V',
      prescribed: 'T500mAL250V',
      circuit: { voltageV: 230, currentA: 0.6 },
    })
    expect(answer.outcome).toBe('find-out-first')
    expect(answer.required.recommendedRatedA).toBe(0.5)
  })

  it('that asks for less than is prescribed leaves the prescription to win', () => {
    const answer = review({
      marking: 'T1AL250V',
      prescribed: 'T500mAL250V',
      circuit: { voltageV: 230, currentA: 0.17 },
    })
    expect(answer.outcome).toBe('replace')
    expect(answer.required.recommendedRatedA).toBe(0.5)
  })

  it('asks for less than its watts only where a power factor is entered', () => {
    const { required } = review({ circuit: { voltageV: 230, powerW: 60, powerFactor: 0.6 } })
    expect(required.currentA).toBeCloseTo(60 / 230 / 0.6, 12)
  })

  it('weighs the inrush against the range of data sheets: 9.2 to 11.68 A²s for T 2 A H', () => {
    const at = (inrushPeakA: number) =>
      review({
        marking: 'T2AH250V',
        prescribed: 'T2AH250V',
        circuit: {
          voltageV: 230,
          currentA: 0.5,
          inrushPeakA,
          inrushTimeS: 0.002,
          inrushShape: 'exponential',
          pulses: 10_000,
        },
      })
    // 50² × 0.002 / 2 / 0.29 = 8.62
    expect(at(50).findings.find((one) => /inrush/.test(one.title))?.outcome).toBe('clear')
    // 55² × 0.002 / 2 / 0.29 = 10.4: inside the range
    expect(at(55).findings.find((one) => /inrush/.test(one.title))?.outcome).toBe('caution')
    expect(at(55).outcome).toBe('keep')
  })

  it('has no published share beyond 100 000 pulses', () => {
    const answer = review({
      marking: 'T2AH250V',
      prescribed: 'T2AH250V',
      circuit: { voltageV: 230, inrushPeakA: 10, inrushTimeS: 0.002, pulses: 200_000 },
    })
    expect(answer.required.minimumMeltingI2t).toBeNull()
    expect(answer.findings.map((one) => one.title).join()).toMatch(/beyond what is published/)
  })

  it('unknown stays null', () => {
    expect(review({ marking: 'T2AL250V', circuit: { voltageV: 230 } }).required).toMatchObject({
      currentA: null,
      minimumRatedA: null,
      recommendedRatedA: null,
      inrushI2t: null,
    })
  })
})

describe('a plug fuse', () => {
  const plug = (marking: string, circuit: Partial<FuseRequest['circuit']> = {}) =>
    reviewFuse({ marking, position: 'plug', circuit: { voltageV: 230, ...circuit } })

  it.each([
    // Code of Practice table VII.1: 3 A up to 700 W
    { powerW: 60, ratedA: 3 },
    { powerW: 690, ratedA: 3 },
    { powerW: 1000, ratedA: 5 },
    { powerW: 2900, ratedA: 13 },
  ])('of $powerW W is $ratedA A', ({ powerW, ratedA }) => {
    expect(plug('3A BS1362', { powerW }).required.recommendedRatedA).toBe(ratedA)
  })

  it('marked 15 A is not a BS 1362 link', () => {
    const answer = plug('15A BS1362', { powerW: 60 })
    expect(answer.outcome).toBe('replace')
    expect(answer.findings[0]).toMatchObject({ outcome: 'stop' })
    expect(answer.findings[0]?.action).toMatch(/stops at 13 A/)
    expect(answer.fitted).toMatchObject({ ratedA: null, breakingCapacityA: null })
  })

  it('to another standard is replaced', () => {
    expect(plug('T3.15AH250V', { powerW: 60 }).findings[0]?.title).toMatch(/plug made for BS 1362/)
  })

  it('does not carry more than 13 A', () => {
    const answer = plug('13A BS1362', { powerW: 3500 })
    expect(answer.outcome).toBe('find-out-first')
    expect(answer.findings.map((one) => one.title).join()).toMatch(/more than any plug fuse carries/)
  })

  it('entered by hand as 15 A is refused as well', () => {
    const answer = reviewFuse({
      fuse: { ratedA: 15, scheme: 'BS1362' },
      position: 'plug',
      circuit: { voltageV: 230, powerW: 60 },
    })
    expect(answer.findings[0]).toMatchObject({ outcome: 'stop' })
    expect(answer.fitted).toMatchObject({ ratedA: null, ratedV: null, breakingCapacityA: null })
  })

  it('breaks 6 kA', () => {
    expect(plug('3A BS1362').fitted.breakingCapacityA).toBe(6000)
  })
})

describe('a link found open', () => {
  it('is a fault until shown otherwise, with the current-limited next step', () => {
    const answer = review({ marking: 'T2AL250V', prescribed: 'T2AL250V', blown: true })
    expect(answer.outcome).toBe('find-out-first')
    expect(answer.findings[0]?.title).toMatch(/fault until shown otherwise/)
    expect(answer.findings[0]?.action).toMatch(/behind a current limit/)
  })
})

describe('behind a series lamp', () => {
  it('the lamp is the limit: the link will not clear a fault', () => {
    const finding = review({ marking: 'T2AL250V', prescribed: 'T2AL250V', seriesLampA: 0.43 }).findings.find((one) =>
      /lamp/.test(one.title),
    )
    expect(finding?.title).toMatch(/will not clear it/)
    expect(finding?.why).toMatch(/the lamp is the limit, not the fuse/)
  })

  it('only a small link may open: not to be counted on', () => {
    // 2.1 times 100 mA is the lowest current at which sheet 3 sets a time
    const at = (seriesLampA: number) => titles({ marking: 'T100L250V', seriesLampA }, 'caution').join()
    expect(at(0.2)).toMatch(/will not clear it/)
    expect(at(0.43)).toMatch(/do not count on the link/)
  })
})

const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 })
const positive = (max: number) => fc.double({ min: 1e-6, max, noNaN: true })
const marks = fc.oneof(
  fc.string(),
  fc
    .tuple(
      fc.constantFrom('', 'T', 'F', 'FF', 'M', 'TT'),
      fc.constantFrom('0.5A', '1A', '2A', '315', '3.15A', '1-1/4A', '10A'),
      fc.constantFrom('', 'L', 'H', 'E'),
      fc.constantFrom('', '250V', '125V', ' time-delay', ' BS1362'),
    )
    .map((parts) => parts.join('')),
)

const requests: fc.Arbitrary<FuseRequest> = fc.record({
  marking: maybe(marks),
  prescribed: maybe(marks),
  fuse: maybe(
    fc.record({
      ratedA: maybe(positive(1000)),
      ratedV: maybe(positive(1500)),
      characteristic: maybe(fc.constantFrom(...characteristics)),
      breaking: maybe(fc.constantFrom(...breakingLetters)),
      scheme: maybe(fc.constantFrom(...fuseSchemes)),
    }),
  ),
  position: fc.constantFrom(...fusePositions),
  circuit: fc.record({
    voltageV: positive(1000),
    currentA: maybe(positive(1000)),
    powerW: maybe(positive(100_000)),
    powerFactor: maybe(positive(1)),
    inrushPeakA: maybe(positive(100_000)),
    inrushTimeS: maybe(positive(1000)),
    inrushShape: maybe(fc.constantFrom(...inrushShapes)),
    pulses: maybe(fc.double({ min: 1, max: 1e9, noNaN: true })),
    ambientC: maybe(fc.double({ min: -60, max: 150, noNaN: true })),
    prospectiveFaultA: maybe(positive(200_000)),
  }),
  formerVoltageV: maybe(positive(1000)),
  blown: maybe(fc.boolean()),
  seriesLampA: maybe(positive(1000)),
})

describe('whatever is asked', { timeout: 60_000 }, () => {
  it('an answer comes, with finite numbers, worst findings first, and an outcome that agrees with them', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const answer = reviewFuse(request)
        expect(JSON.stringify(answer)).not.toMatch(/NaN|Infinity|undefined/)
        const order = ['stop', 'unknown', 'caution', 'clear']
        const ranks = answer.findings.map((one) => order.indexOf(one.outcome))
        expect([...ranks].sort((a, b) => a - b)).toEqual(ranks)
        if (answer.outcome === 'keep') expect(ranks.every((rank) => rank >= 2)).toBe(true)
        if (answer.outcome === 'replace') expect(ranks[0]).not.toBe(3)
        expect(
          answer.findings.every(
            (one) => one.topic === 'fuse' && !/\bsafe/i.test(`${one.title} ${one.why} ${one.action}`),
          ),
        ).toBe(true)
      }),
      { numRuns: 600 },
    )
  })

  it('nothing above the prescription is ever recommended', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const answer = reviewFuse(request)
        if (answer.prescribed?.ratedA != null && answer.required.recommendedRatedA !== null)
          expect(answer.required.recommendedRatedA).toBeLessThanOrEqual(answer.prescribed.ratedA)
      }),
      { numRuns: 600 },
    )
  })

  it('less current never needs a larger link', () => {
    fc.assert(
      fc.property(requests, positive(1000), positive(1000), (request, one, other) => {
        const at = (currentA: number) => reviewFuse({ ...request, circuit: { ...request.circuit, currentA } }).required
        const [less, more] = one < other ? [at(one), at(other)] : [at(other), at(one)]
        expect(less.minimumRatedA ?? 0).toBeLessThanOrEqual(more.minimumRatedA ?? 0)
        expect(less.recommendedRatedA ?? 0).toBeLessThanOrEqual(more.recommendedRatedA ?? 0)
      }),
      { numRuns: 600 },
    )
  })

  it('a link that is higher, slower, weaker or for less voltage than marked is never kept', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const { fitted, prescribed, outcome } = reviewFuse(request)
        if (!prescribed || fitted.ratedA === null || prescribed.ratedA === null) return
        if (fitted.ratedA > prescribed.ratedA) expect(outcome).not.toBe('keep')
        if (fitted.ratedV !== null && prescribed.ratedV !== null && fitted.ratedV < prescribed.ratedV)
          expect(outcome).not.toBe('keep')
        if (request.position !== 'plug' && fitted.breaking === 'L' && prescribed.breaking === 'H')
          expect(outcome).not.toBe('keep')
        if (request.position !== 'plug' && fitted.characteristic === 'T' && prescribed.characteristic === 'F')
          expect(outcome).not.toBe('keep')
      }),
      { numRuns: 600 },
    )
  })

  it('without a prescription a mains link is never kept', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const { prescribed, outcome } = reviewFuse({ ...request, position: 'mains' })
        if (!prescribed) expect(outcome).toBe('find-out-first')
      }),
      { numRuns: 300 },
    )
  })
})

// from the head: a marking misread, or fitted, by a factor of ten
describe('a link that is smaller than prescribed and than its load', () => {
  it('is replaced, while one that carries the load may stay', () => {
    const with315 = (currentA: number) =>
      reviewFuse({
        marking: 'T315mAL250V',
        prescribed: 'T3.15AL250V',
        position: 'mains',
        circuit: { voltageV: 230, currentA },
      })
    expect(with315(0.5).outcome).toBe('replace')
    expect(with315(0.5).answer).toMatch(/less than the circuit draws/)
    expect(with315(0.1).outcome).toBe('keep')
  })
})
