import { plateLimits } from '../tables/plateLimits.js'
import type { PlateMeaning } from '../tables/plateWords.js'
import type { PlateOf } from './labelReading.js'
import { both, highest, listEnd, type Quantity, readQuantity, type StatedKind } from './quantity.js'
import type { Token, WordToken } from './token.js'

export type Section = 'input' | 'output'

/** What keeps a quantity from being a rating. */
export type Exclusion = 'peak' | 'no load' | 'test' | 'part'

export interface QuantityStatement {
  type: 'quantity'
  quantity: Quantity
  line: number
  /** kind printed before it */
  prefix: StatedKind
  max: boolean
  excluded: Exclusion | null
  /** introduced by a word for power that names no side */
  freePower: boolean
  /** said of all outputs together, or of a load or some of them; it is then no single rail's and no input's */
  total: 'all' | 'part' | null
  /** stands in a title: "150W POWER SUPPLY" */
  title: boolean
}

export type Statement =
  | QuantityStatement
  | { type: 'section'; section: Section; token: number; line: number; colon: boolean; secondary: boolean }
  | { type: 'consumption'; token: number; line: number }
  | { type: 'kind'; kind: StatedKind; token: number; line: number }
  | {
      type: 'qualifier'
      meaning: Exclusion | 'max' | 'total' | 'combined' | 'condition' | 'power' | 'other'
      token: number
      line: number
    }
  | { type: 'break'; line: number }
  | { type: 'open'; line: number }
  | { type: 'line'; line: number }
  | { type: 'other'; token: number; line: number }

export interface Statements {
  list: Statement[]
  /** the plate calls its thing an inverter: low volts in, mains volts out */
  inverter: boolean
  /** token ranges [first, last) of fuse markings */
  fuses: [number, number][]
}

const sectionOf: Partial<Record<PlateMeaning, Section>> = {
  input: 'input',
  primary: 'input',
  mains: 'input',
  output: 'output',
  secondary: 'output',
}

/** Words that only say what kind of figure follows. */
const labels: readonly PlateMeaning[] = ['voltage', 'current', 'frequency', 'rating', 'continuous', 'about', 'polarity']
const isPower = ({ quantity }: QuantityStatement): boolean => quantity.dimension === 'W' || quantity.dimension === 'VA'
/** Most voltages joined by "&". */
const longestChain = 4
const kinds: readonly PlateMeaning[] = ['ac', 'dc', 'either kind']
const polarities: readonly PlateMeaning[] = ['centre positive', 'centre negative']
/** How far a short section word may stand from its quantity, in tokens. */
const weakReach = 8
/** How far the figures of a fuse may stand from the word for it, in tokens. */
const fuseReach = 4

/** Turns tokens into what they state, one after the other; shielded passages ("for use with …", type numbers) are left out. */
export function readStatements(tokens: Token[], of: PlateOf): Statements {
  return new StatementReader(tokens, of).run()
}

class StatementReader {
  readonly #list: Statement[] = []
  readonly #fuses: [number, number][] = []
  #at = 0
  #line = 0
  #inverter = false
  #volts: number | undefined

  constructor(
    readonly tokens: Token[],
    readonly of: PlateOf,
  ) {}

