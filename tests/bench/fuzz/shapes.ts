import fc from 'fast-check'
import { z } from 'zod'
import { oddNumbers, oddNumberTexts, oddTexts } from './hostile.js'

/** Values of a realistic shape for fields whose form a schema cannot tell, by the field's name. */
const byName: Record<string, fc.Arbitrary<unknown>> = {
  country: fc.constantFrom('DE', 'JP', 'US', 'GB', 'BR', 'SA', 'au', 'IN', 'CH', 'ZA'),
  socket: fc.constantFrom('A', 'B', 'C', 'E', 'F', 'G', 'I', 'L', 'N'),
  label: fc.constantFrom(
    'SWITCHING POWER SUPPLY\nINPUT: 100-240V~ 50/60Hz 0.8A\nOUTPUT: 12V ⎓ 2.0A 24W\nclass II',
    'INPUT 120V 60Hz 12W\nOUTPUT 9V DC 500mA',
    'AC 230V ~ 50Hz 20VA SEC 2x12V~ 0.8A T160mA',
    'DC IN 6V 300mA ⊖-(•-⊕',
    '入力 AC100V 50/60Hz 出力 DC5V 2A',
    '',
  ),
  text: fc.constantFrom(
    'INPUT: 100-240V~ 50/60Hz 0.8A OUTPUT: 12V ⎓ 2.0A',
    'T1.6AH250V',
    'F 500mA L 250V 5x20',
    'lamp glows dull',
  ),
  marking: fc.constantFrom('T1.6AH250V', 'F 500mA L 250V', '3.15A', 'BS1362 3A', ''),
  prescribed: fc.constantFrom('T1.6A 250V', 'F500mA', '2 A slow'),
  fuse: fc.constantFrom('T1.6AH250V', 'T160mA'),
  inlet: fc.constantFrom('C6', 'C8', 'C14', 'C18', 'captive', 'odd one'),
  plug: fc.constantFrom('CEE 7/16', 'CEE 7/7', 'BS 1363', 'NEMA 1-15', 'NEMA 5-15', 'something'),
  connector: fc.constantFrom('C7', 'C13', 'C5', 'captive'),
  scheme: fc.constantFrom('IEC 62353', 'en50699', 'IEC'),
  name: fc.constantFrom('Brick of box 9', 'Recorder', 'Étiqueteuse №4', '録音機', 'مسجل', 'Terminal 🖥', '=1+1'),
  place: fc.constantFrom('box 9', 'shelf 3, left', ''),
  note: fc.constantFrom('with a frayed lead', 'two lines\nof words', ''),
  key: fc.constantFrom('lamp', 'off-load', 'loaded', 'supply-alone.offload', 'rail-1', 'own: case temperature'),
  unit: fc.constantFrom('V', 'mV', 'A', 'W', 'Ω', '°C', 'kV'),
  awg: fc.constantFrom(18, 20, 22, 24),
}

type Schema = Record<string, unknown>

const number = (schema: Schema): fc.Arbitrary<unknown> => {
  const low = Number(schema.minimum ?? schema.exclusiveMinimum ?? -1e6)
  const high = Number(schema.maximum ?? schema.exclusiveMaximum ?? 1e6)
  if (schema.type === 'integer') return fc.integer({ min: Math.ceil(low), max: Math.min(high, low + 1000) })
  const usual = [1, 2, 5, 12, 50, 60, 100, 120, 230, 0.5, 0.1, 47e-6, 1e-3].filter((at) => at >= low && at <= high)
  const inRange = fc.double({ min: low, max: high, noNaN: true, noDefaultInfinity: true })
  return fc.oneof(
    ...(usual.length > 0 ? [{ weight: 5, arbitrary: fc.constantFrom(...usual) }] : []),
    { weight: 2, arbitrary: inRange },
    { weight: 1, arbitrary: fc.constantFrom(low, high) },
  )
}

