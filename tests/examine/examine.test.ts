import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { examine } from '../../server/examine/examine.js'
import { type ExamineRequest, mendedKey } from '../../server/examine/examineRequest.js'
import { causes } from '../../server/tables/causes.js'
import { causesSeen } from '../../server/tables/causesSeen.js'
import { whatWasSeen } from '../../server/tables/whatWasSeen.js'
import { tell } from '../../server/words/tell.js'

const built: CheckRequest = {
  arrangement: 'built-in',
  site: { country: 'DE' },
  supply: {},
  device: { mains: { technology: 'switch-mode', pictureTube: false } },
}
const brick: CheckRequest = {
  site: { country: 'DE' },
  supply: { technology: 'transformer', regulated: true, outputs: [{ kind: 'dc', voltageV: 5, currentA: 2 }] },
  device: { label: '5V DC 1A' },
}

const run = (check: CheckRequest, asked: Partial<ExamineRequest>, stops: { title: string }[] = []) =>
  tell(examine(prepareCase(check), { observations: [], readings: [], found: [], ...asked }, stops))

/** The same text with plain spaces. */
const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u00a0', ' ')

const excluded = (...keys: string[]) => keys.map((cause) => ({ cause, result: 'excluded' as const }))
const confirmed = (...keys: string[]) => keys.map((cause) => ({ cause, result: 'confirmed' as const }))

const checks = fc.constantFrom<CheckRequest>(
  built,
  brick,
  { site: {}, supply: {}, device: {} },
  { arrangement: 'plug-in', site: { country: 'US' }, supply: { label: 'INPUT 120V 60Hz OUTPUT 9V AC 1A' }, device: {} },
  { arrangement: 'machine-only', site: {}, supply: {}, device: { label: '9V DC 300mA' } },
)
const observed = fc.uniqueArray(fc.constantFrom(...whatWasSeen.map(({ key }) => key)), { minLength: 1, maxLength: 4 })
const results = fc.array(
  fc.record({
    cause: fc.constantFrom(...causes.flatMap(({ key }) => [key, mendedKey(key)])),
    result: fc.constantFrom('confirmed' as const, 'excluded' as const),
  }),
  { maxLength: 12 },
)
const readings = fc.array(
  fc.record({
    key: fc.constantFrom('lamp', 'output-1', 'rail-2', 'case', 'supply-alone.off-load-1', 'dummy-load.rail-1-at-100'),
    value: fc.integer({ min: -250, max: 250 }),
    unit: fc.constant('V'),
    state: fc.constantFrom('open' as const, 'loaded' as const, 'warm' as const, null),
  }),
  { maxLength: 4 },
)
/** Whether the table lists a cause for something that holds power. */
const holding = (seen: string, cause: string): boolean =>
  whatWasSeen.some(({ key, holds }) => key === seen && holds) &&
  causesSeen.some((row) => row.seen === seen && row.cause === cause)
const runs = { numRuns: 60 }

describe('whatever was seen and found', () => {
  it('proposes nothing that needs power while anything stands before it', () =>
    fc.assert(
      fc.property(checks, observed, results, fc.boolean(), (check, observations, found, stopped) => {
        const { next, waitsFor } = run(check, { observations, found }, stopped ? [{ title: 'wrong mains' }] : [])
        const powered = next.filter(({ power }) => power !== 'none')
        if (waitsFor.length > 0) expect(powered.filter(({ who }) => who === 'you')).toEqual([])
        if (stopped) expect(powered).toEqual([])
      }),
      runs,
    ))

  it('proposes the reader no power, and calls nothing proved, while something that holds lacks results of its own', () =>
    fc.assert(
      fc.property(checks, observed, results, readings, (check, observations, found, read) => {
        const { next, seen, causes: left, proof } = run(check, { observations, found, readings: read })
        const told = new Set(found.map(({ cause }) => cause))
        const lacking = left.filter(
          ({ key, confirmBy }) =>
            confirmBy.power === 'none' && !told.has(key) && seen.some((one) => holding(one.key, key)),
        )
        if (lacking.length === 0) return
        expect(next.filter(({ power, who }) => power !== 'none' && who === 'you')).toEqual([])
        expect(proof.proved).toBe(false)
      }),
      { numRuns: 150 },
    ))

  it('never brings a cause back by excluding another', () =>
    fc.assert(
      fc.property(checks, observed, fc.uniqueArray(fc.nat(200), { maxLength: 6 }), (check, observations, order) => {
        const before = run(check, { observations }).causes.map(({ key }) => key)
        const out = [...new Set(order.flatMap((at) => before[at % Math.max(1, before.length)] ?? []))]
        for (let count = 1; count <= out.length; count++) {
          const gone = out.slice(0, count)
          const left = run(check, { observations, found: excluded(...gone) }).causes.map(({ key }) => key)
          expect(left).toEqual(before.filter((key) => !gone.includes(key)).sort(byPlace(left)))
        }
      }),
      runs,
    ))

  it('always has something to do next, and says what must not be done', () =>
    fc.assert(
      fc.property(checks, observed, results, (check, observations, found) => {
        const { next, never } = run(check, { observations, found })
        expect(next.length).toBeGreaterThan(0)
        expect(never.length).toBeGreaterThan(0)
      }),
      runs,
    ))

  it('proposes only examinations that tell of a cause that is left', () =>
    fc.assert(
      fc.property(checks, observed, results, (check, observations, found) => {
        const { next, causes } = run(check, { observations, found })
        const open = new Set(causes.filter((one) => !one.confirmed).map(({ key }) => key))
        const told = next.filter(({ examination }) => examination).flatMap(({ tells }) => tells)
        expect(told.filter(({ cause }) => !open.has(cause))).toEqual([])
      }),
      runs,
    ))
})

