import { type PolarityPart, polarityTerms } from '../tables/polarityTerms.js'
import { isDigit, isIdeograph, isLetter, isSpace } from './characters.js'
import type { Folded } from './fold.js'
import type { Token } from './token.js'
import { WordTree } from './wordTree.js'

/** A piece of a clause. A `dash` may be a minus sign or only join or part words. */
export interface Piece {
  is: Exclude<PolarityPart, 'edge' | 'denial' | 'filler'> | 'dash' | 'unknown'
  everyday: boolean
  /** a bare + or a dash, which other things print, too */
  sign: boolean
  /** a dash before a figure or at the head of a clause, where plates print it for other ends */
  doubtful: boolean
}

/** What stands between two edges. */
export interface Clause {
  start: number
  end: number
  pieces: Piece[]
  denied: boolean
  /** its last word denies, and may deny what the next line says */
  deniesNext: boolean
}

interface Term {
  part: PolarityPart
  everyday: boolean
}

let built: WordTree<Term> | undefined

function termTree(): WordTree<Term> {
  if (built) return built
  built = new WordTree<Term>()
  for (const { part, everyday, words } of polarityTerms) for (const word of words) built.add(word, { part, everyday })
  return built
}

const bracketedSign = /[([] ?([+-]) ?[)\]]/y
const soft = ':=()[]{}/\'"<>~*_\u00AB\u00BB\u201C\u201D\u201E\u2192\u21D2\u2194\u2026'
/** Longest word whose full stop is that of an abbreviation: "neg.", "pos.". */
const longestAbbreviation = 3

/** Cuts one line into clauses: at commas, full stops, figures, drawings and words that speak of other things. */
export function clausesOf(folded: Folded, line: readonly Token[]): Clause[] {
  return line.length === 0 ? [] : new Cutter(folded, line).run()
}

class Cutter {
  readonly #text: string
  readonly #upper: string
  readonly #line: readonly Token[]
  readonly #clauses: Clause[] = []
  #pieces: Piece[] = []
  #sentence: Clause[] = []
  #denied = false
  #start: number | null = null
  #end = 0
  #token = 0
  #denialEnd = 0
  #judged: { token: Token; code: boolean } | undefined

  constructor({ text, upper }: Folded, line: readonly Token[]) {
    this.#text = text
    this.#upper = upper
    this.#line = line
  }

  run(): Clause[] {
    const end = this.#line.at(-1)!.end
    let at = this.#line[0]!.start
    while (at < end) at = this.#step(at)
    this.#close(true)
    this.#endSentence()
    return this.#clauses
  }

