import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { examine } from '../../server/examine/examine.js'
import { type ExamineRequest, mendedKey } from '../../server/examine/request.js'
import { causes } from '../../server/tables/causes.js'
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
const runs = { numRuns: 60 }

describe('whatever was seen and found', () => {
  it('proposes nothing that needs power while anything stands before it', () =>
    fc.assert(
      fc.property(checks, observed, results, fc.boolean(), (check, observations, found, stopped) => {
        const { next, waitsFor } = run(check, { observations, found }, stopped ? [{ title: 'wrong mains' }] : [])
        if (waitsFor.length > 0) expect(next.filter(({ power }) => power !== 'none')).toEqual([])
      }),
      runs,
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
    expect(before.waitsFor).toHaveLength(1)
    const after = run(built, { ...seen, found: [...found, ...confirmed(mendedKey('bridge-shorted'))] })
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

  it('fails by one that lies outside, whatever the others say', () => {
    const readings = [output(5, 'open'), output(5, 'loaded'), output(5.4, 'warm')]
    expect(run(brick, { readings }).proof).toMatchObject({ warm: 'outside', proved: false })
  })

  it('is none where no output is known', () => expect(run(built, { readings: [] }).proof.proved).toBe(false))
})