/** The order of a list, for the same things in another order. */
const byPlace = (order: readonly string[]) => (one: string, other: string) => order.indexOf(one) - order.indexOf(other)

describe('a lamp that stays bright before a switch-mode supply', () => {
  const seen = { observations: ['lamp-bright'] }

  it('is first examined by the bridge and the switching transistor, power off', () => {
    const { next, waitsFor, atOnce } = run(built, seen)
    expect(next.slice(0, 2).map(({ examination }) => examination)).toEqual(['bridge-test', 'transistor-test'])
    expect(next.every(({ power }) => power === 'none')).toBe(true)
    expect(waitsFor).toHaveLength(1)
    expect(atOnce).toEqual([expect.stringContaining('Switch off within seconds')])
  })

  it('says what the bulk capacitor may hold: √2 · 230 V = 325 V, 651 V on a doubler set wrongly', () => {
    const [bridge] = run(built, seen).next
    expect(plain(bridge?.expect)).toContain('325 V')
    expect(plain(bridge?.expect)).toContain('651 V')
  })

  it('waits, once a cause is confirmed, until it is mended and what it took was looked at', () => {
    const found = confirmed('bridge-shorted')
    const before = run(built, { ...seen, found })
    expect(before.causes[0]).toMatchObject({ key: 'bridge-shorted', confirmed: true, mended: false })
    expect(before.next[0]?.do).toContain('inrush thermistor')
    expect(
      before.next.filter(({ tells }) => tells.some(({ cause }) => cause === mendedKey('bridge-shorted'))),
    ).toHaveLength(1)
    expect(before.waitsFor).toHaveLength(2)
    const mended = [...found, ...confirmed(mendedKey('bridge-shorted'))]
    expect(run(built, { ...seen, found: mended }).waitsFor).toHaveLength(1)
    const others = before.causes.filter(({ key, confirmBy }) => key !== 'bridge-shorted' && confirmBy.power === 'none')
    const after = run(built, { ...seen, found: [...mended, ...excluded(...others.map(({ key }) => key))] })
    expect(after.waitsFor).toEqual([])
    expect(after.next[0]).toMatchObject({ power: 'mains', do: expect.stringContaining('open') })
    expect(after.causes[0]).toMatchObject({ mended: true })
  })

  it('lets the last result of a cause count', () => {
    const { causes } = run(built, { ...seen, found: [...confirmed('bridge-shorted'), ...excluded('bridge-shorted')] })
    expect(causes.map(({ key }) => key)).not.toContain('bridge-shorted')
  })

  it('names class X2 and the mains for a capacitor across it', () => {
    const { causes } = run(built, { ...seen, found: confirmed('x-capacitor-shorted') })
    expect(causes[0]?.part?.name).toBe('X capacitor')
    expect(plain(causes[0]?.part?.rated)).toBe('class X2, for 230 V AC or more')
  })

  it('says to hand it on where only qualified work is left', () => {
    const trips = { observations: ['trips-plugged-in'] }
    const all = run(built, trips).causes.filter(({ confirmBy }) => confirmBy.who === 'you')
    const { next } = run(built, { ...trips, found: excluded(...all.map(({ key }) => key)) })
    expect(next[0]?.do).toMatch(/^Stop here and hand it on/)
    expect(next.slice(1).every(({ who }) => who === 'qualified')).toBe(true)
  })

  it('says to hand it on where nothing is left', () => {
    const all = run(built, seen).causes.map(({ key }) => key)
    const { next, causes } = run(built, { ...seen, found: excluded(...all) })
    expect(causes).toEqual([])
    expect(next).toHaveLength(1)
    expect(next[0]?.do).toMatch(/^Stop here and hand it on/)
  })
})

