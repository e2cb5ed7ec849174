import { wordOf } from './address.js'
import { facts } from './boxes.js'
import type { Fact, Group, List, Part } from './fact.js'

/** Cells by the names of their columns; what is not known is an empty cell. */
export type Cells = Record<string, string>

/** One cell that cannot be read. */
export interface CellFault {
  column: string
  message: string
}

type Parts = Record<string, Part>

/** The columns of a thing's facts, in their order. */
export const columnsOf = ({ parts }: Group<Parts>): string[] =>
  Object.values(parts).flatMap((part) => {
    if (part.kind === 'group') return columnsOf(part)
    return part.column === undefined ? [] : [part.column]
  })

/** The column of a fact that a path in JSON leads to or through: "rails" for "supply.outputs.0.currentA"; null for none. */
export function columnAt(path: string): string | null {
  const key = path.replace(/\.\d+/g, '')
  const found =
    facts.find((one) => `${key}.`.startsWith(`${one.key}.`)) ?? facts.find((one) => one.key.startsWith(`${key}.`))
  return found?.list?.column ?? found?.fact.column ?? null
}

const window = ({ min, max }: { min: number; max: number }): string => (min === max ? String(min) : `${min} to ${max}`)

function written(fact: Fact, value: unknown): string {
  if (value == null) return ''
  if (fact.kind === 'windows') return (value as { min: number; max: number }[]).map(window).join('; ')
  if (fact.kind === 'numbers') return (value as number[]).join('; ')
  if (fact.kind === 'choice' && typeof value === 'boolean')
    return wordOf(fact.choices.find((choice) => choice.value === value))
  return String(value)
}

/** One fact within the phrase of its row; "?" where it is not known and must be stated. */
function phrased(fact: Fact, value: unknown): string {
  if (value == null) return fact.stated ? '?' : ''
  if (fact.kind === 'number') return `${fact.column ?? ''}${value} ${fact.unit}`
  return fact.kind === 'choice' ? choiceWord(fact.choices.find((choice) => choice.value === value)) : String(value)
}

const choiceWord = (choice: { value: unknown; says?: string } | undefined): string =>
  choice?.says ?? String(choice?.value ?? '')

/** A row in one phrase: "DC 12 V 1.5 A 18 W", "AC 9 V 1 A measured ±10 %". */
const phrase = (parts: Parts, row: Record<string, unknown>): string =>
  Object.entries(parts)
    .map(([name, fact]) => phrased(fact as Fact, row[name]))
    .filter(Boolean)
    .join(' ')

/** Writes what is known of a thing into its cells. */
export function putCells(cells: Cells, { parts }: Group<Parts>, thing: object): void {
  for (const [name, part] of Object.entries(parts)) {
    const value = (thing as Record<string, unknown>)[name]
    if (part.kind === 'group') putCells(cells, part, value ?? {})
    else if (part.column === undefined) continue
    else if (part.kind === 'list')
      cells[part.column] = ((value ?? []) as Record<string, unknown>[]).map((row) => phrase(part.parts, row)).join('; ')
    else cells[part.column] = written(part, value)
  }
}

const numberText = /^[-−]?\d+([.,]\d+)?(e-?\d+)?$/i

const escaped = (text: string): string => text.trim().replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&')

/** How one fact stands in the phrase of its row. */
function pattern(fact: Fact): string {
  if (fact.kind === 'number') {
    const figure = `\\s+${escaped(fact.column ?? '')}\\s*(\\S+)\\s*${escaped(fact.unit)}`
    return fact.required ? figure : `(?:${figure})?`
  }
  if (fact.kind === 'text') return '\\s+(\\S+)'
  const words = fact.kind === 'choice' ? fact.choices.map((choice) => escaped(choiceWord(choice))) : []
  if (fact.required) return `\\s+(${words.join('|')})`
  return fact.stated ? `\\s+(${[...words, '\\?'].join('|')})` : `(?:\\s+(${words.join('|')}))?`
}

/** Reads cells and gathers what cannot be read. */
class CellReader {
  readonly faults: CellFault[] = []

  constructor(private readonly cells: Cells) {}

  private text(column: string): string | undefined {
    return this.cells[column] || undefined
  }

  private fault(column: string, message: string): undefined {
    this.faults.push({ column, message })
    return undefined
  }

