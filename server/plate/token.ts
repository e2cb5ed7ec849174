import type { PlateMeaning, UnitDimension } from '../tables/plateWords.js'
import type { Polarity } from './labelReading.js'

/** Place of a token in the folded text. */
interface Span {
  start: number
  end: number
  /** whether white space, a line end or the edge of the text stands directly before and after */
  spaceBefore: boolean
  spaceAfter: boolean
  /** filled in by the grammar: what it was read as; absent for what found no place */
  role?: string
}

export interface NumberToken extends Span {
  type: 'number'
  /** digits and decimal mark, look-alike letters replaced; null where a digit is worn away */
  digits: string | null
  /** the number and unit that damaged print is taken for, "0,5A" for "0, 5A"; null where it stands as read */
  reads: string | null
  /** a mark beside it may belong to it: "9V. 5A" */
  doubtful: boolean
  unit: { dimension: UnitDimension; scale: number; kind: 'ac' | 'dc' | null } | null
}

export interface WordToken extends Span {
  type: 'word'
  meaning: PlateMeaning
  /** short or everyday words count only beside a quantity */
  weak: boolean
  /** the word that damaged print is taken for, "OUTPUT" for "0UTPUT"; null where it stands as read */
  reads: string | null
}

export interface SignToken extends Span {
  type: 'sign'
  /** one of + - ± / ~ = , ; : ( ) [ ] | @ < > × ⊕ ⊖ … ↔ & or another single character */
  sign: string
}

export interface SymbolToken extends Span {
  type: 'symbol'
  meaning: 'ac' | 'dc' | 'class II' | 'fuse' | 'note'
}

export interface DrawingToken extends Span {
  type: 'drawing'
  polarity: Polarity | null
}

/** A fuse marking that can be nothing else: "T2A", "F500mA L 250V". */
export interface FuseToken extends Span {
  type: 'fuse'
}

export interface TextToken extends Span {
  type: 'text'
}

export interface LineToken extends Span {
  type: 'line'
}

export type Token = NumberToken | WordToken | SignToken | SymbolToken | DrawingToken | FuseToken | TextToken | LineToken