const wallBrick: CheckRequest = {
  site: { country: 'DE' },
  supply: {
    technology: 'switch-mode',
    regulated: true,
    protectionClass: 'II',
    isolated: true,
    outputs: [{ kind: 'dc', voltageV: 12, currentA: 2 }],
  },
  device: { inputs: [{ kind: 'dc', voltageV: 12, currentA: 1.5 }] },
}
const mended = (...keys: string[]) => confirmed(...keys.flatMap((key) => [key, mendedKey(key)]))
const powered = ({ next }: ReturnType<typeof run>) => next.filter(({ power }) => power !== 'none')

describe('what holds power', () => {
  // the rule: each thing seen holds until its own examinations without power have results
  it.each([
    ['water', 'lamp-dark', 'fuse-open'],
    ['fuse-at-once', 'output-none', 'fuse-open'],
    ['overvoltage-mains', 'output-none', 'fuse-open'],
    ['selector-wrong', 'output-none', 'fuse-open'],
    ['bang-smoke', 'lamp-half', 'load-over-lamp'],
    ['polarity-reversed', 'current-none', 'polyfuse'],
    ['water', 'lamp-dark', 'water-inlet'],
    ['bang-smoke', 'lamp-half', 'x-cracked'],
  ])('%s is not released by one cause of it or of %s: %s, mended', (holds, other, cause) => {
    const answer = run(wallBrick, { observations: [holds, other], found: mended(cause) })
    expect(powered(answer)).toEqual([])
    expect(answer.waitsFor).not.toEqual([])
  })

  it('keeps a tingle, and a live case, for a qualified person', () => {
    for (const asked of [
      { observations: ['tingle', 'output-low'] },
      { observations: ['output-low'], readings: [{ key: 'case', value: 230, unit: 'V' }] },
    ])
      for (const check of [wallBrick, built]) {
        const answer = run(check, asked)
        expect(powered(answer).filter(({ who }) => who === 'you')).toEqual([])
        expect(answer.waitsFor).not.toEqual([])
      }
  })

  it('raises no limit before the resistance at the jack was read, and says so in the step', () => {
    const { next } = run(wallBrick, { observations: ['current-too-much'] })
    const order = next.map(({ examination }) => examination)
    expect(order.indexOf('input-ohms')).toBe(0)
    expect(next.find(({ examination }) => examination === 'limit-raised-short')?.do).toContain('nothing gets warm')
  })

  it('keeps leakage over the 9 mA that are advised as the most, as 30 mA is', () => {
    const leak = (value: number) =>
      run(wallBrick, { observations: ['output-low'], readings: [{ key: 'leakage', value, unit: 'mA' }] })
    expect(powered(leak(30))).toEqual([])
    expect(leak(30).waitsFor).toHaveLength(1)
    expect(leak(2).waitsFor).toEqual([])
  })

  it.each([['transformer-hot'], ['trips-plugged-in']])(
    'hands %s on where nothing of it is looked at without power',
    (seen) => {
      const answer = run(wallBrick, { observations: [seen] })
      expect(powered(answer)).toEqual([])
      expect(answer.next[0]?.do).toMatch(/^Stop here and hand it on/)
      expect(answer.waitsFor).toHaveLength(1)
    },
  )

  it('gives nothing but the lamp where no cause was found without power', () => {
    const hot = { observations: ['transformer-hot'] }
    const all = run(brick, hot).causes.filter(({ confirmBy }) => confirmBy.power === 'none')
    const left = powered(run(brick, { ...hot, found: excluded(...all.map(({ key }) => key)) }))
    expect(left.filter(({ examination }) => examination === 'warm-hour')).toEqual([])
    expect(left.map(({ examination }) => examination)).toContain('secondaries-lifted')
  })

  it('takes the result of a qualified test for one only with who tested', () => {
    const trips = { observations: ['trips-switched-on'] }
    const keys = run(wallBrick, trips).causes.map(({ key }) => key)
    expect(run(wallBrick, { ...trips, found: excluded(...keys) }).waitsFor).toHaveLength(1)
    const tested = excluded(...keys).map((one) => ({ ...one, by: 'Test house' }))
    expect(run(wallBrick, { ...trips, found: tested }).waitsFor).toEqual([])
  })

  it('keeps a lamp that stayed bright, though it was dark afterwards: a fuse may have opened', () => {
    const lamp = (value: number) => ({ key: 'lamp', value, unit: 'V' })
    const { seen, waitsFor } = run(wallBrick, { readings: [lamp(225), lamp(0)] })
    expect(seen.map(({ key }) => key)).toEqual(['lamp-bright', 'lamp-dark'])
    expect(waitsFor).toHaveLength(1)
  })
})

