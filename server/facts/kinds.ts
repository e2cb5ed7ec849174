import { z } from 'zod'
import type { About, Choice, Fact, Group, List, Part } from './fact.js'
import { leastTaken } from './leastTaken.js'

type Known<Value> = Fact<Value, z.ZodOptional<z.ZodNullable<z.ZodType<Value>>>>

interface Bounds {
  unit: string
  min: number
  max: number
  typed?: { min?: number; max?: number; whole?: boolean }
}

/** A quantity in its base unit. */
export function number(row: About<number> & Bounds): Known<number> {
  const value = z.number().min(row.min).max(row.max)
  return { ...row, kind: 'number', value, schema: value.nullish() }
}

/** A voltage with its sign; 0 V is none. */
export function signedVolts(row: About<number>): Known<number> {
  const bounds = { unit: 'V', min: -1000, max: 1000, apartFromZero: leastTaken.voltageV }
  const value = z
    .number()
    .min(bounds.min)
    .max(bounds.max)
    .refine((volts) => Math.abs(volts) >= bounds.apartFromZero, {
      error: (issue) =>
        `A voltage must not be 0 V, and ${bounds.apartFromZero} V or more in size, plus or minus; leave out what is not known; received ${String(issue.input)}`,
    })
  return { ...row, ...bounds, kind: 'number', value, schema: value.nullish() }
}

/**
 * One of a few answers.
 *
 * @param also  answers that JSON may carry beside them and that a form has no word for
 */
export function choice<const Value extends string, const Also extends string = never>(
  row: About<Value> & { choices: readonly Choice<Value>[]; none?: string; also?: readonly Also[] },
): Known<Value | Also> {
  const { also = [], ...fact } = row
  const values = row.choices.flatMap((one) => (one.value === null ? [] : [one.value]))
  const value = z.enum([...values, ...also]) as unknown as z.ZodType<Value | Also>
  return {
    ...(fact as About<Value | Also> & { choices: Choice<Value | Also>[] }),
    kind: 'choice',
    value,
    schema: value.nullish(),
  }
}

/** Yes or no, in words of its own where it has them; `said` is how either answer is told back. */
export function yesNo({
  said,
  ...row
}: About<boolean> & {
  choices?: readonly Choice<boolean>[]
  said?: { yes: string; no: string }
  none?: string
}): Known<boolean> {
  const value = z.boolean()
  const choices = row.choices ?? [
    { value: true, word: 'yes', label: 'Yes', ...(said && { says: said.yes }) },
    { value: false, word: 'no', label: 'No', ...(said && { says: said.no }) },
  ]
  return { ...row, choices, kind: 'choice', value, schema: value.nullish() }
}

const controlCharacter = /[\u0000-\u001f\u007f-\u009f]/
const controlExceptLines = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/

/** The longest plate text that is read, and the longest line of a name or marking [characters]. */
const longest = { plate: 10_000, line: 200 }

/** One line of text. */
export function text(row: About<string> & { choices?: readonly Choice<string>[] }): Known<string> {
  const value = z
    .string()
    .max(longest.line)
    .refine((line) => !controlCharacter.test(line), {
      error: 'A name or marking must be one line without control characters',
    })
  return { ...row, kind: 'text', value, schema: value.nullish() }
}

/** The words of a plate: lines and tabs, no other control characters. */
export function plate(row: About<string>): Known<string> {
  const value = z
    .string()
    .max(longest.plate)
    .refine((words) => !controlExceptLines.test(words), {
      error: 'A plate’s text must not hold control characters other than line ends and tabs',
    })
  return { ...row, kind: 'plate', value, schema: value.nullish() }
}

