import { type Found, mendedKey, mendedOf, type ReadingSeen } from '../../../examine/examineRequest.js'
import type { FormFault } from '../../parts/formState.js'
import { foundSchema, readingSchema, seenKey } from '../../schemas/examine.js'

/** What was seen, read and found, as the address holds it. */
export interface ExamineState {
  seen: readonly string[]
  found: readonly Found[]
  readings: readonly ReadingSeen[]
}

type Sent = Readonly<Record<string, unknown>>

/** A list that was sent once, with commas, or several times, as ticks are. */
const list = (sent: unknown): string[] => {
  const all = Array.isArray(sent) ? sent : [sent]
  return [...new Set(all.flatMap((one) => (typeof one === 'string' ? one.split(',') : [])))].filter((one) => one !== '')
}

/** "output-1:8.5:V:loaded", "output-1:OL:Ω" */
function readingOf(text: string): ReadingSeen | null {
  const [key, value = '', unit, state] = text.split(':')
  const read = readingSchema.safeParse({
    key,
    value: value === 'OL' ? null : value === '' ? undefined : Number(value),
    unit,
    ...(state && { state }),
  })
  return read.success ? read.data : null
}

const readingText = ({ key, value, unit, state }: ReadingSeen): string =>
  [key, value === null ? 'OL' : String(value), unit, ...(state ? [state] : [])].join(':')

/** The most that an address may hold of a list. */
const mostListed = { seen: 20, found: 200, read: 40 }

/** What an address says; what it holds that nothing is known of is left out and told. */
export function stateOf(sent: Sent): { state: ExamineState; faults: FormFault[] } {
  const faults: FormFault[] = []
  const known = <Value>(name: string, most: number, read: (text: string) => Value | null): Value[] =>
    list(sent[name])
      .slice(0, most)
      .flatMap((text) => {
        const value = read(text)
        if (value !== null) return [value]
        faults.push({
          name,
          message: `“${text.slice(0, 40)}” is nothing that is known here; take it out of the address.`,
        })
        return []
      })
  // who made the tests that are for a qualified person
  const by = typeof sent.by === 'string' && sent.by.trim() !== '' ? { by: sent.by.slice(0, 100) } : {}
  const found = (name: string, of: (cause: string) => Found): Found[] =>
    known(name, mostListed.found, (text) => {
      const read = foundSchema.safeParse({ ...of(text), ...by })
      return read.success ? read.data : null
    })
  const state = {
    seen: known('seen', mostListed.seen, (text) => (seenKey.safeParse(text).success ? text : null)),
    found: [
      ...found('no', (cause) => ({ cause, result: 'excluded' })),
      ...found('yes', (cause) => ({ cause, result: 'confirmed' })),
      ...found('done', (cause) => ({ cause: mendedKey(cause), result: 'confirmed' })),
    ],
    readings: known('read', mostListed.read, readingOf),
  }
  return { state, faults }
}

/** The same as parameters of an address, empty ones left out. */
export function stateQuery({ seen, found, readings }: ExamineState): [name: string, value: string][] {
  const last = new Map(found.map((one) => [one.cause, one.result]))
  const mended = [...last.keys()].flatMap((key) => mendedOf(key) ?? [])
  const of = (result: Found['result']): string =>
    [...last].flatMap(([key, one]) => (one === result && mendedOf(key) === null ? key : [])).join(',')
  const all: [string, string][] = [
    ['seen', seen.join(',')],
    ['yes', of('confirmed')],
    ['no', of('excluded')],
    ['done', mended.join(',')],
    ['read', readings.map(readingText).join(',')],
    ['by', found.find(({ by }) => by)?.by ?? ''],
  ]
  return all.filter(([, value]) => value !== '')
}