describe('whose hands', () => {
  // a live chassis is never probed by the reader; a picture tube is discharged by trained hands
  it.each<[string, CheckRequest]>([
    ['an output that is not isolated', { ...wallBrick, supply: { ...wallBrick.supply, isolated: false } }],
    ['a picture tube', { ...built, device: { mains: { technology: 'switch-mode', pictureTube: true } } }],
  ])('%s is probed, and mended, by a qualified person', (_name, check) => {
    const bright = { observations: ['lamp-bright'] }
    const probes = run(check, bright).next.filter(({ examination }) => examination === 'bridge-test')
    expect(probes).toMatchObject([{ who: 'qualified' }])
    const [mend] = run(check, { ...bright, found: confirmed('bridge-shorted') }).next
    expect(mend).toMatchObject({ who: 'qualified', power: 'none' })
  })

  it('says, before anything is renewed inside, that what is stored is measured under 34 V', () => {
    const [mend] = run(built, { observations: ['lamp-bright'], found: confirmed('bridge-shorted') }).next
    expect(plain(mend?.do)).toContain('34 V')
  })
})

describe('the facts of a case', () => {
  it('exclude an unregulated unit where the supply is regulated, and count it as common where it is not', () => {
    const high = { observations: ['output-high'] }
    expect(run(brick, high).causes.map(({ key }) => key)).not.toContain('unregulated-open')
    const unregulated = { ...brick, supply: { ...brick.supply, regulated: false } }
    expect(run(unregulated, high).causes[0]?.key).toBe('unregulated-open')
  })

  it('speak for a selector at 115 V on 230 V, and against one at 230 V', () => {
    const at = (selectorV: number): CheckRequest => ({
      ...built,
      device: { mains: { technology: 'switch-mode', input: { selectorV } } },
    })
    expect(run(at(115), { observations: ['selector-wrong'] }).causes[0]?.key).toBe('selector-low')
    const right = run(at(230), { observations: ['selector-wrong'] }).causes.map(({ key }) => key)
    expect(right).not.toContain('selector-low')
    expect(right).not.toContain('selector-high')
  })

  it('speak for a core driven by 120 V 60 Hz on 230 V 50 Hz, at 2.3 times its flux', () => {
    const check: CheckRequest = {
      arrangement: 'supply-only',
      site: { country: 'DE' },
      supply: { technology: 'transformer', label: 'INPUT 120V 60Hz OUTPUT 9V DC 500mA' },
      device: {},
    }
    const { causes } = run(check, { observations: ['transformer-hot'] })
    // 230 / 120 · 60 / 50 = 2.3
    expect(causes[0]).toMatchObject({
      key: 'flux-too-high',
      because: [expect.stringContaining('2.3'), expect.anything()],
    })
  })

  it('leave out what belongs to a transformer where it is a switch-mode supply', () => {
    const keys = run(built, { observations: ['lamp-bright'] }).causes.map(({ key }) => key)
    expect(keys).not.toContain('shorted-turns')
    expect(keys).toContain('bridge-shorted')
  })
})

