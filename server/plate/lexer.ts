import { lookAlikes } from '../tables/lookAlikes.js'
import { mainsVoltages, plateLimits } from '../tables/plateLimits.js'
import type { PlateMeaning } from '../tables/plateWords.js'
import { isDigit, isIdeograph, isLetter, isSpace } from './characters.js'
import type { Folded } from './fold.js'
import { type Lexicon, latinShape, lexicon, lookAlikeShape } from './lexicon.js'
import { mayDraw, polarityDrawing } from './polarityDrawing.js'
import { areSettings } from './quantity.js'
import type { NumberToken, Token } from './token.js'
import { isTorn } from './tornFigure.js'

/** Letters taken for figures where a number with a unit results. */
const asDigit: Readonly<Record<string, string>> = Object.fromEntries(
  lookAlikes.figures.flatMap(([figure, letters]) => [...letters].map((letter) => [letter, figure])),
)
/** Marks that a writer puts for a figure that can no longer be read. */
const wornMarks = '?*_\u25A0\u25A1\uFFFD\u2588\u2592'
/** Longest number on a plate, decimal mark included; longer runs are codes. */
/** Figures of one list, apart from those before it. */
const nextList = /^[ \t]+~?[ \t]*\d[\d.,]*(?:[ \t]?[-/][ \t]?\d[\d.,]*)*/u

const longestNumber = 9
const longestLookAlikeWord = 16
/** Most spaces at a line's ends across which a range goes on. */
const longestMargin = 8
/** Letters of a word for "from" before the lower end of a range. */
const longestFrom = 8

const isWorn = (one: string): boolean => one !== '' && wornMarks.includes(one)
const isFigure = (one: string): boolean => isDigit(one) || asDigit[one] !== undefined

type Unplaced<Kind> = Kind extends Token ? Omit<Kind, 'spaceBefore' | 'spaceAfter'> : never

/**
 * Cuts folded text into numbers with their units, known words, signs, drawings, fuse markings and the rest.
 * Every step looks a bounded distance ahead, so the time is proportional to the length; after the longest plate there is one
 * token with the rest.
 */
export function lex(folded: Folded): Token[] {
  return new Lexer(folded, lexicon()).run()
}

interface FoundUnit {
  end: number
  unit: NonNullable<NumberToken['unit']>
  /** the unit that letters of another alphabet are taken for; null where it stands as read */
  reads: string | null
}

/** Words behind which a lone figure is a name or a number of its own. */
const unnumbered: readonly PlateMeaning[] = [
  'identity',
  'elsewhere',
  'note',
  'only for',
  'inner load',
  'wall transformer',
]
/** Most settings of a switched supply. */
const longestSeries = 16

/** Whether volts or hertz are those of a public supply. */
const isNominal = (value: number, dimension: string): boolean =>
  dimension === 'V' ? mainsVoltages.valuesV.includes(value) : dimension === 'Hz' && (value === 50 || value === 60)

/** A whole line of units before their figures: "V 125/220 ~ Hz 50 W 40", "PHASE 1 VOLTS 115 CYCLES 60". */
const unitsLead =
  /^[ \t]*(?:(?:V|VOLTS?|HZ|HERTZ|CYCLES?|K?W|WATTS?|M?A|AMPS?|AMPERES?|K?VA|PHASES?|PH)[ \t:=~]+\d[\d.,]*(?:[ \t]?[-/][ \t]?\d[\d.,]*)*[ \t]*[~,;]?[ \t]*){2,12}(?=\n|$)/y

/** What a unit that leads its figures speaks of. */
const ledBy: Partial<Record<string, PlateMeaning>> = {
  V: 'voltage',
  Hz: 'frequency',
  A: 'current',
  W: 'power',
  VA: 'power',
}

/** Words for a quantity some of which are the name of its unit. */
const unitNames: readonly PlateMeaning[] = ['voltage', 'current', 'power', 'frequency']

class Lexer {
  readonly #text: string
  readonly #upper: string
  /** `#upper` with the letters of other alphabets as the Latin ones they look like; the same string where there are none */
  readonly #latin: string
  readonly #lexicon: Lexicon
  readonly #tokens: Token[] = []
  #at = 0
  /** from a unit written before its figures, "VOLTS 115" */
  #unitBefore: NumberToken['unit'] = null
  /** where the line ends that has its units before their figures */
  #unitsLeadTo = 0
  /** figures that lines begin with */
  #rows: Set<number> | undefined

  constructor(folded: Folded, words: Lexicon) {
    this.#text = folded.text
    this.#upper = folded.upper
    this.#latin = latinShape(folded.upper)
    this.#lexicon = words
  }

  run(): Token[] {
    while (this.#at < this.#text.length && this.#tokens.length < plateLimits.mostTokens.value) this.#step()
    // no plate is as long: what follows is left unread as one piece
    if (this.#at < this.#text.length) this.#push({ type: 'text', start: this.#at, end: this.#text.length })
    return this.#tokens
  }

  #char(index: number): string {
    return this.#text.charAt(index)
  }

  /** True of a blank, a line end, and beyond either end of the text. */
  #isOpen(index: number): boolean {
    const one = this.#char(index)
    return one === '' || one === '\n' || isSpace(one)
  }

