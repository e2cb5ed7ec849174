import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../../server/chain/case/request.js'
import { checkValues } from '../../../server/facts/address.js'
import { labelOf } from '../../../server/facts/boxes.js'
import { checkAddress } from '../../../server/web/pages/check/checkAddress.js'
import { addressOf, checkNames, readCheckAddress, readCheckForm } from '../../../server/web/pages/check/form.js'
import { tell } from '../../../server/words/tell.js'

const parameters = (address: string): Record<string, string> =>
  Object.fromEntries(new URL(address, 'http://localhost').searchParams)

const request = (sent: Record<string, string>): CheckRequest => {
  const form = readCheckForm(sent)
  expect(tell(form.faults)).toEqual([])
  if (!form.request) throw new Error('no request')
  return form.request
}

/** Drops what is null or empty, so that "not given" has one form. */
function bare(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(bare)
  if (value === null || typeof value !== 'object') return value
  const entries = Object.entries(value)
    .map(([key, inner]) => [key, bare(inner)] as const)
    .filter(([, inner]) => inner != null && !(typeof inner === 'object' && Object.keys(inner).length === 0))
  return Object.fromEntries(entries)
}

const number = (max: number) => fc.integer({ min: 100, max: max * 1000 }).map((thousandths) => thousandths / 1000)
const maybe = <Value>(arbitrary: fc.Arbitrary<Value>) => fc.option(arbitrary, { nil: null })
const plateText = fc
  .array(fc.constantFrom('INPUT', '100-240V~', '50/60Hz', 'OUTPUT', '12V ⎓', '出力', '±5%', '&=?#+%', '\n', 'é'), {
    minLength: 1,
    maxLength: 12,
  })
  .map((words) => words.join(' ').trim())
  .filter((words) => words !== '')
const polarity = fc.constantFrom('centre-positive' as const, 'centre-negative' as const)
const plug = fc
  .record({
    outerMm: maybe(number(20)),
    innerMm: maybe(number(20)),
    polarity: maybe(polarity),
    name: maybe(fc.constant('type 4')),
  })
  .filter(({ outerMm, innerMm }) => outerMm === null || innerMm === null || innerMm < outerMm)
const volts = fc
  .integer({ min: -400_000, max: 400_000 })
  .map((thousandths) => thousandths / 1000)
  .filter((value) => Math.abs(value) >= 0.1)
const kind = maybe(fc.constantFrom('dc' as const, 'ac' as const))
const windowOf = fc.tuple(number(500), number(499)).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }))