describe('a reading', () => {
  const reading = (key: string, value: number, unit: string, state?: 'open' | 'loaded' | 'warm') => ({
    readings: [{ key, value, unit, ...(state && { state }) }],
  })
  const seenBy = (check: CheckRequest, ...of: Parameters<typeof reading>) =>
    run(check, reading(...of)).seen.map(({ key }) => key)

  it.each([
    ['lamp', 210, 'V', undefined, ['lamp-bright']],
    ['lamp', 120, 'V', undefined, ['lamp-half']],
    ['lamp', 30, 'V', undefined, []],
    ['lamp', 0, 'V', undefined, ['lamp-dark']],
    ['inside-whole.lamp-volts', 225, 'V', undefined, ['lamp-bright']],
    ['output-1', 5.1, 'V', 'open', []],
    ['output-1', 5.6, 'V', 'open', ['output-high']],
    ['output-1', 2.5, 'V', 'loaded', ['output-collapses']],
    ['output-1', 4.6, 'V', 'loaded', ['output-low']],
    ['output-1', 0.1, 'V', 'loaded', ['output-none']],
    ['dummy-load.rail-1-at-100', 2.5, 'V', undefined, ['output-collapses']],
    ['dummy-load.ripple-1', 30, 'mV', undefined, []],
    ['dummy-load.ripple-1', 120, 'mV', undefined, ['ripple-high']],
    ['current', 1.6, 'A', undefined, ['current-too-much']],
    ['current', 0.9, 'A', undefined, []],
    ['current', 5, 'mA', undefined, ['current-none']],
    ['case', 115, 'V', undefined, ['tingle']],
    // what a step reads is told by its exact key
    ['gate.reform-1', 1, 'mA', undefined, []],
    ['bench-supply.step-1', 5, 'mA', undefined, []],
    ['bench-supply.step-2', 1.6, 'A', undefined, ['current-too-much']],
    ['inside-full.current', 0.1, 'A', undefined, []],
    ['before.mains-volts', 230, 'V', undefined, []],
    ['supply-alone.hold', 225, 'V', undefined, ['lamp-bright']],
  ] as const)('%s of %d %s (%s) amounts to %j', (key, value, unit, state, expected) =>
    expect(seenBy(brick, key, value, unit, state)).toEqual(expected),
  )

  it('of ripple tells what is left of the capacitor: 2 A / (2 · 50 Hz · 1 V) = 20 000 µF', () => {
    const [seen] = run(brick, reading('ripple-1', 1, 'V')).seen
    expect(plain(seen?.because)).toContain('20 000 µF')
  })

  it('of ripple at the mains frequency speaks for one open diode, at twice that for the reservoir', () => {
    expect(run(brick, reading('ripple-frequency', 50, 'Hz')).causes[0]?.key).toBe('diode-open')
    const twice = run(brick, reading('ripple-frequency', 100, 'Hz')).causes.map(({ key }) => key)
    expect(twice[0]).toBe('reservoir-dry')
    expect(twice).not.toContain('diode-open')
  })

  it('high under load excludes that it is merely unloaded; open it does not, up to 60 %', () => {
    const open = { ...brick, supply: { ...brick.supply, regulated: null } }
    const keys = (value: number, state: 'open' | 'loaded') =>
      run(open, reading('output-1', value, 'V', state)).causes.map(({ key }) => key)
    expect(keys(7, 'open')).toContain('unregulated-open')
    expect(keys(7, 'loaded')).not.toContain('unregulated-open')
    expect(keys(8.5, 'open')).not.toContain('unregulated-open')
  })

  it('of 10 Ω at 5 V is no short: the machine’s 1 A is 5 Ω; 0.4 Ω is one', () => {
    const seen = { observations: ['current-too-much'] }
    expect(run(brick, { ...seen, ...reading('input-1', 10, 'Ω') }).causes[0]?.key).toBe('reading-normal')
    const short = run(brick, { ...seen, ...reading('input-1', 0.4, 'Ω') }).causes.map(({ key }) => key)
    expect(short[0]).toBe('protection-diode-shorted')
    expect(short).not.toContain('reading-normal')
  })

  it.each([
    ['gate.insulation', 5, 'MΩ', 'whine-tick', 'output-diode-shorted'],
    ['gate.isolation', 5, 'MΩ', 'rail-missing', 'rail-shorted-machine'],
  ])('of %s excludes no short at an output: it was read elsewhere', (key, value, unit, seen, cause) => {
    const { causes } = run(wallBrick, { observations: [seen], ...reading(key, value, unit) })
    expect(causes.map(({ key }) => key)).toContain(cause)
  })

  it('of a good earth, 0.1 Ω, speaks for no short', () => {
    const seen = { observations: ['whine-tick'] }
    const keys = (asked: Partial<ExamineRequest>) => run(wallBrick, { ...seen, ...asked }).causes.map(({ key }) => key)
    expect(keys(reading('before.earth', 0.1, 'Ω'))).toEqual(keys({}))
  })

  it('of more ohms than the meter shows is no short; ohms may be written out', () => {
    const seen = { observations: ['current-too-much'] }
    const at = (value: number | null, unit: string) =>
      run(brick, { ...seen, readings: [{ key: 'input-1', value, unit }] }).causes.map(({ key }) => key)
    expect(at(null, 'Ω')).not.toContain('protection-diode-shorted')
    expect(at(0.4, 'ohm')[0]).toBe('protection-diode-shorted')
  })

  it('of half the mains on a case is the filter, of all of it a live conductor', () => {
    const earthed = {
      ...built,
      device: { mains: { technology: 'switch-mode' as const, protectionClass: 'I' as const } },
    }
    expect(run(earthed, reading('case', 115, 'V')).causes[0]?.key).toBe('filter-no-earth')
    expect(run(earthed, reading('case', 228, 'V')).causes[0]?.key).toBe('live-on-case')
  })
})