  run(): Statements {
    while (this.#at < this.tokens.length) this.#step()
    this.#bindQualifiers()
    this.#bindParts()
    if (this.of === 'device') this.#bindRemarks()
    this.#bindTitles()
    return { list: this.#list, inverter: this.#inverter, fuses: this.#fuses }
  }

  #step() {
    const at = this.#at
    const token = this.tokens[at]!
    if (token.type === 'line') {
      this.#list.push({ type: 'line', line: this.#line })
      this.#line += 1
      this.#at += 1
      return
    }
    if (token.type === 'fuse') return this.#fuse(at, at)
    if (token.type === 'symbol') return this.#symbol(at)
    if (token.type === 'word') return this.#word(at, token)
    if (this.#isCount(at)) {
      this.#list.push({ type: 'other', token: at, line: this.#line })
      this.#at += 1
      return
    }
    if (token.type === 'number' || (token.type === 'sign' && '+-±'.includes(token.sign))) {
      const quantity = readQuantity(this.tokens, at)
      if (quantity) return this.#quantity(quantity)
      if (token.type === 'number') {
        if (this.#phases(at)) return
        this.#list.push({ type: 'other', token: at, line: this.#line })
        this.#at = listEnd(this.tokens, at)
        return
      }
    }
    if (token.type === 'sign') {
      if (token.sign === ',' || token.sign === ';' || token.sign === '|')
        this.#list.push({ type: 'break', line: this.#line })
      else if (token.sign === '(' || token.sign === '[') this.#list.push({ type: 'open', line: this.#line })
      else if (token.sign === '.' && token.spaceAfter) this.#list.push({ type: 'break', line: this.#line })
      else if (token.sign === '=' && this.#isPrefixEquals(at)) this.#kind(at, 'dc')
      else if (token.sign === '~' && this.#isTrailingTilde(at)) this.#kind(at, 'ac')
      this.#at += 1
      return
    }
    this.#list.push({ type: 'other', token: at, line: this.#line })
    this.#at += 1
  }

  #kind(at: number, kind: StatedKind): void {
    this.#list.push({ type: 'kind', kind, token: at, line: this.#line })
  }

  #symbol(at: number) {
    const token = this.tokens[at]!
    if (token.type === 'symbol' && (token.meaning === 'ac' || token.meaning === 'dc')) this.#kind(at, token.meaning)
    else if (token.type === 'symbol' && token.meaning === 'fuse') {
      const end = this.#fuseRegion(at + 1)
      if (end) return this.#fuse(at, at + 1, end)
    } else this.#list.push({ type: 'other', token: at, line: this.#line })
    this.#at = at + 1
  }

  /** "#3 -12V": the number of an output. */
  #isCount(at: number): boolean {
    const [mark, number] = [this.tokens[at - 1], this.tokens[at]]
    return number?.type === 'number' && number.unit === null && mark?.type === 'sign' && mark.sign === '#'
  }

  /** "3~ 400V": the number of phases; the tilde says alternating current. */
  #phases(at: number): boolean {
    const count = this.tokens[at]!
    const tilde = this.tokens[at + 1]
    if (count.type !== 'number' || !/^[13]$/.test(count.digits ?? '') || count.unit) return false
    if (tilde?.type !== 'sign' || tilde.sign !== '~') return false
    this.#list.push({ type: 'other', token: at, line: this.#line })
    this.#kind(at + 1, 'ac')
    this.#at = at + 2
    return true
  }