/** Values of a JSON Schema made by zod, mostly such as the call accepts. */
function shaped(schema: Schema, defs: Record<string, Schema>, name = ''): fc.Arbitrary<unknown> {
  const at = (inner: unknown, innerName = name) => shaped(inner as Schema, defs, innerName)
  if (typeof schema.$ref === 'string') return at(defs[schema.$ref.split('/').pop() ?? ''])
  if ('const' in schema) return fc.constant(schema.const)
  if (Array.isArray(schema.enum)) return fc.constantFrom(...schema.enum)
  const choices = (schema.anyOf ?? schema.oneOf) as Schema[] | undefined
  if (choices) {
    const [first, ...others] = choices.map((choice) => at(choice))
    return first
      ? fc.oneof({ weight: 5, arbitrary: first }, ...others.map((arbitrary) => ({ weight: 1, arbitrary })))
      : fc.constant(null)
  }
  switch (schema.type) {
    case 'object': {
      const properties = Object.entries((schema.properties ?? {}) as Record<string, Schema>)
      return fc.record(Object.fromEntries(properties.map(([key, inner]) => [key, at(inner, key)])), {
        requiredKeys: (schema.required ?? []) as string[],
      }) as fc.Arbitrary<unknown>
    }
    case 'array':
      return fc.array(at(schema.items), {
        minLength: Number(schema.minItems ?? 0),
        maxLength: Math.min(Number(schema.maxItems ?? 4), Number(schema.minItems ?? 0) + 3),
      })
    case 'string':
      return byName[name] ?? fc.constantFrom('words', 'a marking', 'Ω 12')
    case 'boolean':
      return fc.boolean()
    case 'null':
      return fc.constant(null)
    case 'number':
    case 'integer':
      return byName[name] ?? number(schema)
    default:
      return byName[name] ?? fc.constantFrom<unknown>(null, 'words', 12, {})
  }
}

/** Bodies for a request schema. */
export function bodiesOf(schema: z.ZodType): fc.Arbitrary<unknown> {
  const described = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) as Schema
  return shaped(described, (described.$defs ?? {}) as Record<string, Schema>)
}

/** Every place of a JSON value that can be put wrong. */
function placesOf(value: unknown, at: (string | number)[] = []): (string | number)[][] {
  if (value === null || typeof value !== 'object') return [at]
  const inner = Object.entries(value).flatMap(([key, entry]) => placesOf(entry, [...at, key]))
  return [at, ...inner]
}

/** Words that are looked for in answers must not become part of what is kept. */
const harmless = (odd: unknown, target: unknown): unknown =>
  typeof target === 'string' && typeof odd === 'string' && /NaN|Infinity|undefined/.test(odd) ? 'words' : odd

/** The same body with one place wrong. */
export function withOneWrong(body: unknown, pick: number, odd: unknown, how: 'replace' | 'remove' | 'add'): unknown {
  const copy = structuredClone(body)
  const places = placesOf(copy)
  const place = places[pick % places.length] ?? []
  const last = place[place.length - 1]
  if (last === undefined) return how === 'add' && copy !== null && typeof copy === 'object' ? { ...copy, odd } : odd
  let holder = copy as Record<string, unknown>
  for (const key of place.slice(0, -1)) holder = holder[key as string] as Record<string, unknown>
  if (how === 'remove') delete holder[last as string]
  else if (how === 'add' && !Array.isArray(holder)) holder[`odd${pick % 3}`] = odd
  else holder[last as string] = harmless(odd, holder[last as string])
  return copy
}

const numberText = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.constantFrom('12', '230', '50', '0.5', '2,5', '12 V', '1', '60', '5.5', '2.1', '100-240', '0'),
  },
  { weight: 1, arbitrary: fc.constantFrom(...oddNumbers).map(String) },
  { weight: 1, arbitrary: fc.constantFrom(...oddNumberTexts) },
)

/** What a box of a form brings: `text` is kept and shown again, so it never holds the words looked for in answers. */
export const boxes = {
  number: numberText,
  text: (name: string): fc.Arbitrary<string> =>
    fc.oneof(
      { weight: 6, arbitrary: (byName[name] ?? byName.note) as fc.Arbitrary<string> },
      { weight: 1, arbitrary: fc.constantFrom(...oddTexts) },
    ),
  choice: (...choices: string[]): fc.Arbitrary<string> =>
    fc.oneof(
      { weight: 6, arbitrary: fc.constantFrom(...choices, '') },
      { weight: 1, arbitrary: fc.constantFrom(...oddTexts) },
    ),
}