describe('proof', () => {
  const output = (value: number, state: 'open' | 'loaded' | 'warm') => ({ key: 'output-1', value, unit: 'V', state })

  it('is three readings within their limits, and not before', () => {
    const two = [output(5.05, 'open'), output(4.95, 'loaded')]
    expect(run(brick, { readings: two }).proof).toMatchObject({
      open: 'within',
      loaded: 'within',
      warm: null,
      proved: false,
    })
    expect(run(brick, { readings: [...two, output(4.9, 'warm')] }).proof.proved).toBe(true)
  })

  it.each([
    ['−5 V on an output of +5 V', brick, -5],
    [
      '+12 V on a rail of −12 V',
      { ...brick, supply: { outputs: [{ kind: 'dc' as const, voltageV: -12, currentA: 1 }] } },
      12,
    ],
  ])('goes by the sign: %s is none', (_name, check, value) => {
    const readings = [output(value, 'open'), output(value, 'loaded'), output(value, 'warm')]
    const { proof, waitsFor } = run(check, { readings })
    expect(proof).toMatchObject({ open: 'outside', loaded: 'outside', warm: 'outside', proved: false })
    expect(waitsFor).not.toEqual([])
  })

  it('is none while anything stands before power', () => {
    const readings = [output(5, 'open'), output(5, 'loaded'), output(5, 'warm')]
    expect(run(brick, { readings, observations: ['water'] }).proof.proved).toBe(false)
    expect(run(brick, { readings }, [{ title: 'wrong mains' }]).proof.proved).toBe(false)
  })

  it.each([
    ['dummy-load.rail-1-at-10', null],
    ['dummy-load.rail-1-at-100', 'within'],
    ['together.rail-1', null],
  ] as const)('takes %s for loaded: %s', (key, loaded) =>
    expect(run(brick, { readings: [{ key, value: 5, unit: 'V' }] }).proof.loaded).toBe(loaded),
  )

  it('goes by the last reading: 8 V, corrected to 5 V, is no longer high', () => {
    const { seen, proof } = run(brick, { readings: [output(8, 'loaded'), output(5, 'loaded')] })
    expect(seen).toEqual([])
    expect(proof.loaded).toBe('within')
  })

  it('fails by one that lies outside, whatever the others say', () => {
    const readings = [output(5, 'open'), output(5, 'loaded'), output(5.4, 'warm')]
    expect(run(brick, { readings }).proof).toMatchObject({ warm: 'outside', proved: false })
  })

  it('is none of a meter over its range, which holds power until it is read again', () => {
    const over = { key: 'output-1', value: null, unit: 'V', state: 'open' as const }
    const { proof, waitsFor } = run(brick, { readings: [over] })
    expect(proof.open).toBe('outside')
    expect(plain(waitsFor.join())).toContain('OL was read')
    const again = run(brick, { readings: [over, { ...over, value: 5 }] })
    expect(again.proof.open).toBe('within')
    expect(again.waitsFor).toEqual([])
  })

  it('is none where no output is known', () => expect(run(built, { readings: [] }).proof.proved).toBe(false))
})
