import type { Words } from '../../words/phrase.js'
import { type NumberAsked, readNumber } from '../readNumber.js'

/** What a form shows: all keyed by field name, so that a view can look a field up. */
export interface FormState {
  /** as typed, unchanged */
  values: Record<string, string>
  /** the sentence beside the field */
  errors: Record<string, Words>
  /** the value as understood: "12.5 V" */
  shown: Record<string, Words>
  /** what the plate says for the same field: "100 V to 240 V" */
  read: Record<string, Words>
  /** true where the values are those that are kept, written by the program and not typed here */
  filled?: boolean
}

/** One answer of a list. */
export interface Choice<Value extends string = string> {
  value: Value
  label: string
}

export interface FormFault {
  name: string
  message: Words
}

/** The longest text one field may hold; a rating plate has a few hundred characters. */
export const longestText = 1500

/** The longest text of a field of one line. */
export const longestLine = 200

/** Control characters other than tab and line ends, and marks that turn the direction of text around. */
const unprintable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufffe\uffff]/u

/**
 * Reads a flat form field by field and gathers what is wrong. Only the names given are looked at, so nothing else that
 * was sent can reach the rest of the program; a field sent twice is an error and keeps its first value.
 */
export class FormReader {
  readonly state: FormState = {
    values: Object.create(null),
    errors: Object.create(null),
    shown: Object.create(null),
    read: Object.create(null),
  }
  readonly faults: FormFault[] = []

  constructor(
    sent: unknown,
    names: readonly string[],
    labelOf: (name: string) => string,
    longestOf: (name: string) => number = () => longestText,
  ) {
    const from = (sent ?? {}) as Record<string, unknown>
    for (const name of names) {
      if (!Object.hasOwn(from, name)) continue
      const raw = from[name]
      const first = Array.isArray(raw) ? raw[0] : raw
      this.state.values[name] = typeof first === 'string' ? first : ''
      const label = labelOf(name)
      if (Array.isArray(raw)) this.fault(name, `${label} must be given once; it came ${raw.length} times.`)
      const longest = longestOf(name)
      if (typeof raw === 'string' && raw.length > longest)
        this.fault(name, `${label} must be at most ${longest} characters long; this is ${raw.length}.`)
      const odd = unprintable.exec(this.state.values[name])?.[0]
      if (odd !== undefined) {
        const code = odd.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')
        this.fault(name, `${label} must be printable text; take out the hidden character U+${code}.`)
      }
    }
  }

  fault(name: string, message: Words): void {
    // the first sentence about a field is the one shown
    if (this.state.errors[name] !== undefined) return
    this.state.errors[name] = message
    this.faults.push({ name, message })
  }

  /** The text of a field without the blanks around it; `null` when empty or already known to be wrong. */
  text(name: string): string | null {
    if (this.state.errors[name] !== undefined) return null
    return this.state.values[name]?.trim() || null
  }

  /** A number; `null` when empty or wrong. `show` writes it back in our form. */
  number(name: string, asked: NumberAsked, show?: (value: number) => Words): number | null {
    if (this.state.errors[name] !== undefined) return null
    const read = readNumber(this.state.values[name] ?? '', asked)
    if ('message' in read) {
      this.fault(name, read.message)
      return null
    }
    if (read.value !== null && show) this.state.shown[name] = show(read.value)
    return read.value
  }

  /** One of a few words; `null` when empty or not one of them. */
  choice<Choice extends string>(name: string, choices: readonly Choice[], label: string): Choice | null {
    const text = this.text(name)
    if (text === null) return null
    const found = choices.find((choice) => choice === text)
    if (found === undefined)
      this.fault(name, `${label} must be one of the choices listed; received “${text.slice(0, 40)}”.`)
    return found ?? null
  }
}
