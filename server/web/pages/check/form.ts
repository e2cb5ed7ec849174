import { wordOf } from '../../../facts/address.js'
import { boxes, boxName, boxOf, labelOf } from '../../../facts/boxes.js'
import { type CheckRequest, check } from '../../../facts/check.js'
import type { Fact, FactOf, Group, List, Part } from '../../../facts/fact.js'
import { quantityIn, says } from '../../../facts/says.js'
import type { VoltageWindow } from '../../../plate/labelReading.js'
import { joined, say } from '../../../words/phrase.js'
import { countryCode, countryName } from '../../parts/countryNames.js'
import { type FormFault, FormReader, type FormState, longestLine, longestText } from '../../parts/formState.js'
import { type NumberAsked, readNumber } from '../../readNumber.js'

export interface CheckForm {
  state: FormState
  faults: FormFault[]
  /** `null` while anything typed cannot be used, or nothing was entered */
  request: CheckRequest | null
  /** what can be used of it, whatever else cannot; `null` where nothing was entered */
  usable: CheckRequest | null
  /** true when no field holds anything */
  empty: boolean
  /** the sparse query string of what was typed */
  query: string
}

/** The names of all boxes of a check, in the order in which they stand in an address. */
export const checkNames: readonly string[] = boxes.map(({ name }) => name)

/** Quantities so small that a sentence calls them "more than 0" [the unit of the box]. */
const asGoodAsZero = 1

/** Kinds of boxes that hold more than a line. */
const severalLines: readonly Fact['kind'][] = ['plate', 'keys', 'phrases']

/** What stands between the values of boxes that are ticked one by one. */
const between: Partial<Record<Fact['kind'], string>> = { keys: ' ', phrases: '\n' }

/** What was sent, with the values of boxes that were ticked one by one in one text. */
function withTickedJoined(sent: unknown): unknown {
  const from = (sent ?? {}) as Record<string, unknown>
  const ticked = boxes.flatMap(({ name, fact }) => {
    const glue = between[fact.kind]
    const all = Object.hasOwn(from, name) ? from[name] : undefined
    if (glue === undefined || !Array.isArray(all)) return []
    return [[name, [...new Set(all.filter((one) => typeof one === 'string'))].join(glue)] as const]
  })
  return ticked.length === 0 ? sent : { ...from, ...Object.fromEntries(ticked) }
}

/** What a number typed into a box must be. */
function asked({ min, max, unit }: { min: number; max: number; unit: string }, label: string): NumberAsked {
  return { label, unit, min, max, ...(min > 0 && min < asGoodAsZero && { above: 0 }) }
}

/**
 * Reads the boxes of a check by the rows of its facts. A part of the check that nothing was entered for is `undefined`;
 * `null` is a thing that is there and not known.
 */
class CheckReader extends FormReader {
  constructor(sent: unknown) {
    super(withTickedJoined(sent), checkNames, labelOf, (name) =>
      severalLines.includes(boxOf(name)?.fact.kind ?? 'text') ? longestText : longestLine,
    )
    for (const name of Object.keys((sent ?? {}) as object))
      if (boxOf(name) === undefined)
        this.fault(
          'check-form',
          `The address holds “${name.slice(0, 40)}”, which is no part of a check; take it out, or correct its name.`,
        )
  }

  private isEmpty(name: string): boolean {
    return (this.state.values[name] ?? '').trim() === ''
  }

  part(part: Part, row: number | null = null): unknown {
    if (part.kind === 'group') return this.group(part, row)
    if (part.kind === 'list') return this.list(part)
    return this.fact(part, boxName(part, row))
  }

  /** The facts of a thing that are known; those that are stated also where they are not. */
  known(parts: Record<string, Part>, row: number | null): { values: Record<string, unknown>; any: boolean } {
    const values: Record<string, unknown> = {}
    let any = false
    for (const [name, part] of Object.entries(parts)) {
      const value = this.part(part, row)
      if (value !== undefined) any = true
      if (value != null) values[name] = value
      else if ('stated' in part) values[name] = null
    }
    return { values, any }
  }