  #push(token: Unplaced<Token>) {
    const whole = token as Token
    whole.spaceBefore = this.#isOpen(token.start - 1)
    whole.spaceAfter = this.#isOpen(token.end)
    whole.role = undefined
    this.#tokens.push(whole)
    this.#at = token.end
    if (token.type !== 'number' && token.type !== 'sign') this.#unitBefore = null
  }

  #step() {
    const start = this.#at
    const one = this.#char(start)
    if (one === '\n') {
      if (!this.#breaksRange(start)) return this.#push({ type: 'line', start, end: start + 1 })
      this.#at += 1
      return
    }
    if (isSpace(one)) {
      this.#at += 1
      return
    }
    if (this.#leadingUnit(start)) return
    const drawing = mayDraw(one) ? polarityDrawing(this.#text, start, this.#tokens) : null
    if (drawing) {
      this.#tokens.length -= drawing.takesBack
      return this.#push({ type: 'drawing', start: drawing.start, end: drawing.end, polarity: drawing.polarity })
    }
    const symbol = this.#lexicon.symbols.get(one)
    if (symbol !== undefined && this.#standsAsSymbol(start)) return this.#symbol(start, symbol)
    if ((one === '.' || one === ',') && this.#leadingMark(start)) return
    if (isFigure(one) || isWorn(one) || (one === '.' && isDigit(this.#char(start + 1)))) {
      // "1次" begins with a figure and is a word
      if (this.#lookAlikeWord(start) || (isDigit(one) && this.#word(start)) || this.#number(start)) return
    }
    if ((one === 'x' || one === 'X') && this.#standsBetweenNumbers(start))
      return this.#push({ type: 'sign', start, end: start + 1, sign: '\u00D7' })
    if (isLetter(one) || isIdeograph(one) || isDigit(one)) {
      if (this.#fuse(start) || this.#word(start) || this.#lookAlikeWord(start)) return
      return this.#code(start)
    }
    if (one > '\u007F' && this.#word(start)) return
    this.#sign(start)
  }

  /** "V" of "V 220 Hz 50 W 40", read as the word it stands for. */
  #leadingUnit(start: number): boolean {
    if (start === 0 || this.#tokens.at(-1)?.type === 'line') {
      unitsLead.lastIndex = start
      if (unitsLead.test(this.#upper)) this.#unitsLeadTo = unitsLead.lastIndex
    }
    if (start >= this.#unitsLeadTo || !isLetter(this.#char(start))) return false
    const found = this.#lexicon.units.longest(this.#upper, start, (index) => !isLetter(this.#char(index)))
    const meaning = found && ledBy[found.value.dimension]
    if (!found || !meaning) return false
    this.#push({ type: 'word', start, end: found.end, meaning, weak: false, reads: null })
    this.#unitBefore = { dimension: found.value.dimension, scale: found.value.scale, kind: found.value.kind }
    return true
  }

  /** "100-" at the end of a line and "240V" on the next: one range. */
  #breaksRange(index: number): boolean {
    const [number, sign] = this.#tokens.slice(-2)
    if (sign?.type !== 'sign' || (sign.sign !== '-' && sign.sign !== '/')) return false
    if (number?.type !== 'number' || number.unit !== null || number.end !== sign.start) return false
    let next = index + 1
    while (next - index < longestMargin && isSpace(this.#char(next))) next += 1
    return isDigit(this.#char(next)) && index - sign.end <= longestMargin
  }

  /** The x in "2 x 15V". */
  #standsBetweenNumbers(index: number): boolean {
    const last = this.#tokens.at(-1)
    return last?.type === 'number' && isSpace(this.#char(index + 1)) && isDigit(this.#char(index + 2))
  }

  /** 回 and its like are symbols only where they stand alone: inside a text they are words. */
  #standsAsSymbol(index: number): boolean {
    return (
      !isIdeograph(this.#char(index)) || !(isIdeograph(this.#char(index - 1)) || isIdeograph(this.#char(index + 1)))
    )
  }

  #symbol(start: number, meaning: 'ac' | 'dc' | 'class II' | 'fuse' | 'note') {
    // the sign for a fuse-link is also typed for the like-looking sign for direct current, joined to the V
    const joined = /[Vv]/.test(this.#char(start - 1)) && this.#tokens.at(-1)?.type === 'number'
    this.#push({ type: 'symbol', start, end: start + 1, meaning: meaning === 'fuse' && joined ? 'dc' : meaning })
  }

  #endsWord(index: number): boolean {
    return !isLetter(this.#char(index)) || !isLetter(this.#char(index - 1)) || this.#gluedNumber(index)
  }

  /** "AClOOV", "INPUTlOO-24OV": a word joined to a number whose first figure was taken for a letter. */
  #gluedNumber(index: number): boolean {
    if (asDigit[this.#char(index)] === undefined || asDigit[this.#char(index - 1)] !== undefined) return false
    const figures = this.#figures(index)
    return figures !== null && figures.end - index > 1 && this.#numberWithUnit(index)
  }

  #word(start: number): boolean {
    const one = this.#char(start)
    if (isLetter(one) && isLetter(this.#char(start - 1))) return false
    const found = this.#lexicon.words.longest(this.#upper, start, (end) => this.#endsWord(end))
    if (!found) return false
    let end = found.end
    if (
      isDigit(this.#char(end)) &&
      !(found.value.section && this.#isOrdinal(end)) &&
      !isIdeograph(this.#char(end - 1)) &&
      !this.#numberWithUnit(end)
    )
      return false
    if (this.#char(end) === '-' && isDigit(this.#char(end + 1)) && isLetter(this.#char(end - 1))) {
      // "DC-0950" is a type number, "DC-9V" is not
      if (!this.#numberWithUnit(end + 1)) return false
    }
    while (end > start && isSpace(this.#char(end - 1))) end -= 1
    const named = this.#lexicon.units.longest(this.#upper, start, (index) => index === end)
    if (found.value.section && this.#isOrdinal(end)) end += 1
    else if (this.#char(end) === '.') end += 1
    this.#push({ type: 'word', start, end, meaning: found.value.meaning, weak: found.value.weak, reads: null })
    if (named && unitNames.includes(found.value.meaning))
      this.#unitBefore = { dimension: named.value.dimension, scale: named.value.scale, kind: named.value.kind }
    return true
  }

  /** "OUTPUT1", "OUT2:": a lone figure joined to the word for a side. */
  #isOrdinal(index: number): boolean {
    const next = this.#char(index + 1)
    return isDigit(this.#char(index)) && (next === '' || next === ':' || next === '\n' || next === ')' || isSpace(next))
  }

  /** "0UTPUT", "lNPUT", "PR1", "出カ": a section word in which characters that look alike were confused. */
  #lookAlikeWord(start: number): boolean {
    if (isIdeograph(this.#char(start))) return this.#lookAlikeIdeographs(start)
    if (isLetter(this.#char(start - 1)) || isDigit(this.#char(start - 1))) return false
    let end = start
    while (end - start < longestLookAlikeWord && (isLetter(this.#char(end)) || isDigit(this.#char(end)))) end += 1
    const run = this.#text.slice(start, end)
    if (isDigit(run) || !/\p{L}/u.test(run)) return false
    const upper = run.replace(/l/g, 'I').toUpperCase()
    const entry = this.#lexicon.lookAlikes.get(lookAlikeShape(upper))
    if (!entry || entry.word === run.toUpperCase() || (!entry.section && run === run.replace(/[^\0-\x7f]/g, '')))
      return false
    if (this.#char(end) === '.') end += 1
    this.#push({ type: 'word', start, end, meaning: entry.meaning, weak: entry.section, reads: entry.word })
    return true
  }

  #lookAlikeIdeographs(start: number): boolean {
    const shape = lookAlikeShape(this.#upper.slice(start, start + longestLookAlikeWord))
    const found = this.#lexicon.lookAlikeIdeographs.longest(shape, 0, () => true)
    if (!found) return false
    const { meaning, weak, word } = found.value
    this.#push({ type: 'word', start, end: start + found.end, meaning, weak, reads: word })
    return true
  }

  /** A marking that begins with its characteristic: "T2A", "F 500 mA L 250 V", "T315L250V". */
  #fuse(start: number): boolean {
    if (isLetter(this.#char(start - 1)) || isDigit(this.#char(start - 1))) return false
    const one = this.#char(start)
    if (!'TFM'.includes(one) && !('tfm'.includes(one) && isDigit(this.#char(start + 1)))) return false
    const shape =
      /(?:TT|FF|T|F|M|t|f|m) {0,2}(?:[\dOIl]{1,4}(?:[.,][\dO]{1,3})? {0,2}(?:mA|MA|ma|A|a)(?: {0,2}\/? ?[LHElhe](?![A-Za-z]))?(?:(?: ?\/ ?| {1,2})?(?:32|63|125|250|300|350|400|500|600) ?[Vv](?![A-Za-z~=]))?|\d{1,4}[LHE] ?(?:125|250|300|400|500) ?V)(?![A-Za-z])/y
    shape.lastIndex = start
    const match = shape.exec(this.#text)
    if (!match || !/\d/.test(match[0])) return false
    this.#push({ type: 'fuse', start, end: start + match[0].length })
    return true
  }

  /** A run that is neither word nor quantity: a type number, a name. Joined by hyphens and points to what follows. */
  #code(start: number): void {
    let end = start
    const first = this.#char(start)
    if (isIdeograph(first)) {
      end = start + 1
    } else {
      while (end < this.#text.length) {
        const one = this.#char(end)
        if (isLetter(one) || isDigit(one)) end += 1
        else if (one === '-' && this.#isGluedVoltage(start, end)) break
        else if ((one === '-' || one === '_') && this.#joins(end)) end += 1
        else if (one === '.' && isDigit(this.#char(end + 1))) end += 1
        else break
      }
    }
    this.#push({ type: 'text', start, end: Math.max(end, start + 1) })
  }

  /** "Singleport-54VDC": a word, no type number, joined to a whole voltage that says its kind of current. */
  #isGluedVoltage(start: number, index: number): boolean {
    if (
      !/^\p{L}{4,}$/u.test(this.#text.slice(start, index).slice(0, longestLookAlikeWord)) ||
      !isDigit(this.#char(index + 1))
    )
      return false
    const figures = this.#figures(index + 1)
    const unit = figures && this.#unit(figures.end)
    return unit?.unit.dimension === 'V' && unit.unit.kind !== null && this.#isOpen(unit.end)
  }

  /** Whether a number is joined by a hyphen to a word that is none of the plate's own. */
  #isGlued(start: number): boolean {
    const [word, mark] = this.#tokens.slice(-2)
    return (
      mark?.type === 'sign' &&
      mark.sign === '-' &&
      mark.end === start &&
      word?.type === 'text' &&
      word.end === mark.start
    )
  }

  #joins(index: number): boolean {
    const next = this.#char(index + 1)
    return isLetter(next) || isDigit(next)
  }

  #sign(start: number) {
    const one = this.#char(start)
    const next = this.#char(start + 1)
    const third = this.#char(start + 2)
    const put = (sign: string, length: number) => this.#push({ type: 'sign', start, end: start + length, sign })
    if ((one === '(' || one === '[') && (next === '+' || next === '-') && (third === ')' || third === ']'))
      return put(next === '+' ? '\u2295' : '\u2296', 3)
    if (one === '+' && next === '/' && third === '-') return put('\u00B1', 3)
    if (one === '+' && next === '-') return put('\u00B1', 2)
    if (one === '<' && next === '-' && third === '>') return put('\u2194', 3)
    if (one === '<' && next === '>') return put('\u2194', 2)
    if (one === '.' && next === '.') return put('\u2026', this.#runLength(start, '.'))
    if (one === '=') return put('=', this.#runLength(start, '='))
    if (one === '-') {
      const length = this.#dashes(start)
      return put(length.count > 1 ? '--' : '-', length.length)
    }
    put(one, 1)
  }

  #runLength(start: number, one: string): number {
    let end = start
    while (this.#char(end) === one) end += 1
    return end - start
  }

  /** "---" and "- - -" are one sign; the length covers the whole run. */
  #dashes(start: number): { length: number; count: number } {
    let end = start + 1
    let count = 1
    for (;;) {
      let next = end
      while (isSpace(this.#char(next)) && next - end < 1) next += 1
      if (this.#char(next) !== '-' || isDigit(this.#char(next + 1))) break
      end = next + 1
      count += 1
    }
    return { length: end - start, count }
  }

  #numberWithUnit(start: number): boolean {
    const figures = this.#figures(start)
    if (!figures) return false
    if (this.#unit(figures.end)) return true
    // "AC10 0-240V"
    if (figures.digits !== null && this.#tornFigures(figures.end, figures.digits)) return true
    // one bound of a range: "AC100-240V"
    const next = this.#char(figures.end)
    return '-~/'.includes(next) && next !== ''
      ? true
      : isSpace(next) && '-~/'.includes(this.#char(figures.end + 1) || 'x')
  }

  /** Figures with at most one decimal mark, worn places and look-alike letters; null where it is a code. */
  #figures(start: number): { end: number; digits: string | null; lookAlike: boolean } | null {
    let end = start
    let digits = ''
    let real = 0
    let worn = false
    let lookAlike = false
    let marks = 0
    for (;;) {
      const one = this.#char(end)
      const next = this.#char(end + 1)
      if (isDigit(one)) {
        digits += one
        real += 1
      } else if (asDigit[one] !== undefined) {
        digits += asDigit[one]
        lookAlike = true
      } else if (isWorn(one) && (end === start || this.#isInsideFigures(end - 1))) {
        if (!isFigure(next) && !isWorn(next) && !this.#unit(end + 1) && !this.#goesOnBehind(end)) break
        worn = true
      } else if (
        (one === '.' || one === ',') &&
        (isFigure(next) || (isWorn(next) && (this.#unit(end + 2) !== null || this.#goesOnBehind(end + 1)))) &&
        (isFigure(this.#char(end - 1)) || isWorn(this.#char(end - 1)) || end === start)
      ) {
        digits += one
        marks += 1
      } else if (one > '\u007F' && /^\p{N}$/u.test(one)) {
        // a fraction or a raised figure: part of the number, but not one that is read
        worn = true
        real += 1
      } else {
        break
      }
      end += 1
      if (end - start > longestNumber) return null
    }
    if (real === 0) {
      const goesOn = this.#unit(end) !== null || this.#goesOnBehind(end - 1)
      if (worn) return !lookAlike && goesOn ? { end, digits: null, lookAlike } : null
      // "lOOV", "lOO-24OV": letters alone
      const before = this.#char(start - 1)
      const isMember =
        end - start === 1 &&
        goesOn &&
        (digits === '0' ? '-~'.includes(this.#char(end) || 'x') : '/-'.includes(before || 'x'))
      const isWhole = goesOn && !isSpace(this.#char(end)) && isNominal(Number(digits), 'V')
      return isMember || isWhole ? { end, digits, lookAlike } : null
    }
    if (!worn && /^0\d/.test(digits)) return null
    if (marks > 1) worn = true
    return { end, digits: worn ? null : digits, lookAlike }
  }

  /** The unit after figures, unless it is the name that belongs to the next ones: "VOLTS 115 AMPS 2". */
  #ownUnit(from: number): FoundUnit | null {
    const unit = this.#unit(from)
    const spelled = unit !== null && isSpace(this.#char(from)) && unit.end - from > 2
    return from < this.#unitsLeadTo || (this.#unitBefore !== null && spelled) ? null : unit
  }

  #unit(from: number): FoundUnit | null {
    let start = from
    while (start - from < 3 && isSpace(this.#char(start))) start += 1
    // the sign of the kind of current may stand before the letter: "9~V"
    let kind: 'ac' | 'dc' | null = null
    const before = this.#char(start)
    if ((before === '~' || before === '=' || before === '\u2393') && /[Vv]/.test(this.#char(start + 1))) {
      kind = before === '~' ? 'ac' : 'dc'
      start += 1
    }
    const ends = (end: number): boolean =>
      !isLetter(this.#char(end)) || !isLetter(this.#char(end - 1)) || this.#isGluedWord(end)
    const asRead = this.#lexicon.units.longest(this.#upper, start, ends)
    const found = asRead ?? this.#lexicon.units.longest(this.#latin, start, ends)
    if (!found) return null
    const { dimension, scale } = found.value
    if (kind !== null && (dimension !== 'V' || found.value.kind !== null)) return null
    // "100 a 240 V": the word for "to" in several languages
    if (
      found.end === start + 1 &&
      start > from &&
      this.#upper.charAt(start) === 'A' &&
      isSpace(this.#char(found.end))
    ) {
      if (this.#isUpperBound(from, found.end)) return null
    }
    // the full stop of an abbreviation; behind a single letter it ends a sentence
    const abbreviated = this.#char(found.end) === '.' && found.end - start > 2 && !isDigit(this.#char(found.end + 1))
    const end = abbreviated ? found.end + 1 : found.end
    const reads = asRead && !this.#isGluedWord(found.end) ? null : this.#latin.slice(start, end)
    return { end, unit: { dimension, scale, kind: found.value.kind ?? kind }, reads }
  }

  /** "1Aor": a small word that no space parts from the unit. */
  #isGluedWord(index: number): boolean {
    return /^[A-Z](?:or|and|max)(?![\p{L}\d])/u.test(this.#text.slice(index - 1, index + 5))
  }

  /**
   * Whether the "a" after a number joins the ends of a range: between mains volts, after a word for "from", or as a small
   * letter before larger volts written with a capital.
   */
  #isUpperBound(numberEnd: number, from: number): boolean {
    let start = numberEnd
    while (/[\d.,]/.test(this.#char(start - 1)) && numberEnd - start < longestNumber) start -= 1
    let next = from
    while (next - from < 3 && isSpace(this.#char(next))) next += 1
    const value = (digits: string): number => Number(digits.replace(',', '.'))
    const low = value(this.#text.slice(start, numberEnd))
    const figures = this.#figures(next)
    if (!figures?.digits || !(value(figures.digits) > low)) return false
    if (low >= plateLimits.leastMainsV.value * 0.9) return true
    const unit = this.#unit(figures.end)
    const dimension = unit?.unit.dimension
    if (!unit || (dimension !== 'V' && dimension !== 'A')) return false
    if (/(?:^|[^A-Z])(?:DE|DA|DAL|ENTRE|FROM) {0,2}$/.test(this.#upper.slice(Math.max(0, start - longestFrom), start)))
      return true
    return this.#char(from - 1) === 'a' && /[VВAА]/.test(this.#text.slice(figures.end, unit.end))
  }

  /** "12V1A" is two quantities, "12V12A7B" a code: what is joined on must be quantities to its end. */
  #joinedQuantities(from: number): boolean {
    let end = from
    for (let steps = 0; steps < 6; steps += 1) {
      if (!isDigit(this.#char(end))) return true
      const figures = this.#figures(end)
      if (!figures) return false
      const unit = this.#unit(figures.end)
      if (!unit) return '-~/'.includes(this.#char(figures.end) || 'x')
      end = unit.end
    }
    return false
  }

  #number(start: number): boolean {
    const before = this.#char(start - 1)
    const lastToken = this.#tokens.at(-1)
    // figures joined to letters that are no known word belong to a code
    if (isLetter(before) && lastToken?.end === start && lastToken.type === 'text') return false
    const figures = this.#figures(start)
    if (!figures) {
      if (isWorn(this.#char(start))) {
        let end = start + 1
        while (isWorn(this.#char(end)) && isWorn(this.#char(end + 1))) end += 1
        this.#push({ type: 'text', start, end })
        return true
      }
      if (!isDigit(this.#char(start))) return false
      this.#code(start)
      return true
    }
    let { end, digits } = figures
    const joined = this.#acrossGap(start, figures)
    if (joined) ({ end, digits } = joined)
    const unit = this.#ownUnit(end)
    if (unit?.unit.dimension === 'V' && digits !== null && /^[.,]/.test(digits)) digits = this.#withoutMark(digits)
    const gap = joined ? 'none' : this.#gapBefore(start, end, unit)
    const from = gap === 'torn' ? this.#tokens.pop()!.start : start
    const isRepaired = joined !== null || figures.lookAlike || digits !== figures.digits || unit?.reads != null
    if (
      gap === 'torn' ||
      this.#followsLostFigure(start) ||
      isTorn(this.#text, start) ||
      (unit && this.#isTornUnit(unit))
    )
      digits = null
    if (unit && this.#isNumberedRail(start, unit)) unit.end += 1
    const next = this.#char(end)
    if (!unit && isLetter(next)) {
      // "2x12V" and "5.5x2.1": times; any other letter makes it a code
      if (
        !(/[xX]/.test(next) && isFigure(this.#char(end + 1))) &&
        !(/^[xX]$/.test(next) && isSpace(this.#char(end + 1)))
      ) {
        this.#code(start)
        return true
      }
    }
    if (unit && !this.#joinedQuantities(unit.end)) {
      this.#code(start)
      return true
    }
    if (figures.lookAlike && !unit && !this.#leadsToUnit(end) && !this.#beginsList(end)) return false
    this.#push({
      type: 'number',
      start: from,
      end: unit?.end ?? end,
      digits,
      reads: isRepaired && digits !== null ? digits + (unit?.reads ?? this.#text.slice(end, unit?.end ?? end)) : null,
      doubtful: gap === 'doubtful' || this.#followsStop(start, unit) || this.#isGlued(start),
      unit: unit?.unit ?? this.#unitBefore,
    })
    if (this.#unitBefore && this.#leadsToOwnUnit()) this.#unitBefore = null
    if (!unit && /[xX]/.test(next)) this.#push({ type: 'sign', start: end, end: end + 1, sign: '\u00D7' })
    return true
  }

  /** "VOLT 110-220 50-60 HZ": the next figures have a unit of their own behind them, which names none that follow: "VOLTS 1 15 AMPS 2". */
  #leadsToOwnUnit(): boolean {
    const list = nextList.exec(this.#text.slice(this.#at, this.#at + 40))
    const unit = list && this.#unit(this.#at + list[0].length)
    return unit != null && !/^[ \t:]*\d/u.test(this.#text.slice(unit.end, unit.end + 8))
  }

  /** "+12V1 18A": the figure joined to the unit counts the rails of that voltage. */
  #isNumberedRail(start: number, { unit, end }: FoundUnit): boolean {
    const sign = this.#char(start - 1)
    if (unit.dimension !== 'V' || (sign !== '+' && sign !== '-') || !/[1-9]/.test(this.#char(end))) return false
    const next = this.#char(end + 1)
    return !isLetter(next) && !isDigit(next) && !'.,/-~'.includes(next || ' ') && this.#unit(end + 1) === null
  }

  #isInsideFigures(index: number): boolean {
    const one = this.#char(index)
    return isFigure(one) || isWorn(one) || one === '.' || one === ','
  }

  /** "5?/60Hz", "?.7A", "?? / 60Hz": a worn figure that a decimal mark or another number of the list follows. */
  #goesOnBehind(index: number): boolean {
    const isPart = (one: string): boolean => isFigure(one) || isWorn(one)
    const next = this.#char(index + 1)
    if (isSpace(next))
      return (
        '/-~'.includes(this.#char(index + 2) || 'x') && isSpace(this.#char(index + 3)) && isPart(this.#char(index + 4))
      )
    return next !== '' && '.,/-~'.includes(next) && isPart(this.#char(index + 2))
  }

  /**
   * A decimal mark without figures before it. ",5A" and ". 5A" lack at least a nought, and are proposed as such; before volts a mark
   * is another word's ("Prim .230V") or a figure is lost.
   *
   * @returns false where it is no more than a mark of punctuation
   */
  #leadingMark(start: number): boolean {
    if (!this.#isOpen(start - 1)) return false
    const match = /[.,]( {0,2})(\d{1,2})(?![\d.,])/y
    match.lastIndex = start
    const found = match.exec(this.#text)
    if (!found || (this.#char(start) === '.' && found[1] === '') || (this.#char(start) === ',' && found[1] !== ''))
      return false
    const end = start + found[0].length
    const unit = this.#unit(end)
    if (!unit || (unit.unit.dimension !== 'A' && unit.unit.dimension !== 'V')) return false
    if (unit.unit.dimension === 'A' && unit.unit.scale < 1) return false
    const digits = unit.unit.dimension === 'A' ? `0${this.#char(start)}${found[2]}` : null
    const reads = digits === null ? null : digits + this.#text.slice(end, unit.end)
    this.#push({ type: 'number', start, end: unit.end, digits, reads, doubtful: false, unit: unit.unit })
    return true
  }

  /** ".230V": no supply has less than a volt, so the mark is not this number's; of ".5V" a figure is lost. */
  #withoutMark(digits: string): string | null {
    const figures = digits.slice(1)
    return /^[1-9]\d+$/.test(figures) ? figures : null
  }

  /** "9V. 5A": the mark may close the volts, or be what is left of 0.5 A. */
  #followsStop(start: number, unit: FoundUnit | null): boolean {
    const [figure, mark] = this.#tokens.slice(-2)
    if (mark?.type !== 'sign' || mark.sign !== '.' || figure?.end !== mark.start || start <= mark.end) return false
    // "AC6. 3V"
    if (figure.type === 'text') return isDigit(this.#char(figure.end - 1))
    return figure.type === 'number' && unit?.unit.dimension === 'A'
  }

  /** "20V A": the letter that was torn off makes it volt-amperes, or the amperes before it are lost. */
  #isTornUnit({ unit, end }: FoundUnit): boolean {
    if (unit.dimension !== 'V' || unit.kind !== null || !/[ \t]/.test(this.#char(end))) return false
    return /^[ \t]A(?![\p{L}\p{N}]|[ \t]*[\d.])/u.test(this.#text.slice(end, end + 6))
  }

  /** "L,2A": behind a single letter and a decimal mark stands the fraction of a figure that was not recognised. */
  #followsLostFigure(start: number): boolean {
    const [letter, mark] = this.#tokens.slice(-2)
    return (
      mark?.type === 'sign' &&
      (mark.sign === ',' || mark.sign === '.') &&
      mark.end === start &&
      letter?.type === 'text' &&
      letter.end === mark.start &&
      letter.end - letter.start === 1
    )
  }

  /**
   * "1 5A", "1 2V", "2 20-240V": figures, a gap, and figures with their unit or the list they begin. What stood in the gap, a point or
   * nothing, is worn away, save where the first figure counts outputs or rows: "OUTPUT 1 5V … OUTPUT 2 12V". Behind a name it may count, too.
   */
  #gapBefore(start: number, end: number, unit: FoundUnit | null): 'none' | 'doubtful' | 'torn' {
    if (unit ? unit.unit.dimension === 'other' : !this.#unitBefore && !this.#beginsList(end)) return 'none'
    const [before, single] = [this.#tokens.at(-2), this.#tokens.at(-1)]
    if (!single || !/^[ \t]{1,2}$/.test(this.#text.slice(single.end, start))) return 'none'
    // "DC1 2V", "T3 15mA", "l 200mA"
    if (
      single.type === 'text' &&
      /^(?:(?:AC|DC|TT?|FF?|M)\d{1,3}|[OoIl])$/.test(this.#text.slice(single.start, single.end))
    )
      return 'doubtful'
    if (single.type !== 'number' || (single.unit && single.unit !== this.#unitBefore)) return 'none'
    if (single.digits !== null && !/^[.,]?\d{1,2}$|^\d{1,3}[.,]\d{1,2}$/.test(single.digits)) return 'none'
    if (before?.type === 'number' && before.unit === null) return this.#isSeries(start) ? 'none' : 'torn'
    if (unit?.unit.dimension === 'Hz' && /^[56]0$/.test(single.digits ?? '')) return 'none'
    if (before?.type === 'drawing' || before?.type === 'fuse') return 'none'
    if (before?.type === 'sign' && '/-~'.includes(before.sign)) return this.#figureList()
    if (this.#counts(single, before)) return 'none'
    const mayCount = before?.type === 'text' || (before?.type === 'word' && unnumbered.includes(before.meaning))
    return mayCount ? 'doubtful' : 'torn'
  }

  /** Whether a joint and another figure follow: "20-240V", "96 to 264V". */
  #beginsList(end: number): boolean {
    if (/^[ \t]{1,2}(?:TO|BIS|A|À|OR|ODER|OU|O) {1,2}\d/.test(this.#upper.slice(end, end + 10))) return true
    if (/^\.{2,3}\d/.test(this.#text.slice(end, end + 4))) return true
    return !'.,'.includes(this.#char(end) || 'x') && this.#goesOnBehind(end - 1)
  }

  /** "9-1 2V", not "DATE 12/93 9V" or "61558-2-6 12V": whether the numbers joined to the last are figures rather than a date or a standard. */
  #figureList(): 'none' | 'doubtful' | 'torn' {
    let at = this.#tokens.length - 1
    for (; at >= 0; at -= 1) {
      const token = this.#tokens[at]!
      if (token.type === 'number' ? token.unit !== null : token.type !== 'sign') break
      if (token.type === 'number' && (token.digits ?? '').length > 3) return 'none'
    }
    const head = this.#tokens[at]
    if (head?.type === 'text') return 'doubtful'
    return head?.type === 'word' && unnumbered.includes(head.meaning) ? 'none' : 'torn'
  }

  /** "3 6 9V": rising settings of a switched supply with the unit behind the last. */
  #isSeries(start: number): boolean {
    const figures = this.#figures(start)
    const values = [Number((figures?.digits ?? '').replace(',', '.'))]
    for (let at = this.#tokens.length - 1; at >= 0 && values.length < longestSeries; at -= 1) {
      const token = this.#tokens[at]!
      if (token.type !== 'number' || token.unit) break
      values.unshift(Number((token.digits ?? '').replace(',', '.')))
    }
    return areSettings(values)
  }

  /** Whether a lone figure counts outputs after their word, or rows that begin with the next figures. */
  #counts(single: Token, before: Token | undefined): boolean {
    const count = Number(this.#text.slice(single.start, single.end))
    if (before?.type === 'word' || before?.type === 'text') {
      if (before.type === 'word' && before.meaning !== 'output' && before.meaning !== 'secondary') return false
      const word = this.#text.slice(before.start, before.end)
      return this.#text.includes(`${word} ${count === 1 ? 2 : 1}`)
    }
    if (before !== undefined && before.type !== 'line') return false
    this.#rows ??= new Set(
      Array.from(this.#text.matchAll(/(?:^|\n)[ \t]{0,8}(\d{1,2})[.) \t]/g), ([, row]) => Number(row)),
    )
    return this.#rows.has(count - 1) || this.#rows.has(count + 1)
  }

  /**
   * A number that a space has torn: the pieces with their unit give one reading, which is proposed. "0, 5A" and "1 .5A" have a space
   * beside their mark; "2 30V", "5 0Hz", "5 00mA" are mains voltages, mains frequencies and milliamperes; others may have lost a mark.
   */
  #acrossGap(
    start: number,
    { end, digits }: { end: number; digits: string | null },
  ): { end: number; digits: string | null } | null {
    if (digits === null) return null
    const last = this.#tokens.at(-1)
    if (last?.type === 'line' || last === undefined) {
      const row = { type: 'text' as const, start, end, spaceBefore: true, spaceAfter: true }
      if (this.#counts(row, last)) return null
    }
    return this.#tornDecimal(end, digits) ?? this.#spacedThousand(start, end, digits) ?? this.#tornFigures(end, digits)
  }

  #tornDecimal(end: number, whole: string): { end: number; digits: string | null } | null {
    const torn = /(?:[ \t]{1,2}([.,])[ \t]{0,2}|([.,])[ \t]{1,2})([\dOoIl]{1,3})(?![\d.,])/y
    torn.lastIndex = end
    const found = torn.exec(this.#text)
    if (!found || !/^\d{1,3}$/.test(whole)) return null
    const fraction = this.#figures(torn.lastIndex - found[3]!.length)
    if (fraction?.digits == null && !/^0/.test(found[3]!)) return null
    const figures = fraction?.digits ?? found[3]!
    const unit = this.#unit(torn.lastIndex)
    const mark = found[1] ?? found[2]!
    if (unit ? unit.unit.dimension === 'other' : !this.#beginsList(torn.lastIndex)) return null
    const dimension = unit?.unit.dimension ?? 'V'
    if (mark === ',' && this.#isOfList(whole, figures, dimension)) return null
    // "5, 12V": two voltages, or one with two decimals
    const isUndecided = mark === ',' && dimension === 'V' && figures.length > 1 && Number(figures) > Number(whole)
    return { end: torn.lastIndex, digits: isUndecided ? null : `${whole}${mark}${figures}` }
  }

  /** "50, 60Hz", "110, 220V", "3, 6, 9V": members of a list, each a number of its own. */
  #isOfList(one: string, other: string, dimension: string): boolean {
    const [number, sign] = this.#tokens.slice(-2)
    if (sign?.type === 'sign' && ',;'.includes(sign.sign) && number?.type === 'number' && !number.unit) return true
    const isMains = (digits: string): boolean => isNominal(Number(digits), dimension)
    return isMains(one) && isMains(other)
  }

  #tornFigures(end: number, head: string): { end: number; digits: string } | null {
    const torn = /[ \t]{1,2}(?=([\dOoIl]{1,3})(?![\dOoIl.,]))/y
    torn.lastIndex = end
    const found = torn.exec(this.#text)
    if (!found || head.length > 3) return null
    const from = torn.lastIndex
    const rest = found[1]!.replace(/./g, (one) => asDigit[one] ?? one)
    const next = from + rest.length
    const unit = this.#unit(next)
    const joined = head + rest
    const fits = (value: string, dimension: string): boolean =>
      /^\d{2,3}$/.test(value) && isNominal(Number(value), dimension)
    if (unit) {
      const { dimension, scale } = unit.unit
      if (fits(head, dimension) && fits(rest, dimension)) return null
      if (/^\d{1,3}[.,]\d{1,2}$/.test(head) && rest.length < 3 && dimension !== 'other')
        return { end: next, digits: joined }
      // no number begins with a nought: "3 000 W", "3 0 V"
      if (/^0/.test(rest) && /^[1-9]\d*$/.test(joined) && dimension !== 'other') return { end: next, digits: joined }
      const isMilli = dimension === 'A' && scale < 1 && /^[1-9]\d{2}$/.test(joined)
      return isMilli || fits(joined, dimension) ? { end: next, digits: joined } : null
    }
    // "10 0-240V", "5 0/60Hz": the second piece begins with a nought, as no number does
    const goesOn = /^0/.test(rest) && this.#beginsList(next)
    return goesOn && (fits(joined, 'V') || fits(joined, 'Hz')) ? { end: next, digits: joined } : null
  }

  /** Whether a number with look-alikes is one bound of a range or list: a dash, tilde or slash and a figure follow. */
  #leadsToUnit(end: number): boolean {
    let at = end
    while (at - end < 2 && isSpace(this.#char(at))) at += 1
    if (!'-~/'.includes(this.#char(at) || 'x')) return false
    at += 1
    const after = at
    while (at - after < 2 && isSpace(this.#char(at))) at += 1
    return isFigure(this.#char(at))
  }

  /** "1 000mA": a space as the mark of thousands, where no other reading is left. */
  #spacedThousand(start: number, end: number, digits: string | null): { end: number; digits: string } | null {
    if (digits === null || end - start !== 1 || !isSpace(this.#char(end))) return null
    const from = isSpace(this.#char(end + 1)) ? end + 2 : end + 1
    const group = this.#text.slice(from, from + 3)
    if (!/^\d{3}$/.test(group) || isDigit(this.#char(from + 3))) return null
    const unit = this.#unit(from + 3)
    if (unit?.unit.dimension !== 'A' || unit.unit.scale !== 1e-3) return null
    // "6 300mA" may be a six whose V is missing; one and two volts are no supply's
    if (digits !== '1' && digits !== '2' && group !== '000') return null
    return { end: from + 3, digits: digits + group }
  }
}
