import { boxName, boxOf } from './boxes.js'
import { type CheckRequest, check } from './check.js'
import type { Fact, Part } from './fact.js'

/** A number as plain figures that can be read one way only: never "1e-7", and "1.1250" for 1.125. */
export function figures(value: number): string {
  const short = String(value)
  const plain = short.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : short
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(plain) ? `${plain}0` : plain
}

/** A value as an address carries it; '' where the fact has no word for it. */
function written(fact: Fact, value: unknown): string {
  switch (fact.kind) {
    case 'number':
      return value == null ? '' : figures(value as number)
    case 'numbers':
      return ((value ?? []) as number[]).map(figures).join('/')
    case 'windows':
      return ((value ?? []) as { min: number; max: number }[])
        .map(({ min, max }) => (min === max ? figures(min) : `${figures(min)}-${figures(max)}`))
        .join('/')
    case 'keys':
      return ((value ?? []) as string[]).join(' ')
    case 'phrases':
      return ((value ?? []) as string[]).map((phrase) => phrase.replace(/\s+/g, ' ')).join('\n')
    case 'choice':
      return wordOf(fact.choices.find((choice) => choice.value === (value ?? null)))
    default:
      return value == null ? '' : String(value)
  }
}

/** The word of a choice in addresses. */
export const wordOf = (choice: { value: unknown; word?: string } | undefined): string =>
  choice === undefined ? '' : (choice.word ?? String(choice.value))

function put(values: Record<string, string>, part: Part, value: unknown, row: number | null): void {
  if (part.kind === 'list') {
    for (const [index, one] of ((value ?? []) as unknown[]).entries()) putAll(values, part.parts, one, index + 1)
  } else if (part.kind === 'group') {
    // a thing that is not there says nothing, not even that something of it is not known
    if (value != null) putAll(values, part.parts, value, row)
  } else values[boxName(part, row)] = written(part, value)
}

function putAll(values: Record<string, string>, parts: Record<string, Part>, of: unknown, row: number | null): void {
  for (const [name, part] of Object.entries(parts)) put(values, part, (of as Record<string, unknown>)[name], row)
}

/** The values of a check's facts by the names of their boxes, also of rows that no form has a box for. */
export function factValues(request: CheckRequest): Record<string, string> {
  const values: Record<string, string> = {}
  putAll(values, check, request, null)
  return values
}

/**
 * The values of a check's boxes by their names: what its address carries. The way back is `readCheckForm`.
 *
 * @throws RangeError where the check has more rows than a form has
 */
export function checkValues(request: CheckRequest): Record<string, string> {
  const values = factValues(request)
  const beyond = Object.keys(values).find((name) => boxOf(name) === undefined)
  if (beyond !== undefined) throw new RangeError(`a form has no box for ${beyond}`)
  return values
}