/** Names of figures on the plates, with what was read behind an equals sign: "supply.outputs.0.currentA=0.5". */
export function keys(row: About<string[]>): Known<string[]> {
  const key = z.string().regex(/^(?:supply|device)(?:\.[A-Za-z0-9]{1,20}){1,4}(?:=[^\s=]{0,200})?$/, {
    error: (issue) =>
      `A figure is named as in the reading's "unsure", behind "supply." or "device.", such as supply.outputs.0.currentA or supply.outputs.0.currentA=0.5; received ${JSON.stringify(String(issue.input).slice(0, 60))}`,
  })
  const value = z.array(key).max(100)
  return { ...row, kind: 'keys', value, schema: value.nullish() }
}

/** The most phrases of plates that one fact holds. */
const mostPhrases = 100

/** Pieces of the words of a plate, as printed. */
export function phrases(row: About<string[]>): Known<string[]> {
  const phrase = z
    .string()
    .min(1)
    .max(longest.plate)
    .refine((words) => !controlExceptLines.test(words), {
      error: 'A phrase must not hold control characters other than line ends and tabs',
    })
  const value = z.array(phrase).max(mostPhrases)
  return { ...row, kind: 'phrases', value, schema: value.nullish() }
}

/** Voltages, each one value or a range: "100-240", "115/230". */
export function windows(row: About<{ min: number; max: number }[]>): Known<{ min: number; max: number }[]> {
  const bounds = { unit: 'V', min: leastTaken.voltageV, max: 1000 } as const
  const volts = z.number().min(bounds.min).max(bounds.max)
  const window = z.strictObject({ min: volts, max: volts }).refine(({ min, max }) => min <= max, {
    path: ['max'],
    error: (issue) => {
      const { min, max } = issue.input as { min: number; max: number }
      return `max must be min or more; received min ${min} and max ${max}`
    },
  })
  const value = z.array(window).min(1).max(8)
  return { ...row, ...bounds, kind: 'windows', value, schema: value.nullish() }
}

/** Several values of one quantity: "50/60". */
export function numbers(row: About<number[]> & Bounds): Known<number[]> {
  const value = z.array(z.number().min(row.min).max(row.max)).min(1).max(8)
  return { ...row, kind: 'numbers', value, schema: value.nullish() }
}

/** A fact that its group or row cannot be without. */
export const required = <Value>(fact: Fact<Value>): Fact<Value, z.ZodType<Value>> => ({
  ...fact,
  required: true,
  schema: fact.value,
})

/** A fact that is null where it is not known, and never left out. */
export const stated = <Value>(fact: Fact<Value>): Fact<Value, ReturnType<typeof statedSchema<Value>>> => ({
  ...fact,
  stated: true,
  schema: statedSchema(fact.value),
})

const statedSchema = <Value>(value: z.ZodType<Value>) =>
  value.nullish().transform((known): Value | null => known ?? null)

type Shape<Parts extends Record<string, Part>> = { [Name in keyof Parts]: Parts[Name]['schema'] }

const objectOf = <Parts extends Record<string, Part>>(parts: Parts) =>
  z.strictObject(Object.fromEntries(Object.entries(parts).map(([name, { schema }]) => [name, schema])) as Shape<Parts>)

/** Facts about one thing, all of which may be unknown. */
export function group<Parts extends Record<string, Part>>(parts: Parts) {
  const schema = objectOf(parts).nullish()
  return { kind: 'group', parts, schema } satisfies Group<Parts>
}

/** Facts about one thing under a name of its own in the description of the calls. */
export function thing<Parts extends Record<string, Part>>(id: string, parts: Parts) {
  const schema = objectOf(parts).meta({ id })
  return { kind: 'group', parts, schema } satisfies Group<Parts>
}

/** A thing that may not be there at all. */
export const maybe = <Parts extends Record<string, Part>, Schema extends z.ZodType>(of: Group<Parts, Schema>) => ({
  ...of,
  schema: of.schema.nullish(),
})

/** Facts about what may stand several times. */
export function list<Parts extends Record<string, Part>>(
  about: Pick<List<Parts>, 'each' | 'rows' | 'column' | 'printed'>,
  parts: Parts,
) {
  const schema = z.array(objectOf(parts)).min(1).max(20).nullish()
  return { ...about, kind: 'list', parts, schema } satisfies List<Parts>
}
