import { plateLimits } from '../tables/plateLimits.js'
import type { UnitDimension } from '../tables/plateWords.js'
import type { NumberToken, Token } from './token.js'

export type Joint = 'range' | 'list'

/** What a plate says of the kind of current: both words together ("AC/DC") say either. */
export type StatedKind = 'ac' | 'dc' | 'either' | 'conflict' | null

export interface Element {
  value: number
  sign: '+' | '-' | '±' | null
  /** said by its own unit: "VAC" */
  kind: 'ac' | 'dc' | null
}

/** Numbers of one unit that belong together: "9V", "100-240V", "6A/3A", "±15V", "9-0-9V", "2 x 12V". */
export interface Quantity {
  dimension: UnitDimension
  elements: Element[]
  /** between the elements, one fewer */
  joints: Joint[]
  kind: StatedKind
  /** a digit is worn away or a number can be read two ways: the place is taken, the value is not known */
  worn: boolean
  /** a number was read through damaged print, so a person must confirm it */
  unsure: boolean
  /** "2 x 12V": 2 */
  times: number
  /** "~9V": a tilde before the number, a sign for a.c. or for "about" */
  tildeBefore: boolean
  /** tokens [first, last) */
  first: number
  last: number
}

/** How far from a minus that is set off a plus before volts may stand, in tokens. */
const plusReach = 24
/** Longest list read; longer ones are no plate's. */
const longestList = 16
const cycles = new Set([16, 25, 40, 42, 45, 47, 50, 60, 63, 65, 66, 400])
const usualMains = new Set([50, 60])

/**
 * The value of figures with their mark, given what they count.
 *
 * A point or comma with three figures after it is a mark of thousands before mA, a decimal mark before A and after a lone
 * zero; elsewhere both readings are possible and there is no value.
 *
 * @returns the values [SI], two for "50,60Hz"; null where there is no single reading
 */
export function valuesOf(digits: string | null, dimension: UnitDimension, scale: number): number[] | null {
  if (digits === null) return null
  const mark = digits.search(/[.,]/)
  if (mark < 0) return [tidy(Number(digits) * scale)]
  const whole = digits.slice(0, mark)
  const fraction = digits.slice(mark + 1)
  if (fraction.length > 3) return null
  if (dimension === 'Hz' && whole.length === 2 && fraction.length === 2) {
    return digits.charAt(mark) === ',' ? [Number(whole), Number(fraction)] : null
  }
  if (fraction.length === 3) {
    const milli = dimension === 'A' && scale < 1
    if (milli) return /^[1-9]\d{0,1}$/.test(whole) ? [tidy(Number(whole + fraction) * scale)] : null
    if (!(dimension === 'A' && whole.length <= 2) && whole !== '0' && whole !== '') return null
  }
  return [tidy(Number(`${whole || '0'}.${fraction}`) * scale)]
}

/** Frees a product such as 0.1 × 3 of the last binary digits. */
const tidy = (value: number): number => Number(value.toPrecision(12))

/** Whether a value can stand on a plate at all. */
export function isPlausible(value: number, dimension: UnitDimension): boolean {
  const size = Math.abs(value)
  switch (dimension) {
    case 'V':
      return size <= plateLimits.mostV.value
    case 'A':
      return size <= plateLimits.mostA.value
    case 'Hz':
      return size >= plateLimits.leastHz.value && size <= plateLimits.mostHz.value
    default:
      return size <= plateLimits.mostW.value
  }
}

/** Whether a supply can have this frequency; "115 Hz" is a figure whose unit belongs to the next. */
const isSupplyFrequency = (value: number): boolean =>
  value <= plateLimits.topOfPowerHz.value || value >= plateLimits.leastAircraftHz.value

/**
 * Whether voltages are the settings of a switched supply, which stands in for cells: three or more rising multiples of 1.5 V
 * from a few cells on.
 *
 * @param volts  as printed, in order [V]
 */
export const areSettings = (volts: readonly number[]): boolean =>
  volts.length >= plateLimits.leastSettings.value &&
  volts[0]! <= plateLimits.mostFirstSettingV.value &&
  volts.every(
    (value, at) =>
      value > 0 && Number.isInteger(value / plateLimits.cellV.value) && (at === 0 || value > volts[at - 1]!),
  )