const anyCheck: fc.Arbitrary<CheckRequest> = fc.record({
  site: fc.record({
    country: maybe(fc.constantFrom('DE', 'JP', 'GB', 'BR')),
    voltageV: maybe(fc.integer({ min: 50, max: 1000 })),
    frequencyHz: maybe(fc.constantFrom(50, 60, 16.7)),
    socket: maybe(fc.constantFrom('A', 'F', 'G')),
  }),
  supply: fc.record({
    label: plateText,
    input: fc.record({
      voltages: maybe(fc.array(windowOf, { minLength: 1, maxLength: 3 })),
      frequenciesHz: maybe(fc.constantFrom([50], [50, 60], [60])),
      currentA: maybe(number(20)),
      powerVA: maybe(number(2000)),
      powerW: maybe(number(2000)),
      selectorV: maybe(fc.constantFrom(115, 230)),
    }),
    technology: maybe(fc.constantFrom('switch-mode' as const, 'transformer' as const)),
    regulated: maybe(fc.boolean()),
    protectionClass: maybe(fc.constantFrom('I' as const, 'II' as const, 'III' as const)),
    inlet: maybe(fc.constantFrom('C8', 'C14', 'captive')),
    outputs: maybe(
      fc.array(fc.record({ kind, voltageV: volts, currentA: maybe(number(40)), powerW: maybe(number(400)) }), {
        minLength: 1,
        maxLength: 6,
      }),
    ),
    plug,
    lead: maybe(
      fc.record({ lengthM: number(20), areaMm2: maybe(number(10)), awg: maybe(fc.integer({ min: 0, max: 40 })) }),
    ),
    fuse: maybe(fc.constantFrom('T2AL250V', 'F 500mA')),
    measured: fc.record({ offLoadV: maybe(volts), loadedV: maybe(volts), polarity: maybe(polarity) }),
  }),
  device: fc.record({
    label: maybe(plateText),
    inputs: maybe(
      fc.array(
        fc.record({
          kind,
          voltageV: volts,
          currentA: maybe(number(40)),
          currentIs: maybe(fc.constantFrom('plate' as const, 'measured' as const)),
          tolerancePercent: maybe(number(50)),
        }),
        { minLength: 1, maxLength: 6 },
      ),
    ),
    regulatedNeeded: maybe(fc.boolean()),
    jack: plug,
  }),
  cord: fc.record({
    plug: maybe(fc.constantFrom('CEE 7/16', 'BS 1363')),
    connector: maybe(fc.constantFrom('C7', 'C13', 'captive')),
    ratedV: maybe(number(400)),
    ratedA: maybe(number(20)),
    earthed: maybe(fc.boolean()),
    areaMm2: maybe(number(10)),
    awg: maybe(fc.integer({ min: 0, max: 40 })),
    plugFitted: maybe(fc.constantFrom('moulded' as const, 'rewired' as const)),
    adapter: maybe(fc.record({ earthed: maybe(fc.boolean()) })),
  }),
  converter: maybe(
    fc.record({
      kind: maybe(fc.constantFrom('autotransformer' as const, 'isolating' as const, 'electronic' as const)),
      outputV: maybe(fc.integer({ min: 50, max: 400 })),
      ratedVA: maybe(number(2000)),
    }),
  ),
})

/** An adapter that says nothing of its earth, and a converter nothing is known of, still count as there. */
function bareCheck(check: CheckRequest): unknown {
  const { cord, converter, ...rest } = check
  return {
    ...(bare(rest) as object),
    cord: cord ? { ...(bare({ ...cord, adapter: null }) as object), adapter: cord.adapter ?? null } : { adapter: null },
    converter: converter ?? null,
  }
}

describe('the address of a check', { timeout: 60_000 }, () => {
  it('holds a whole check: reading it back gives the same check', () => {
    fc.assert(
      fc.property(anyCheck, (check) => {
        expect(bareCheck(request(parameters(checkAddress(check))))).toEqual(bareCheck(check))
      }),
      { numRuns: 300 },
    )
  })

  it('carries only what was entered', () => {
    expect(addressOf({ country: 'DE', socket: '', supply: ' ', in: '230' })).toBe('country=DE&in=230')
  })

  it('carries a country as its code, whatever way it was typed', () => {
    for (const typed of ['Germany', 'germany', 'de', 'DE']) expect(addressOf({ country: typed })).toBe('country=DE')
  })

  it('has a label for every parameter and no name twice', () => {
    expect(new Set(checkNames).size).toBe(checkNames.length)
    for (const name of checkNames) expect(labelOf(name)).not.toBe(name)
  })

  it('reads back from a whole address and from a bare query string', () => {
    for (const address of ['/?country=DE&in=230', 'country=DE&in=230', '?country=DE&in=230'])
      expect(readCheckAddress(address).request).toMatchObject({ site: { country: 'DE' } })
    expect(readCheckAddress('mains=230&mains=120').faults).toHaveLength(1)
  })

  it('refuses to leave rails out', () => {
    const outputs = Array.from({ length: 7 }, () => ({ kind: 'dc' as const, voltageV: 5 }))
    expect(() => checkValues({ site: {}, supply: { outputs }, device: {} })).toThrow(RangeError)
  })
})