  private number(column: string, written: string): number | undefined {
    const bare = written.trim()
    if (/^[-−]?[1-9]\d{0,2},\d{3}$/.test(bare))
      return this.fault(
        column,
        `${column}: “${bare}” can be read two ways; write it with a decimal point or without a comma.`,
      )
    if (!numberText.test(bare))
      return this.fault(column, `${column}: “${written.slice(0, 40)}” is not a number; write it like 12.5.`)
    return Number(bare.replace(',', '.').replace('−', '-'))
  }

  private entries<Entry>(written: string, read: (entry: string) => Entry | undefined): Entry[] {
    return written
      .split(';')
      .map((entry) => entry.trim())
      .filter(Boolean)
      .map(read)
      .filter((entry) => entry !== undefined)
  }

  private window(column: string, entry: string): { min: number; max: number } | undefined {
    const [low = '', high = low, more] = entry.split(/\s*(?:to|–)\s*|(?<=\d)\s*-\s*(?=\d)/)
    if (more !== undefined)
      return this.fault(column, `${column}: “${entry.slice(0, 40)}” must be one voltage or a range like 100 to 240.`)
    const min = this.number(column, low)
    const max = high === low ? min : this.number(column, high)
    return min === undefined || max === undefined ? undefined : { min, max }
  }

  private yesNo(column: string, written: string): boolean | undefined {
    const word = written.trim().toLowerCase()
    if (word === 'yes') return true
    if (word === 'no') return false
    return this.fault(column, `${column}: “${written.slice(0, 40)}” must be yes or no, or empty where it is not known.`)
  }

  private row({ parts, column }: List<Parts>, entry: string): Record<string, unknown> | undefined {
    const facts = Object.entries(parts) as [string, Fact][]
    const match = new RegExp(`^${facts.map(([, fact]) => pattern(fact)).join('')}$`, 'i').exec(` ${entry}`)
    if (!match)
      return this.fault(
        column,
        `${column}: “${entry.slice(0, 60)}” must be written like “DC 12 V 1.5 A”, several parted by “;”.`,
      )
    const row: Record<string, unknown> = {}
    for (const [index, [name, fact]] of facts.entries()) {
      const value = this.inPhrase(fact, column, match[index + 1])
      if (value !== undefined) row[name] = value
      else if (fact.required) return undefined
    }
    return row
  }

  private inPhrase(fact: Fact, column: string, written: string | undefined): unknown {
    if (written === undefined) return undefined
    if (fact.kind === 'number') return this.number(column, written)
    if (fact.kind === 'text') return written
    if (written === '?' || fact.kind !== 'choice') return null
    return fact.choices.find((choice) => choiceWord(choice).toLowerCase() === written.toLowerCase())?.value
  }

  private value(part: Fact | List<Parts>): unknown {
    const column = part.column ?? ''
    const written = this.text(column)
    if (written === undefined) return undefined
    switch (part.kind) {
      case 'list':
        return this.entries(written, (entry) => this.row(part, entry))
      case 'number':
        return this.number(column, written)
      case 'numbers':
        return this.entries(written, (entry) => this.number(column, entry))
      case 'windows':
        return this.entries(written, (entry) => this.window(column, entry))
      case 'choice':
        return part.choices.some(({ value }) => typeof value === 'boolean') ? this.yesNo(column, written) : written
      default:
        return written
    }
  }

  /** What the cells say of a thing; `undefined` where they say nothing. */
  thing({ parts }: Group<Parts>): Record<string, unknown> | undefined {
    const found = Object.entries(parts).flatMap(([name, part]) => {
      const value = part.kind === 'group' ? this.thing(part) : this.value(part)
      return value === undefined ? [] : [[name, value] as const]
    })
    return found.length > 0 ? Object.fromEntries(found) : undefined
  }
}

/**
 * What cells say of a thing. Words such as "transformer" are taken as they stand: the schema of its facts says afterwards
 * which are accepted.
 *
 * @returns the thing, and every cell that cannot be read
 */
export function readCells(thing: Group<Parts>, cells: Cells): { value: object; faults: CellFault[] } {
  const read = new CellReader(cells)
  return { value: read.thing(thing) ?? {}, faults: read.faults }
}