/** The index after numbers without a unit that are joined to each other, as in "60950-1" and "12/93". */
export function listEnd(tokens: readonly Token[], from: number): number {
  let at = from + 1
  for (;;) {
    const joint = tokens[at]
    const next = tokens[at + 1]
    if (joint?.type !== 'sign' || !isJoint(joint) || next?.type !== 'number' || next.unit) return at
    // "230/2x9V": the figure belongs to what follows
    const after = tokens[at + 2]
    if (after?.type === 'sign' && after.sign === '×') return at
    at += 2
  }
}

/** Reads one quantity that begins at a token; null if none does. */
export function readQuantity(tokens: readonly Token[], from: number): Quantity | null {
  return new Reader(tokens).read(from)
}

class Reader {
  constructor(readonly tokens: readonly Token[]) {}

  read(from: number): Quantity | null {
    let at = from
    let times = 1
    const multiplier = this.#multiplier(at)
    if (multiplier) ({ times, at } = multiplier)
    const series = this.#series(at)
    if (series) return series
    const first = this.#signed(at)
    if (!first) return null
    const numbers: { token: NumberToken; sign: Element['sign'] }[] = [{ token: first.number, sign: first.sign }]
    const read = [first.number]
    const joints: Joint[] = []
    let kind: StatedKind = null
    let unit = first.number.unit
    let end = first.next
    let lacksJoint = false
    for (;;) {
      if (numbers.length > longestList) break
      const last = numbers[numbers.length - 1]!
      if (last.token.unit?.kind) kind = both(kind, last.token.unit.kind)
      const suffix = last.token.unit?.dimension === 'V' ? this.#suffix(end, last.token.unit.kind) : null
      const joint = this.#joint(end, read, unit?.dimension)
      // a kind between two numbers of one list: "115V~/230V~"
      const later = suffix && !joint ? this.#joint(suffix.next, read, unit?.dimension) : null
      const next = joint ?? (later && isStepDown(last.token, later.number) ? null : later)
      if (suffix && !joint) {
        kind = both(kind, suffix.kind)
        end = suffix.next
      }
      if (!next) break
      lacksJoint ||= this.tokens[next.next - 2] === last.token
      numbers.push({ token: next.number, sign: next.sign })
      read.push(next.number)
      joints.push(next.joint)
      unit ??= next.number.unit
      end = next.next
    }
    if (!unit) {
      const asCycles = this.#cycles(read, end)
      if (!asCycles) return null
      unit = { dimension: 'Hz', scale: 1, kind: null }
      end = asCycles
    }
    return this.#quantity({ numbers, joints, unit, kind, times, from, end, at, lacksJoint })
  }