  private group({ parts }: Group<Record<string, Part>>, row: number | null): unknown {
    const { values, any } = this.known(parts, row)
    // without what it cannot do without, such as its length, nothing can be worked out from a thing
    const whole = Object.entries(parts).every(([name, part]) => !('required' in part) || name in values)
    return any && whole ? values : undefined
  }

  private list({ parts, rows }: List<Record<string, Part>>): unknown {
    const used: unknown[] = []
    for (let row = 1; row <= rows; row++) {
      const names = Object.values(parts).map((part) => [part as Fact, boxName(part as Fact, row)] as const)
      if (names.every(([, name]) => this.isEmpty(name))) continue
      for (const [fact, name] of names) if (fact.required && this.isEmpty(name)) this.missing(name)
      const { values } = this.known(parts, row)
      // a row without what it cannot be without is a fault, and says nothing
      if (Object.entries(parts).every(([name, part]) => !('required' in part) || values[name] != null))
        used.push(values)
    }
    return used.length > 0 ? used : undefined
  }

  private missing(name: string): void {
    this.number(name, { label: labelOf(name), required: true })
  }

  private fact(fact: Fact, name: string): unknown {
    // most boxes are empty
    if (this.isEmpty(name)) return undefined
    const value = this.value(fact, name)
    if (value !== undefined && fact.kind !== 'choice' && fact.kind !== 'country')
      this.state.shown[name] = joined(says(fact, value), ' or ')
    return value
  }

  private value(fact: Fact, name: string): unknown {
    switch (fact.kind) {
      case 'number':
        return this.quantity(fact, name)
      case 'choice':
        return this.choiceOf(fact, name)
      case 'country':
        return this.country(name)
      case 'windows':
        return this.windows(fact, name)
      case 'numbers':
        return this.numbers(fact, name)
      case 'keys':
        return this.keys(fact, name)
      case 'phrases':
        return this.text(name)
          ?.split(/\s*[\r\n]+\s*/)
          .filter((phrase) => phrase !== '')
      default:
        return this.text(name)?.replace(/\r\n?/g, '\n')
    }
  }

  private quantity(fact: FactOf<'number'>, name: string): number | undefined {
    const { unit, apartFromZero, typed } = fact
    const bounds = { ...asked({ ...fact, ...typed }, labelOf(name)), ...(typed?.whole && { whole: true }) }
    const value = this.number(name, bounds) ?? undefined
    if (value === undefined || apartFromZero === undefined || Math.abs(value) >= apartFromZero) return value
    this.fault(
      name,
      say`${labelOf(name)} must be ${quantityIn(unit, apartFromZero)} or more, plus or minus; leave it empty if it is not known.`,
    )
    return undefined
  }

  private choiceOf({ choices }: FactOf<'choice'>, name: string): unknown {
    const word = this.choice(name, choices.map(wordOf), labelOf(name))
    const found = choices.find((choice) => wordOf(choice) === word)
    if (found) this.state.shown[name] = found.label
    return found?.value
  }

  private country(name: string): string | undefined {
    const text = this.text(name)
    if (text === null) return undefined
    const code = countryCode(text)
    if (code === undefined)
      this.fault(
        name,
        `${labelOf(name)} must be a country’s name or its two-letter code; “${text.slice(0, 40)}” is none that is known here.`,
      )
    else this.state.shown[name] = countryName(code)
    return code
  }