  #step(at: number): number {
    const one = this.#text.charAt(at)
    if (isSpace(one)) return at + 1
    while (this.#line[this.#token]!.end <= at) this.#token += 1
    const token = this.#line[this.#token]!
    const found = this.#term(at)
    if (found) return this.#take(found.value, at, found.end)
    if (token.type === 'sign' || token.type === 'text') {
      const end = this.#sign(at, token)
      if (end !== null) return end
    }
    if (token.type === 'word' && token.meaning === 'polarity') return this.#keep(at, token.end)
    // "tip + or -" leaves open which
    if (token.type === 'word' && token.meaning === 'or' && this.#pieces.length > 0)
      return this.#push('unknown', at, token.end)
    if (token.type === 'text' && !this.#isCode(token)) return this.#push('unknown', at, this.#wordEnd(at, token.end))
    // "sleeve 0V"
    const zero = token.type === 'number' && token.unit?.dimension === 'V' && Number(token.digits ?? 1) === 0
    if (zero && this.#isBehindPlace()) return this.#push('earth', at, token.end, true)
    this.#close(false)
    return token.end
  }

  #isBehindPlace(): boolean {
    const place = this.#pieces.at(-1)?.is
    return place === 'centre' || place === 'outer' || place === 'pin'
  }

  #term(at: number): { value: Term; end: number } | null {
    const one = this.#text.charAt(at)
    const before = this.#text.charAt(at - 1)
    if (isLetter(one) && (isLetter(before) || isDigit(before))) return null
    return termTree().longest(
      this.#upper,
      at,
      (end) =>
        !(
          isLetter(this.#text.charAt(end - 1)) &&
          (isLetter(this.#text.charAt(end)) || isDigit(this.#text.charAt(end)))
        ),
    )
  }

  #take({ part, everyday }: Term, at: number, end: number): number {
    if (part === 'edge') {
      this.#close(false)
      return end
    }
    if (part === 'filler') return this.#keep(at, end)
    if (part === 'denial') {
      // "No." before a number
      if (this.#upper.slice(at, end) !== 'NO' || !'.:'.includes(this.#text.charAt(end) || 'x')) {
        this.#denied = true
        this.#denialEnd = end
      }
      return this.#keep(at, end)
    }
    const abbreviated =
      this.#text.charAt(end) === '.' && end - at <= longestAbbreviation && isLetter(this.#text.charAt(at))
    return this.#push(part, at, abbreviated ? end + 1 : end, everyday)
  }

  /** Where a sign ends that says or parts something; null for what is none. */
  #sign(at: number, token: Token): number | null {
    const [sign, next] = [this.#text.charAt(at), this.#text.charAt(at + 1)]
    bracketedSign.lastIndex = at
    const bracketed = bracketedSign.exec(this.#text)
    if (bracketed) return this.#push(bracketed[1] === '+' ? 'plus' : 'minus', at, at + bracketed[0].length)
    if (sign === '\u2295' || sign === '\u2296') return this.#push(sign === '\u2295' ? 'plus' : 'minus', at, at + 1)
    if (sign === '+' && (next === '-' || (next === '/' && this.#text.charAt(at + 2) === '-'))) {
      this.#close(false)
      return at + (next === '-' ? 2 : 3)
    }
    if (sign === '+' || sign === '-') return this.#poleSign(at, token)
    if (sign === '.' || sign === '!') {
      this.#close(false)
      this.#endSentence()
      return at + 1
    }
    if (',;|&\u00B7\u2022'.includes(sign)) {
      this.#close(false)
      if (sign === ';') this.#endSentence()
      return at + 1
    }
    if (soft.includes(sign)) return this.#keep(at, at + 1)
    return isLetter(sign) || isIdeograph(sign) || isDigit(sign) ? null : this.#push('unknown', at, at + 1)
  }

  #poleSign(at: number, token: Token): number {
    const [before, sign, next] = [-1, 0, 1].map((step) => this.#text.charAt(at + step))
    const spelled = /^(?:VE|POL)(?![A-Z])/.exec(this.#upper.slice(at + 1, at + 5))
    if (spelled) return this.#push(sign === '+' ? 'plus' : 'minus', at, at + 1 + spelled[0].length)
    if (isDigit(next!)) {
      // "tip = +9V" tells a pole, "+9V" a rail
      const equal = /[=:] {0,2}$/.test(this.#text.slice(Math.max(0, at - 3), at))
      if (this.#isBehindPlace() && (sign === '+' || equal))
        return this.#push(sign === '+' ? 'plus' : 'minus', at, at + 1)
      this.#close(false)
      return at + 1
    }
    if (sign === '+') return this.#push('plus', at, at + 1, false, true)
    if (next === '>') return this.#keep(at, at + 2)
    if (token.type === 'sign' && token.end - at > 1) return this.#keep(at, token.end)
    if (isLetter(before!) && isLetter(next!)) return this.#keep(at, at + 1)
    return this.#push('dash', at, at + 1, false, true)
  }

  /** A type number or its like: letters with figures. */
  #isCode(token: Token): boolean {
    if (this.#judged?.token !== token)
      this.#judged = { token, code: /\d/.test(this.#text.slice(token.start, token.end)) }
    return this.#judged.code
  }

  #wordEnd(at: number, tokenEnd: number): number {
    let end = at + 1
    if (!isLetter(this.#text.charAt(at))) return end
    while (end < tokenEnd && isLetter(this.#text.charAt(end))) end += 1
    return end
  }

  #keep(at: number, end: number): number {
    this.#start ??= at
    this.#end = end
    return end
  }

  #push(is: Piece['is'], at: number, end: number, everyday = false, sign = false): number {
    this.#pieces.push({ is, everyday, sign, doubtful: false })
    return this.#keep(at, end)
  }

  #close(atLineEnd: boolean): void {
    const clause: Clause = {
      start: this.#start ?? 0,
      end: this.#end,
      pieces: this.#pieces,
      denied: false,
      deniesNext: atLineEnd && this.#start !== null && this.#denialEnd === this.#end,
    }
    this.#pieces.forEach((piece, index) => {
      const before = this.#pieces[index - 1]?.is
      const afterPlace = before === 'centre' || before === 'outer' || before === 'pin'
      const beforeOther = index === this.#pieces.length - 1 && !atLineEnd && this.#goesOn()
      piece.doubtful = piece.is === 'dash' && (!afterPlace || beforeOther)
    })
    this.#clauses.push(clause)
    this.#sentence.push(clause)
    this.#pieces = []
    this.#start = null
  }

  /** Whether a figure or a word follows the clause, not a mark that ends it. */
  #goesOn(): boolean {
    const rest = this.#text.slice(this.#end, this.#end + 4).trimStart()
    return rest !== '' && !',;.)]|\n'.includes(rest.charAt(0))
  }

  #endSentence(): void {
    for (const clause of this.#sentence) clause.denied = this.#denied
    this.#sentence = []
    this.#denied = false
  }
}