  /** "220V =9V": set off from what precedes and joined to the number; after a word an equals sign is only that. */
  #isPrefixEquals(at: number): boolean {
    const token = this.tokens[at]!
    const before = this.tokens[at - 1]
    if (!token.spaceBefore || token.spaceAfter) return false
    // "Вход ~220В, Выход =12В": the plate sets both signs before their figures
    if (before?.type === 'word') return this.#list.some((one) => one.type === 'quantity' && one.quantity.tildeBefore)
    return before === undefined || before.type === 'number' || before.type === 'line' || before.type === 'sign'
  }

  /** A tilde after amperes, or in brackets, says the kind of what was printed before. */
  #isTrailingTilde(at: number): boolean {
    const before = this.tokens[at - 1]
    const after = this.tokens[at + 1]
    return before?.type === 'sign' && before.sign === '(' && after?.type === 'sign' && after.sign === ')'
  }

  #word(at: number, token: WordToken) {
    const section = sectionOf[token.meaning]
    const line = this.#line
    if (section) {
      if (!token.weak || this.#leadsToQuantity(at + 1, token.meaning === 'mains') || this.#closesQuantity(at)) {
        const skipped = this.#bracketedLabel(at + 1)
        const next = this.tokens[skipped]
        this.#list.push({
          type: 'section',
          section,
          token: at,
          line,
          colon: next?.type === 'sign' && next.sign === ':',
          secondary: token.meaning === 'secondary' || token.meaning === 'primary',
        })
        this.#at = skipped
        return
      } else this.#list.push({ type: 'other', token: at, line })
    } else if (kinds.includes(token.meaning)) {
      this.#kind(at, token.meaning === 'ac' || token.meaning === 'dc' ? token.meaning : 'either')
    } else if (token.meaning === 'consumption') {
      this.#list.push({ type: 'consumption', token: at, line })
    } else if (token.meaning === 'fuse') {
      const end = this.#fuseRegion(at + 1)
      const last = this.#list.at(-1)
      const joined = last?.type === 'quantity' && last.quantity.last === at && last.quantity.dimension === 'A'
      // "2A FUSE", "13A FUSE, FIT 3A"; in "2A FUSE: T3A" the first is no fuse's
      if (joined && (!end || this.#wordBetween(at + 1, end[0]))) {
        this.#list.pop()
        this.#fuses.push([last.quantity.first, at])
        token.role = 'fuse'
        this.#at = at + 1
        if (end) this.#fuse(at, end[0], end)
        return
      }
      if (end) return this.#fuse(at, end[0], end)
      // "0.5A 250V FUSE"
      const amperes = this.#list.at(-2)
      if (
        last?.type === 'quantity' &&
        last.quantity.last === at &&
        last.quantity.dimension === 'V' &&
        amperes?.type === 'quantity' &&
        amperes.quantity.dimension === 'A' &&
        amperes.quantity.last === last.quantity.first
      ) {
        this.#list.splice(-2)
        this.#fuses.push([amperes.quantity.first, at])
        token.role = 'fuse'
      } else this.#list.push({ type: 'other', token: at, line })
    } else if (token.meaning === 'identity') return this.#identity(at)
    else if (token.meaning === 'only for' && this.of === 'supply') return this.#shielded(at)
    else if (this.#isOfAnotherThing(at, token.meaning)) {
      const bracket = this.#bracketAround(at)
      this.#withdraw(bracket ?? at)
      return this.#shielded(at, bracket !== null)
    } else if (token.meaning === 'peak' || token.meaning === 'no load' || token.meaning === 'test')
      this.#list.push({ type: 'qualifier', meaning: token.meaning, token: at, line })
    else if (
      token.meaning === 'max' ||
      token.meaning === 'total' ||
      token.meaning === 'combined' ||
      token.meaning === 'condition' ||
      token.meaning === 'power'
    ) {
      if (token.meaning === 'max' || token.meaning === 'power') token.role = 'label'
      this.#list.push({ type: 'qualifier', meaning: token.meaning, token: at, line })
    } else if (labels.includes(token.meaning)) {
      token.role = 'label'
      this.#list.push({ type: 'qualifier', meaning: 'other', token: at, line })
    } else {
      if (token.meaning === 'inverter') this.#inverter = true
      this.#list.push({ type: 'other', token: at, line })
    }
    this.#at = at + 1
  }

  /**
   * Words for things whose figures are none of the plate's own. A machine lists what it feeds inside; on a supply the same words name
   * outputs. A motor is a part of the machine, save where its mains voltage is the only voltage there is: then it is the machine.
   */
  #isOfAnotherThing(at: number, meaning: PlateMeaning): boolean {
    if (meaning === 'elsewhere') return true
    if (meaning === 'inner load') return this.of === 'device' && this.#leadsToQuantity(at + 1, false)
    return meaning === 'motor' && !(this.#leadsToMains(at + 1) && this.#hasOneVoltage)
  }

  /** "MOTOR 2200 W, 220 V 50 Hz": whether mains volts or a frequency follow, perhaps behind watts. */
  #leadsToMains(from: number): boolean {
    if (this.#leadsToQuantity(from, true)) return true
    const power = readQuantity(this.tokens, from)
    if (power?.dimension !== 'W') return false
    const next = this.tokens[power.last]
    return this.#leadsToQuantity(next?.type === 'sign' ? power.last + 1 : power.last, true)
  }

  /** Whether only one figure of the plate has volts behind it. */
  get #hasOneVoltage(): boolean {
    this.#volts ??= this.tokens.filter((token) => token.type === 'number' && token.unit?.dimension === 'V').length
    return this.#volts === 1
  }

  /** "INPUT (110V): 100-120V": a voltage in brackets before the colon or another voltage only names the setting; the index after it. */
  #bracketedLabel(at: number): number {
    const is = (index: number, sign: string): boolean => {
      const token = this.tokens[index]
      return token?.type === 'sign' && token.sign === sign
    }
    const named = this.tokens[at + 1]
    const isVoltage = named?.type === 'number' && named.unit?.dimension === 'V'
    if (!is(at, '(') || !isVoltage || !is(at + 2, ')')) return at
    return is(at + 3, ':') || readQuantity(this.tokens, at + 3)?.dimension === 'V' ? at + 3 : at
  }

  /** Whether a quantity follows, with nothing but labels and punctuation between. */
  #leadsToQuantity(from: number, mains: boolean): boolean {
    for (let at = from; at < from + weakReach; at += 1) {
      const token = this.tokens[at]
      if (!token) return false
      if (token.type === 'number' || (token.type === 'sign' && '+-±'.includes(token.sign))) {
        const quantity = readQuantity(this.tokens, at)
        if (quantity) {
          if (quantity.dimension === 'other') return false
          if (!mains) return true
          const top = Math.max(...quantity.elements.map(({ value }) => value))
          return quantity.dimension === 'Hz' || (quantity.dimension === 'V' && !(top < plateLimits.leastMainsV.value))
        }
        if (token.type === 'number') return false
      }
      if (token.type === 'word') {
        const known =
          sectionOf[token.meaning] !== undefined ||
          kinds.includes(token.meaning) ||
          labels.includes(token.meaning) ||
          token.meaning === 'max' ||
          token.meaning === 'power' ||
          token.meaning === 'consumption'
        if (!known) return false
      } else if (token.type === 'text' || token.type === 'drawing' || token.type === 'fuse') return false
    }
    return false
  }

  /** "12V DC OUT" at the end of a line or clause. */
  #closesQuantity(at: number): boolean {
    const last = this.#list.at(-1)
    const next = this.tokens[at + 1]
    const polarity =
      next?.type === 'drawing' ||
      (next?.type === 'word' && (next.meaning === 'polarity' || polarities.includes(next.meaning)))
    const ends = polarity || !next || next.type === 'line' || (next.type === 'sign' && '/,;|)'.includes(next.sign))
    return last?.type === 'quantity' && last.quantity.last === at && ends
  }

  #quantity(quantity: Quantity) {
    this.#releaseKind(quantity)
    const last = this.#list.at(-1)
    const [before, mark] = [this.tokens[quantity.first - 2], this.tokens[quantity.first - 1]]
    // "+15 @ 3A": the current of a figure that lacks its unit
    const isOfAnother =
      mark?.type === 'sign' &&
      mark.sign === '@' &&
      (before?.type === 'text' || (before?.type === 'number' && before.unit === null))
    // that tilde is the sign of the voltage before
    if (last?.type === 'quantity' && last.quantity.last === quantity.first) quantity.tildeBefore = false
    this.#list.push({
      type: 'quantity',
      quantity,
      line: this.#line,
      prefix: null,
      max: false,
      excluded: isOfAnother ? 'part' : null,
      freePower: false,
      total: null,
      title: false,
    })
    this.#at = quantity.last
  }

  /** "INPUT 120V DC OUTPUT 9V": the word before a section is that section's where it does not suit the voltage before. */
  #releaseKind(quantity: Quantity): void {
    const closing = this.tokens[quantity.last - 1]
    const next = this.tokens[quantity.last]
    if (quantity.dimension !== 'V' || closing?.type !== 'word' || next?.type !== 'word') return
    const section = sectionOf[next.meaning]
    if (!section || !this.#leadsToQuantity(quantity.last + 1, false)) return
    const top = Math.max(...quantity.elements.map(({ value }) => value))
    const mains = top >= plateLimits.leastMainsV.value
    const suits = mains ? quantity.kind !== 'dc' : !(quantity.kind === 'ac' && section === 'input')
    if (suits) return
    quantity.kind = null
    quantity.last -= 1
  }

  /** A model, serial or patent number, a date: the word and the run after it say nothing of quantities. */
  #identity(at: number) {
    this.#list.push({ type: 'other', token: at, line: this.#line })
    let next = at + 1
    while (this.#isGlue(next)) next += 1
    const first = this.tokens[next]
    if (!first || first.type === 'line' || first.type === 'word' || first.type === 'symbol') {
      this.#at = first?.type === 'word' && first.meaning === 'identity' ? next : at + 1
      return
    }
    let end = next + 1
    while (end < this.tokens.length && this.tokens[end]!.start === this.tokens[end - 1]!.end) {
      const token = this.tokens[end]!
      if (token.type === 'line' || (token.type === 'sign' && ',;|'.includes(token.sign) && token.spaceAfter)) break
      end += 1
    }
    this.#list.push({ type: 'break', line: this.#line })
    this.#at = end
  }

  #isGlue(at: number): boolean {
    const token = this.tokens[at]
    return token?.type === 'sign' && ':.=-#'.includes(token.sign)
  }

  /** What is said of another thing ends with the line or where a section begins. */
  #shielded(at: number, inBrackets = false) {
    this.#list.push({ type: 'other', token: at, line: this.#line })
    let end = at + 1
    while (end < this.tokens.length) {
      const token = this.tokens[end]!
      if (token.type === 'line' || token.type === 'drawing') break
      if (inBrackets && token.type === 'sign' && token.sign === ')') break
      if (token.type === 'word' && sectionOf[token.meaning] && (!token.weak || this.#leadsToQuantity(end + 1, false)))
        break
      if (token.type === 'word' && token.meaning === 'fuse') break
      end += 1
    }
    this.#list.push({ type: 'break', line: this.#line })
    this.#at = end
  }

  #fuse(at: number, from: number, region?: [number, number]) {
    const [first, last] = region ?? this.#fuseRegion(from) ?? [at, at + 1]
    this.tokens[at]!.role = 'fuse'
    this.#fuses.push([first, last])
    this.#at = last
  }

  #wordBetween(from: number, to: number): boolean {
    return this.tokens.slice(from, to).some(({ type }) => type === 'text' || type === 'word')
  }

  /** The bracket that was opened shortly before and is not closed yet. */
  #bracketAround(at: number): number | null {
    for (let back = at - 1; back >= 0 && at - back <= weakReach; back -= 1) {
      const token = this.tokens[back]!
      if (token.type === 'line' || (token.type === 'sign' && token.sign === ')')) return null
      if (token.type === 'sign' && token.sign === '(') return back
    }
    return null
  }

  /** "12V BATTERY", "12V 7Ah BATTERY", "9V (6 CELLS)": low volts that directly precede the other thing are its own. */
  #withdraw(at: number) {
    let next = at
    for (let back = this.#list.length - 1; back >= 0 && at - next < fuseReach; back -= 1) {
      const statement = this.#list[back]!
      // what stands inside the bracket is the other thing's
      if ('token' in statement ? statement.token >= at : statement.type === 'open' || statement.type === 'break')
        continue
      if (statement.type === 'quantity' && statement.quantity.first >= at) {
        // "29.4V 2A (for 25.2V LI-ION)"
        this.#list.splice(back, 1)
        continue
      }
      if (statement.type !== 'quantity' || statement.quantity.last !== next) return
      next = statement.quantity.first
      if (statement.quantity.dimension === 'other') continue
      const before = this.#list[back - (this.#list[back - 1]?.type === 'kind' ? 2 : 1)]
      const named = before?.type === 'section'
      if (statement.quantity.dimension === 'V' && !named && highest(statement.quantity) < plateLimits.leastMainsV.value)
        this.#list.splice(back)
      return
    }
  }

  /** The tokens of a fuse marking from here on: amperes, volts, letters of characteristic and breaking capacity. */
  #fuseRegion(from: number): [number, number] | null {
    let first = from
    while (first < from + fuseReach) {
      const token = this.tokens[first]
      if (!token || token.type === 'line') return null
      if (this.#fusePart(first) && token.type !== 'sign') break
      if (token.type === 'word' && sectionOf[token.meaning]) return null
      first += 1
    }
    if (first >= from + fuseReach) return null
    let last = first
    let amperes = false
    for (let at = first; at < this.tokens.length; at += 1) {
      if (!this.#fusePart(at) || (amperes && this.#isRating(at))) break
      const token = this.tokens[at]!
      if (token.type === 'fuse' || (token.type === 'number' && token.unit?.dimension === 'A')) amperes = true
      if (token.type !== 'sign') last = at + 1
    }
    return amperes ? [first, last] : null
  }

  /** "T2A 230V~ 50Hz": after a fuse's amperes, volts that a frequency or a power follows are the plate's, also after a whole marking. */
  #isRating(at: number): boolean {
    const volts = this.tokens[at]!
    if (volts.type !== 'number' || volts.unit?.dimension !== 'V') return false
    const skip = (index: number, signs: string): number => {
      const token = this.tokens[index]
      return token?.type === 'sign' && signs.includes(token.sign) ? index + 1 : index
    }
    const next = this.tokens[skip(at + 1, '~=')]
    if (next?.type === 'number' && next.unit && ['Hz', 'W', 'VA'].includes(next.unit.dimension)) return true
    if (this.tokens[at - 1]?.type !== 'fuse') return false
    const after = this.tokens[skip(at + 1, ':/')]
    return !(after?.type === 'fuse' || (after?.type === 'number' && after.unit?.dimension === 'A'))
  }

  #fusePart(at: number): boolean {
    const token = this.tokens[at]
    if (!token) return false
    if (token.type === 'fuse') return true
    if (token.type === 'number') return token.unit ? token.unit.dimension === 'A' || token.unit.dimension === 'V' : true
    if (token.type === 'text') return token.end - token.start <= 2
    if (token.type === 'word') return token.meaning === 'fuse speed'
    return token.type === 'sign' && '/-,:()×&~'.includes(token.sign)
  }

  /** Ties words such as "peak", "no load" and "max." to the quantity they speak of. */
  #bindQualifiers(): void {
    this.#list.forEach((statement, index) => {
      this.#bindKind(index)
      if (statement.type !== 'qualifier' || statement.meaning === 'other') return
      if (statement.meaning === 'total' || statement.meaning === 'combined') {
        this.#bindTotal(index)
        return
      }
      if (statement.meaning === 'condition') {
        this.#bindCondition(index)
        return
      }
      if (statement.meaning === 'power') {
        const next = this.#following(index)
        if (next && isPower(next) && !this.#besideSection(index)) next.freePower = true
        return
      }
      const before = this.#list[index - 1]
      const after = this.#list[this.#afterLabels(index + 1)]
      const fits = (other: Statement | undefined): other is QuantityStatement =>
        other?.type === 'quantity' && this.#concerns(statement.meaning, other.quantity)
      if (statement.meaning === 'max') {
        if (fits(before)) before.max = true
        else {
          const next = this.#following(index)
          if (next) next.max = true
        }
        return
      }
      const exclude = (other: QuantityStatement): void => {
        other.excluded = statement.meaning as Exclusion
      }
      if (fits(before)) {
        // "2A SURGE 4A", "4A PEAK 2A": the larger of two currents is the peak
        const alike = fits(after) && after.quantity.dimension === before.quantity.dimension
        const [one, other] = alike ? [highest(before.quantity), highest(after.quantity)] : [1, 0]
        if (statement.meaning !== 'peak' || one >= other) exclude(before)
        if (alike && (statement.meaning !== 'peak' || other >= one)) exclude(after)
        return
      }
      const next = this.#following(index)
      if (next && this.#concerns(statement.meaning, next.quantity)) exclude(next)
    })
  }

  /** "TOTAL OUTPUT 150W", "34W TOTAL". */
  #bindTotal(index: number): void {
    const statement = this.#list[index]
    if (statement?.type !== 'qualifier') return
    const total = statement.meaning === 'total' ? 'all' : 'part'
    // "POTENCIA TOTAL DE SALIDA 60W"
    const [word, section] = [this.#list[index + 1], this.#list[index + 2]]
    const next = this.#following(word?.type === 'other' && section?.type === 'section' ? index + 1 : index)
    if (next && isPower(next)) {
      next.total ??= total
      return
    }
    let at = index - 1
    for (; at > index - 4; at -= 1) {
      const one = this.#list[at]
      if (one?.type !== 'qualifier' || (one.meaning !== 'max' && one.meaning !== 'other')) break
    }
    const before = this.#list[at]
    if (before?.type === 'quantity' && before.line === statement.line && isPower(before)) before.total ??= total
  }

  /** "87 % AT 230V", "20 ms AT 115V": the voltage at which another figure holds. */
  #bindCondition(index: number): void {
    const [before, after] = [this.#list[index - 1], this.#list[index + 1]]
    if (before?.type === 'quantity' && before.quantity.dimension === 'other' && after?.type === 'quantity')
      after.excluded = 'test'
  }

  /**
   * Voltages that only name rails described elsewhere: "+3.3V & +5V: 100W", "COMBINED POWER ON +5V & +12V", "total 5V 4.8A",
   * and the bounds in brackets beside a rated voltage, "24V (22-28V)".
   */
  #bindParts(): void {
    const volts = new Map<number, number>()
    for (const statement of this.#list) {
      if (statement.type !== 'quantity' || statement.quantity.dimension !== 'V') continue
      for (const { value } of statement.quantity.elements) volts.set(value, (volts.get(value) ?? 0) + 1)
    }
    for (let index = 0; index < this.#list.length; index += 1) {
      const first = this.#list[index]
      if (first?.type !== 'quantity' || first.quantity.dimension !== 'V' || first.excluded) continue
      this.#bindBounds(index, first)
      const { chain, end } = this.#chain(index)
      const isKnown = chain.every(({ quantity }) => quantity.elements.every(({ value }) => (volts.get(value) ?? 0) > 1))
      const told = this.#totalBefore(index)
      const after = this.#list[end]
      const power = this.#powerAfter(end)
      const names = chain.length > 1 || first.quantity.elements.length > 1
      const isPart = (names && power && (isKnown || told)) || (told && isKnown)
      if (!isPart) continue
      for (const one of chain) one.excluded = 'part'
      if (power) power.excluded = 'part'
      else if (after?.type === 'quantity' && after.line === first.line && after.quantity.dimension === 'A')
        after.excluded = 'part'
      index = end - 1
    }
  }

  /** "12V 1A (max. 15V)", "6-12V (9V 1A adapter supplied)": low volts in brackets behind a machine's own are a remark. */
  #bindRemarks(): void {
    let hasVolts = false
    let within = false
    for (const [index, statement] of this.#list.entries()) {
      if (statement.type === 'open') within = hasVolts
      if (statement.type === 'line' || statement.type === 'section') within = false
      if (statement.type !== 'quantity') continue
      const { quantity } = statement
      if (within && this.#isClosed(index, quantity.first)) within = false
      const isLow = quantity.dimension === 'V' && highest(quantity) < plateLimits.leastMainsV.value
      if (!within) hasVolts ||= isLow && !statement.excluded
      else if (isLow) this.#excludeRemark(index)
    }
  }

  /** Whether the bracket that was opened last before a statement is closed before its first token. */
  #isClosed(index: number, first: number): boolean {
    for (let at = first - 1; at >= 0 && index > 0; at -= 1) {
      const token = this.tokens[at]!
      if (token.type === 'sign' && token.sign === ')') return true
      if (token.type === 'sign' && token.sign === '(') return false
    }
    return false
  }

  /** The volts of a remark and the figures behind them, as far as they stand in the same bracket. */
  #excludeRemark(index: number): void {
    for (let at = index; at < this.#list.length; at += 1) {
      const one = this.#list[at]!
      if (one.type === 'line' || one.type === 'section') return
      if (one.type !== 'quantity') continue
      if (at > index && (this.#isClosed(at, one.quantity.first) || one.quantity.dimension === 'V')) return
      one.excluded = 'part'
    }
  }

  /** Bounds stand behind the rated voltage or behind its amperes and watts, with a word such as "ADJ" before them or none. */
  #bindBounds(index: number, nominal: QuantityStatement): void {
    const open = this.#firstFrom(index + 1, (one) => one.type === 'quantity' && one.quantity.dimension !== 'V')
    if (this.#list[open]?.type !== 'open') return
    const bounds = this.#list[this.#firstFrom(open + 1, ({ type }) => type === 'other' || type === 'qualifier')]
    if (bounds?.type !== 'quantity' || bounds.quantity.dimension !== 'V') return
    const { elements, joints } = bounds.quantity
    const [value] = nominal.quantity.elements
    const closes = this.tokens[bounds.quantity.last]
    if (joints[0] !== 'range' || closes?.type !== 'sign' || closes.sign !== ')') return
    if (elements[0]!.value <= value!.value && elements[1]!.value >= value!.value) bounds.excluded = 'part'
  }

  /** The index of the first statement from one on that is not passed over, of a few. */
  #firstFrom(index: number, passes: (statement: Statement) => boolean): number {
    let at = index
    while (at < index + 3 && this.#list[at] && passes(this.#list[at]!)) at += 1
    return at
  }

  /** Voltages joined by "&" or a word for "and", and the index of the statement after them. */
  #chain(index: number): { chain: QuantityStatement[]; end: number } {
    const chain: QuantityStatement[] = []
    let end = index
    while (chain.length < longestChain) {
      const previous = chain[chain.length - 1]
      const joint = previous && this.tokens[previous.quantity.last]
      const isWord = joint?.type === 'word' && joint.meaning === 'or'
      const at = isWord && this.#list[end]?.type === 'other' ? end + 1 : end
      const one = this.#list[at]
      if (one?.type !== 'quantity' || one.quantity.dimension !== 'V') break
      const isSign = joint?.type === 'sign' && joint.sign === '&'
      if (previous && (!(isWord || isSign) || one.quantity.first !== previous.quantity.last + 1)) break
      chain.push(one)
      end = at + 1
    }
    return { chain, end }
  }

  /** Whether a word for a total stands before, with only labels and small words between. */
  #totalBefore(index: number): boolean {
    for (let at = index - 1; at > index - 6; at -= 1) {
      const one = this.#list[at]
      if (one?.type === 'qualifier' && (one.meaning === 'total' || one.meaning === 'combined')) return true
      if (one?.type !== 'qualifier' && one?.type !== 'other' && one?.type !== 'section') return false
    }
    return false
  }

  /** The watts that follow voltages, with only words between. */
  #powerAfter(index: number): QuantityStatement | null {
    for (let at = index; at < index + 5; at += 1) {
      const one = this.#list[at]
      if (one?.type === 'quantity') return isPower(one) ? one : null
      if (one?.type !== 'qualifier' && one?.type !== 'other' && one?.type !== 'open') return null
    }
    return null
  }

  /** "150W POWER SUPPLY", "ADAPTER 45W": watts beside the name of the thing, on a line without volts, say what it is called. */
  #bindTitles(): void {
    const titles = new Set<number>()
    const titled = new Set<number>()
    const rated = new Set<number>()
    for (const statement of this.#list) {
      if (statement.type === 'other') {
        const token = this.tokens[statement.token]
        if (token?.type === 'word' && token.meaning === 'wall transformer') {
          titles.add(statement.line)
          titled.add(statement.token)
        }
      }
      if (statement.type === 'section' || statement.type === 'consumption') rated.add(statement.line)
      if (statement.type === 'quantity' && !isPower(statement) && statement.quantity.dimension !== 'other')
        rated.add(statement.line)
    }
    this.#list.forEach((statement, index) => {
      if (statement.type !== 'quantity' || !isPower(statement)) return
      const beside = [this.#list[index - 1], this.#list[index + 1]]
      const adjoins = beside.some(
        (one) => one?.type === 'other' && one.line === statement.line && titled.has(one.token),
      )
      if (adjoins || (titles.has(statement.line) && !rated.has(statement.line))) statement.title = true
    })
  }

  #afterLabels(index: number): number {
    const statement = this.#list[index]
    return statement?.type === 'qualifier' && (statement.meaning === 'other' || statement.meaning === 'max')
      ? index + 1
      : index
  }

  #concerns(meaning: string, quantity: Quantity): boolean {
    if (meaning === 'no load' || meaning === 'test') return quantity.dimension === 'V'
    if (meaning === 'peak') return quantity.dimension !== 'Hz' && quantity.dimension !== 'other'
    return true
  }

  /** The quantity that follows with only labels between. */
  #following(index: number): QuantityStatement | null {
    for (let at = index + 1; at < index + 5; at += 1) {
      const statement = this.#list[at]
      if (!statement) return null
      if (statement.type === 'quantity') return statement
      if (statement.type !== 'qualifier' && statement.type !== 'section' && statement.type !== 'consumption')
        return null
    }
    return null
  }

  /** "OUTPUT POWER", "Potencia máxima de salida": the side is named in the same phrase. */
  #besideSection(index: number): boolean {
    for (const step of [-1, 1]) {
      for (let at = index + step; at >= 0 && Math.abs(at - index) < 4; at += step) {
        const statement = this.#list[at]
        if (statement?.type === 'section' || statement?.type === 'consumption') return true
        if (statement?.type !== 'qualifier' && statement?.type !== 'other') break
      }
    }
    return false
  }

  /** A kind before a voltage is its own. */
  #bindKind(index: number) {
    const statement = this.#list[index]
    const next = this.#list[index + 1]
    if (statement?.type !== 'kind' || next?.type !== 'quantity' || next.quantity.dimension !== 'V') return
    next.prefix = both(next.prefix, statement.kind)
    this.tokens[statement.token]!.role = 'kind'
  }
}