  /** "100-240", "115/230", "230 V" as windows. */
  private windows(fact: FactOf<'windows'>, name: string): VoltageWindow[] | undefined {
    const text = this.text(name)
    if (text === null) return undefined
    const bounds = asked(fact, labelOf(name))
    const windows: VoltageWindow[] = []
    for (const part of text.split(/\s*(?:\/|;|\bor\b)\s*/i)) {
      const ends = part.split(/\s*(?:-|–|—|~|\bto\b)\s*/i)
      const read = ends.map((end) => readNumber(end, bounds))
      const wrong = read.find((end) => 'message' in end)
      if (wrong && 'message' in wrong && ends.length <= 2 && ends.every((end) => /\d/.test(end))) {
        this.fault(name, wrong.message)
        return undefined
      }
      const values = read.map((end) => ('value' in end ? end.value : null))
      const [min = null, max = min] = values
      if (ends.length > 2 || min === null || max === null || min > max) {
        this.fault(name, `${labelOf(name)} must be one value, a range or a choice, such as 230, 100-240 or 115/230.`)
        return undefined
      }
      windows.push({ min, max })
    }
    return windows
  }

  /** "50/60", "50-60 Hz", "60". */
  private numbers(fact: FactOf<'numbers'>, name: string): number[] | undefined {
    const text = this.text(name)
    if (text === null) return undefined
    const values: number[] = []
    for (const part of text.split(/\s*(?:\/|;|-|–|\bto\b|\bor\b)\s*/i)) {
      const read = readNumber(part, asked(fact, labelOf(name)))
      if ('message' in read || read.value === null) {
        this.fault(name, 'message' in read ? read.message : `${labelOf(name)} must be such as 50, 60 or 50/60.`)
        return undefined
      }
      values.push(read.value)
    }
    return values
  }

  /** Names with spaces between. */
  private keys({ value }: FactOf<'keys'>, name: string): string[] | undefined {
    const text = this.text(name)
    if (text === null) return undefined
    const read = value.safeParse(text.split(/\s+/))
    if (read.success) return read.data as string[]
    this.fault(name, read.error.issues[0]!.message)
    return undefined
  }

  /** The bore of a plug is narrower than the plug. */
  boresFit({ supply, device }: CheckRequest): void {
    for (const [plug, { innerMm, outerMm }] of [
      [supply.plug, check.supply.parts.plug.parts],
      [device.jack, check.device.parts.jack.parts],
    ] as const)
      if (plug?.outerMm != null && plug.innerMm != null && plug.innerMm >= plug.outerMm)
        this.fault(
          innerMm.address,
          say`${innerMm.label} must be less than the outer diameter, ${joined(says(outerMm as Fact, plug.outerMm))}.`,
        )
  }
}

/** Reads the parameters of a check's address, or a form of the same fields. What was typed is kept whatever it is. */
export function readCheckForm(sent: unknown): CheckForm {
  const read = new CheckReader(sent)
  const empty = Object.values(read.state.values).every((value) => value.trim() === '')
  const request = { site: {}, supply: {}, device: {}, ...read.known(check, null).values } as CheckRequest
  read.boresFit(request)
  return {
    state: read.state,
    faults: read.faults,
    request: empty || read.faults.length > 0 ? null : request,
    usable: empty ? null : request,
    empty,
    query: addressOf(read.state.values),
  }
}

/** The same from an address or query string, as a job or a link keeps it: "country=DE&supply=…". */
export function readCheckAddress(address: string): CheckForm {
  const sent: Record<string, string | string[]> = Object.create(null)
  const parameters = new URLSearchParams(address.replace(/^[^?]*\?/, ''))
  for (const name of new Set(parameters.keys())) {
    const values = parameters.getAll(name)
    sent[name] = values.length > 1 ? values : (values[0] ?? '')
  }
  return readCheckForm(sent)
}

/** The sparse query string for what was typed: known names in their order, empty ones left out, a country as its code. */
export function addressOf(values: Record<string, string>): string {
  const address = new URLSearchParams()
  for (const { name, fact } of boxes) {
    const value = values[name]?.trim() ?? ''
    if (value !== '')
      address.append(name, fact.kind === 'country' ? (countryCode(value) ?? value) : value.replace(/\r\n?/g, '\n'))
  }
  return address.toString()
}

/** What an address carries, name by name: for a form that takes it along. */
export const carried = (query: string): { name: string; value: string }[] =>
  [...new URLSearchParams(query)].map(([name, value]) => ({ name, value }))