  #quantity(read: {
    numbers: { token: NumberToken; sign: Element['sign'] }[]
    joints: Joint[]
    unit: NonNullable<NumberToken['unit']>
    kind: StatedKind
    times: number
    from: number
    end: number
    at: number
    lacksJoint?: boolean
  }): Quantity {
    const { unit, joints } = read
    const elements: Element[] = []
    const allJoints: Joint[] = []
    let worn = false
    read.numbers.forEach(({ token, sign }, index) => {
      const values = valuesOf(token.digits, unit.dimension, token.unit?.scale ?? this.#scale(read.numbers, index))
      if (!values || values.some((value) => !isPlausible(value, unit.dimension))) worn = true
      if (unit.dimension === 'Hz' && values?.some((value) => !isSupplyFrequency(value))) worn = true
      for (const [place, value] of (values ?? [Number.NaN]).entries()) {
        if (elements.length > 0) allJoints.push(place > 0 ? 'list' : (joints[index - 1] ?? 'list'))
        elements.push({ value, sign, kind: token.unit?.kind ?? null })
      }
    })
    // "1.5V x 6": a set of cells
    // "1 2 V": two figures of one number or the number of an output
    const lone = this.tokens[read.from - 1]
    const [only] = read.numbers
    if (
      unit.dimension === 'V' &&
      elements.length === 1 &&
      lone?.type === 'number' &&
      !lone.unit &&
      lone.digits?.length === 1 &&
      only!.token.digits?.length === 1 &&
      only!.token.end - only!.token.start > 2
    )
      worn = true
    const cells = this.#sign(read.end, '×') && elements.some(({ value }) => value < plateLimits.leastWindingV.value)
    if (unit.dimension === 'V' && cells) worn = true
    const before = this.tokens[read.at - 1]
    return {
      dimension: unit.dimension,
      elements,
      joints: allJoints,
      kind: read.kind,
      worn,
      unsure: read.numbers.some(({ token }) => token.reads !== null || token.doubtful) || read.lacksJoint === true,
      times: read.times,
      tildeBefore: before?.type === 'sign' && before.sign === '~' && read.at > 0,
      first: read.from,
      last: read.end,
    }
  }

  /**
   * "3; 4,5; 6; 9 V", "100, 120, 220, 240 V": a list with the unit behind its last number only. Rising numbers that are
   * neither settings of a switched supply nor mains voltages may be anything: the place is taken, the values are not known.
   */
  #series(from: number): Quantity | null {
    if (this.#number(from)?.unit !== null) return null
    const numbers: NumberToken[] = []
    let at = from
    let mark: string | null = null
    for (;;) {
      const number = this.#number(at)
      if (!number || numbers.length > longestList) return null
      numbers.push(number)
      at += 1
      if (number.unit) break
      const sign = this.tokens[at]
      const found = sign?.type === 'sign' && (sign.sign === ',' || sign.sign === ';') ? sign.sign : ''
      if (mark !== null && found !== mark) return null
      mark = found
      if (found !== '') at += 1
    }
    const unit = numbers[numbers.length - 1]!.unit!
    if (unit.dimension !== 'V' || numbers.length < plateLimits.leastSettings.value) return null
    const values = numbers.map(({ digits }) => valuesOf(digits, 'V', unit.scale)?.[0] ?? Number.NaN)
    const rises = values.every((value, index) => index === 0 || value > values[index - 1]!)
    const known = areSettings(values) || (rises && values[0]! >= plateLimits.leastMainsV.value)
    if (!known && (!rises || mark === '')) return null
    const suffix = this.#suffix(at, unit.kind)
    const read = this.#quantity({
      numbers: numbers.map((token) => ({ token, sign: null })),
      joints: numbers.slice(1).map(() => 'list'),
      unit,
      kind: both(unit.kind, suffix?.kind ?? null),
      times: 1,
      from,
      end: suffix?.next ?? at,
      at: from,
    })
    return known ? read : { ...read, worn: true }
  }

  /** A number without a unit has that of the next one that has one, else of the last. */
  #scale(numbers: { token: NumberToken }[], index: number): number {
    for (let at = index; at < numbers.length; at += 1) {
      const unit = numbers[at]?.token.unit
      if (unit) return unit.scale
    }
    for (let at = index; at >= 0; at -= 1) {
      const unit = numbers[at]?.token.unit
      if (unit) return unit.scale
    }
    return 1
  }

  #sign(at: number, sign: string): boolean {
    const token = this.tokens[at]
    return token?.type === 'sign' && token.sign === sign
  }

  #number(at: number): NumberToken | null {
    const token = this.tokens[at]
    return token?.type === 'number' ? token : null
  }

  /** "2 x" before a number of volts. */
  #multiplier(at: number): { times: number; at: number } | null {
    const count = this.#number(at)
    if (!count || count.unit || !/^(?:[2-9]|1[0-2])$/.test(count.digits ?? '')) return null
    if (!this.#sign(at + 1, '×')) return null
    const number = this.#number(at + 2)
    return number?.unit?.dimension === 'V' ? { times: Number(count.digits), at: at + 2 } : null
  }

  #signed(at: number): { number: NumberToken; sign: Element['sign']; next: number } | null {
    const number = this.#number(at)
    if (number) return { number, sign: null, next: at + 1 }
    const token = this.tokens[at]
    const follows = this.#number(at + 1)
    if (token?.type !== 'sign' || !follows) return null
    if (token.sign === '±') return { number: follows, sign: '±', next: at + 2 }
    // "220V-50Hz", "9V-1A": a dash between two figures parts them, only volts are negative
    const parts = token.sign === '-' && !token.spaceBefore && this.#number(at - 1) !== null
    if (parts && follows.unit && follows.unit.dimension !== 'V') return null
    const before = this.tokens[at - 1]
    // "l00-240V" of which the first number was not read: no sign
    if (token.sign === '-' && before?.type === 'text' && before.end === token.start) return null
    if (token.sign === '-' && token.spaceAfter && this.#isSpacedMinus(at, follows))
      return { number: follows, sign: '-', next: at + 2 }
    if ((token.sign === '+' || token.sign === '-') && !token.spaceAfter)
      return { number: follows, sign: token.sign, next: at + 2 }
    return null
  }

  /** "+ 5 V 2 A, + 12 V 1 A, − 12 V 0,3 A": set off from its figures after a comma, or on a line where others have a plus. */
  #isSpacedMinus(at: number, number: NumberToken): boolean {
    if (number.unit?.dimension !== 'V') return false
    const before = this.tokens[at - 1]
    if (before?.type === 'sign' && (before.sign === ',' || before.sign === ';')) return true
    if (before && before.type !== 'line') return false
    const near = this.tokens.slice(Math.max(0, at - plusReach), at + plusReach)
    return near.some((token, index) => {
      const next = near[index + 1]
      return token.type === 'sign' && token.sign === '+' && next?.type === 'number' && next.unit?.dimension === 'V'
    })
  }

  /** The kind of current after a voltage: "V~", "V ⎓", "V DC", "V AC/DC". */
  #suffix(at: number, unitKind: StatedKind): { kind: StatedKind; next: number } | null {
    let kind: StatedKind = null
    let next = at
    for (let steps = 0; steps < 4; steps += 1) {
      const token = this.tokens[next]
      if (!token) break
      const bracketed =
        token.type === 'sign' && (token.sign === '(' || token.sign === '[') ? this.#statedKind(next + 1) : null
      const closes = this.tokens[next + 2]
      if (bracketed && closes?.type === 'sign' && (closes.sign === ')' || closes.sign === ']')) {
        kind = both(kind, bracketed)
        next += 3
        continue
      }
      const own = this.#statedKind(next)
      if (!own) {
        // "VAC/DC"
        const slash = token.type === 'sign' && (token.sign === '/' || token.sign === '-') && !token.spaceBefore
        const first: StatedKind = kind ?? unitKind
        const second: StatedKind = slash && first !== null ? this.#wordKind(next + 1) : null
        if (!second || this.#startsVoltage(next + 2)) break
        kind = second === first ? first : 'either'
        next += 2
        continue
      }
      if (this.#belongsToNext(next)) break
      kind = both(kind, own)
      next += 1
    }
    return next > at ? { kind, next } : null
  }

  #wordKind(at: number): StatedKind {
    const token = this.tokens[at]
    if (token?.type === 'word') {
      if (token.meaning === 'ac' || token.meaning === 'dc') return token.meaning
      if (token.meaning === 'either kind') return 'either'
    }
    return null
  }

  #statedKind(at: number): StatedKind {
    const token = this.tokens[at]
    if (token?.type === 'symbol') return token.meaning === 'ac' || token.meaning === 'dc' ? token.meaning : null
    if (token?.type === 'sign') {
      if (token.sign === '~') return 'ac'
      if (token.sign === '=') return 'dc'
      if (token.sign === '--') return 'dc'
      return null
    }
    return this.#wordKind(at)
  }

  /** "220V =9V", "5V DC 12V": a sign set off before, or a word, that stands before another voltage is that one's. */
  #belongsToNext(at: number): boolean {
    const token = this.tokens[at]!
    if (!this.#startsVoltage(at + 1)) return false
    if (token.type === 'sign' || token.type === 'symbol') return token.spaceBefore && !token.spaceAfter
    // after the unit a word is that voltage's own, except that the next has no other: decided by what follows it
    const next = readAhead(this.tokens, at + 1)
    return token.spaceBefore && !(next && this.#statedKind(next) !== null)
  }

  #startsVoltage(at: number): boolean {
    const signed = this.#signed(at)
    return signed !== null && this.#dimensionAhead(signed.next - 1) === 'V'
  }

  /** The unit that the number at this token will have, looking over at most a short list. */
  #dimensionAhead(at: number): UnitDimension | undefined {
    let next = at
    for (let steps = 0; steps < longestList; steps += 1) {
      const number = this.#number(next)
      if (!number) return undefined
      if (number.unit) return number.unit.dimension
      const after = this.tokens[next + 1]
      if (!after || !isJoint(after)) return undefined
      next += this.#number(next + 2) ? 2 : 3
    }
    return undefined
  }

  /** What joins the list read so far to a next number of the same unit. */
  #joint(
    at: number,
    before: NumberToken[],
    dimension: UnitDimension | undefined,
  ): { joint: Joint; number: NumberToken; sign: Element['sign']; next: number } | null {
    const token = this.tokens[at]
    const last = before[before.length - 1]!
    if (!token) return null
    if (token.type === 'number') return this.#lostJoint(at, last, dimension)
    if (token.type === 'sign' && token.sign === '+') return this.#twin(at, last)
    if (!isJoint(token)) return null
    // the bound of a range may carry a plus or the kind once more; a word of kind begins a new quantity
    const follows = this.#signed(at + 1)
    if (!follows) return null
    const ahead = this.#dimensionAhead(follows.next - 1)
    if (!this.#sameUnit(last, follows.number, ahead, dimension, at)) return null
    const done = (joint: Joint) => ({ joint, ...follows })
    if (token.type === 'word') {
      if (follows.sign) return null
      return token.meaning === 'to' ? done('range') : done('list')
    }
    if (token.type !== 'sign') return null
    switch (token.sign) {
      case '/':
      case '↔':
        return done('list')
      case '&':
        return dimension === 'Hz' || ahead === 'Hz' ? done('list') : null
      case ',':
        return last.unit || follows.sign || !isUsualPair(last, follows.number, ahead) ? null : done('list')
      case '…':
        return done('range')
      case '--':
        return last.unit ? null : done('range')
      case '-': {
        if (follows.sign) return null
        const volts = Number(last.digits)
        if (this.#countsOutput(at, before, ahead)) return null
        // "5V -12V" and "+5V 1A -12V": a dash set off before and joined after is a minus
        if (token.spaceBefore && !token.spaceAfter && last.unit && volts < plateLimits.leastMainsV.value) return null
        return done('range')
      }
      case '~':
        // "OUTPUT 6 ~12V" may be set from one to the other
        if (this.#countsOutput(at, before, ahead) && /^[1-4]$/.test(last.digits ?? '')) return null
        return follows.sign || !this.#isRangeTilde(token, before, follows.number, follows.next, ahead)
          ? null
          : done('range')
      default:
        return null
    }
  }

  /** "OUTPUT 3 -12V", "OUTPUT 1 ~9V": a figure behind a word, and a sign that is set off from it and joined to the volts. */
  #countsOutput(at: number, before: readonly NumberToken[], ahead: UnitDimension | undefined): boolean {
    const sign = this.tokens[at]!
    const [count, more] = before
    return (
      this.tokens[at - 2]?.type === 'word' &&
      !more &&
      !count?.unit &&
      ahead === 'V' &&
      sign.spaceBefore &&
      !sign.spaceAfter &&
      Number(count?.digits) < plateLimits.leastMainsV.value
    )
  }

  #sameUnit(
    last: NumberToken,
    next: NumberToken,
    ahead: UnitDimension | undefined,
    dimension: UnitDimension | undefined,
    at: number,
  ): boolean {
    if (dimension === undefined) return true
    if (ahead === dimension) {
      // "0.2A-50Hz" never comes here; "12V-1A" neither
      return true
    }
    if (ahead !== undefined || next.unit) return false
    // "9V-0-9V", and "115V/230": the unit printed once, with the first
    if (next.digits === '0') return this.#dimensionAhead(at + 1) === dimension
    const least = plateLimits.leastMainsV.value
    return (
      dimension === 'V' && Number(last.digits) >= least && Number(next.digits) >= least && Number(next.digits) <= 300
    )
  }

  /** "12V+12V", "250+250V": two windings of the same voltage. */
  #twin(at: number, last: NumberToken): { joint: Joint; number: NumberToken; sign: null; next: number } | null {
    const plus = this.tokens[at]!
    const next = this.#number(at + 1)
    if (!next || plus.spaceBefore !== plus.spaceAfter || next.digits === null || next.digits !== last.digits)
      return null
    if (this.#dimensionAhead(at + 1) !== 'V' || (last.unit && last.unit.dimension !== 'V')) return null
    return { joint: 'list', number: next, sign: null, next: at + 2 }
  }

  /** "50 60Hz", "110 220V": the stroke between was not recognised. */
  #lostJoint(
    at: number,
    last: NumberToken,
    dimension: UnitDimension | undefined,
  ): { joint: Joint; number: NumberToken; sign: null; next: number } | null {
    const next = this.#number(at)
    if (!next || last.unit || dimension !== undefined || !next.unit) return null
    const frequencies =
      next.unit.dimension === 'Hz' && usualMains.has(Number(last.digits)) && usualMains.has(Number(next.digits))
    const voltages = next.unit.dimension === 'V' && isUsualPair(last, next)
    return frequencies || voltages ? { joint: 'list', number: next, sign: null, next: at + 1 } : null
  }

  /** "100~240V" is a range; "230V~ 9V" and "50~ 12W" are not. */
  #isRangeTilde(
    token: Token,
    before: NumberToken[],
    next: NumberToken,
    after: number,
    ahead: UnitDimension | undefined,
  ): boolean {
    const last = before[before.length - 1]!
    const low = Number(last.digits)
    const high = Number(next.digits)
    if (!last.unit) {
      // "3~ 400V": the number of phases
      if (before.length > 1 && !before.every(({ digits }) => Number(digits) < plateLimits.leastMainsV.value))
        return false
      if (before.length === 1 && /^[13]$/.test(last.digits ?? '') && high >= plateLimits.leastMainsV.value) return false
      const allCycles = before.every(({ digits }) => cycles.has(Number(digits)))
      if (!allCycles || ahead === 'Hz') return true
      return !token.spaceBefore && !token.spaceAfter && ahead === 'V' && low < plateLimits.leastMainsV.value
    }
    if (last.unit.kind !== null || !(high > low)) return false
    // "100V ~240V": set off before, between mains voltages
    const isMains = low >= plateLimits.leastMainsV.value && ahead === 'V'
    if (token.spaceBefore === token.spaceAfter || (isMains && token.spaceBefore)) return true
    // "115V~ 230V~": both carry the sign for a.c.
    const closing = this.tokens[after]
    return !token.spaceBefore && !(closing?.type === 'sign' && closing.sign === '~')
  }

  /** "50-60~", "50~": cycles per second on old plates; the index after the tilde. */
  #cycles(numbers: NumberToken[], at: number): number | null {
    if (!this.#sign(at, '~')) return null
    const values = numbers.map(({ digits }) => Number(digits))
    const upTo = (most: number): boolean => values.length > 1 && cycles.has(values[0]!) && values.at(-1)! <= most
    return values.every((value) => cycles.has(value)) || upTo(100) ? at + 1 : null
  }
}