describe('the form of a check', () => {
  it.each([
    ['230', [{ min: 230, max: 230 }]],
    ['100-240', [{ min: 100, max: 240 }]],
    ['100 – 240 V', [{ min: 100, max: 240 }]],
    ['100V-240V', [{ min: 100, max: 240 }]],
    [
      '115/230',
      [
        { min: 115, max: 115 },
        { min: 230, max: 230 },
      ],
    ],
    [
      '100-120 / 200-240 V',
      [
        { min: 100, max: 120 },
        { min: 200, max: 240 },
      ],
    ],
    [
      '115 or 230',
      [
        { min: 115, max: 115 },
        { min: 230, max: 230 },
      ],
    ],
  ])('reads the input voltage %j', (typed, windows) => {
    expect(request({ in: typed }).supply.input?.voltages).toEqual(windows)
  })

  it.each(['240-100', '100-120-240', 'wide', '100-', '1,500', '0', '-5'])('refuses the input voltage %j', (typed) => {
    const form = readCheckForm({ in: typed })
    expect(form.request).toBeNull()
    expect(tell(form.faults)).toEqual([{ name: 'in', message: expect.stringMatching(/^Input voltage /) }])
    expect(form.state.values.in).toBe(typed)
  })

  it.each([
    ['50/60', [50, 60]],
    ['50-60 Hz', [50, 60]],
    ['60', [60]],
  ])('reads the input frequency %j', (typed, frequencies) => {
    expect(request({ inhz: typed }).supply.input?.frequenciesHz).toEqual(frequencies)
  })

  it('carries what is not known as unknown, never as a number', () => {
    const check = request({ supply: 'INPUT 230V', converter: 'unknown', adapter: 'unknown' })
    expect(check.converter).toEqual({ kind: null, outputV: null, ratedVA: null })
    expect(check.cord?.adapter).toEqual({ earthed: null })
    expect(check.supply.regulated).toBeUndefined()
    expect(check.supply.outputs).toBeUndefined()
  })

  it('asks for the voltage of a row of which something else was given', () => {
    const { faults } = readCheckForm({ out2a: '3' })
    expect(tell(faults)).toEqual([{ name: 'out2', message: 'Enter the voltage of output 2.' }])
  })

  it.each([
    [{ country: 'Atlantis' }, 'country', 'Country must be a country’s name or its two-letter code'],
    [{ ina: '-2' }, 'ina', 'Input current must be a number more than'],
    [{ type: 'magic' }, 'type', 'Kind of supply must be one of the choices listed'],
    [{ supply: 'a\u0000b' }, 'supply', 'take out the hidden character U+0000'],
    [{ supply: 'V\u202e042' }, 'supply', 'take out the hidden character U+202E'],
    [{ supply: 'x'.repeat(1501) }, 'supply', 'must be at most 1500 characters long; this is 1501'],
    [{ plugname: 'x'.repeat(201) }, 'plugname', 'must be at most 200 characters long; this is 201'],
    [{ mains: ['230', '120'] }, 'mains', 'Mains voltage must be given once; it came 2 times'],
    [{ plugouter: '2.1', pluginner: '5.5' }, 'pluginner', 'must be less than the outer diameter'],
    [JSON.parse('{"__proto__": "1"}'), 'check-form', 'The address holds “__proto__”'],
    [{ constructor: '1' }, 'check-form', 'The address holds “constructor”'],
    [{ 'supply[label]': 'x' }, 'check-form', 'which is no part of a check'],
  ])('answers %j with a sentence beside %s', (sent, name, message) => {
    const form = readCheckForm(sent)
    expect(form.request).toBeNull()
    expect(tell(form.faults)).toEqual([{ name, message: expect.stringContaining(message) }])
  })

  it('takes right-to-left words as words', () => {
    expect(request({ supply: 'דגם 230V' }).supply.label).toBe('דגם 230V')
  })

  it('nothing entered is no check', () => {
    expect(readCheckForm({ supply: ' ', country: '' })).toMatchObject({ request: null, faults: [], empty: true })
  })
})