/** "230V~/12V=": mains volts with their kind and low volts are two sides of a transformer. */
const isStepDown = (one: NumberToken, other: NumberToken): boolean =>
  Number(one.digits) >= plateLimits.leastMainsV.value && Number(other.digits) < plateLimits.leastMainsV.value

const isUsualPair = (one: NumberToken, other: NumberToken, dimension: UnitDimension | undefined = 'V'): boolean => {
  const [first, second] = [Number(one.digits), Number(other.digits)]
  if (dimension === 'Hz') return usualMains.has(first) && usualMains.has(second)
  return first >= plateLimits.leastMainsV.value && second > first && second <= 260
}

function isJoint(token: Token): boolean {
  if (token.type === 'word') return token.meaning === 'to' || token.meaning === 'or'
  if (token.type === 'sign') return ['-', '--', '~', '/', '…', '↔', ',', '&'].includes(token.sign)
  return false
}

/** The index after a lone number, where its own kind of current would stand. */
function readAhead(tokens: readonly Token[], from: number): number | null {
  for (let at = from; at < from + 3; at += 1) if (tokens[at]?.type === 'number') return at + 1
  return null
}

/** Two statements about the kind of current. */
export function both(one: StatedKind, other: StatedKind): StatedKind {
  if (one === null || one === other) return other
  if (other === null) return one
  return one === 'either' || other === 'either' ? 'either' : 'conflict'
}

/** The highest value of a quantity, in its base unit. */
export const highest = ({ elements }: Pick<Quantity, 'elements'>): number =>
  Math.max(...elements.map(({ value }) => value))
