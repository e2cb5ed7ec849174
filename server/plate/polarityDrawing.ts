import { isDigit, isLetter, isSpace } from './characters.js'
import type { Polarity } from './labelReading.js'
import type { Token } from './token.js'

/** Marks for the dot that footnotes use, too. */
const looseDots = '*'
const dots = '•●·∙⋅⦁⚫◦○oO'
const drawnDots = `${dots}${looseDots}`
const plus = '+⊕'
const minus = '⊖'
const line = '-_='
/** Farthest a sign may stand from its ring or dot, in characters and tokens. */
const reach = 10

export interface PolarityDrawing {
  start: number
  end: number
  polarity: Polarity | null
  /** number of tokens already cut that belong to the drawing's left half */
  takesBack: number
}

type Pole = 'plus' | 'minus' | null

/** Whether a drawing's ring or dot can begin with this character. */
export const mayDraw = (one: string): boolean => one === '(' || one === 'C' || one === '⊂' || drawnDots.includes(one)

/**
 * The sign for the polarity of a d.c. plug drawn in characters, "⊖-(•-⊕": the sign joined to the dot is the centre's, the
 * one joined to the open ring is the sleeve's.
 *
 * A lone dash is a line as well as a minus sign, so one circled sign or plus decides, and two that agree with each other
 * (both plus, say) decide nothing.
 *
 * @param text    folded text
 * @param index   where a ring or a dot may begin
 * @param tokens  what was cut before, for the left half
 * @source IEC 60417-5926 (remembered); the reading rule as makers' plug pages give it
 */
export function polarityDrawing(text: string, index: number, tokens: readonly Token[]): PolarityDrawing | null {
  const shape = shapeAt(text, index)
  if (!shape) return null
  const { dotOnRight, closed, loose, end } = shape
  const left = leftHalf(tokens, index)
  const right = rightHalf(text, end)
  const [joinedLeft, joinedRight] = [left.takesBack > 0, right.end > end || right.pole !== null]
  if (loose ? !(joinedLeft && joinedRight) : !(joinedLeft || joinedRight)) return null
  return {
    start: left.start,
    end: right.end,
    takesBack: left.takesBack,
    polarity: closed ? null : decide(dotOnRight ? right.pole : left.pole, dotOnRight ? left.pole : right.pole),
  }
}

interface Shape {
  dotOnRight: boolean
  /** a closed ring does not tell which side the dot is joined to */
  closed: boolean
  /** set apart, or with a mark that notes use, too: a drawing only between lines */
  loose: boolean
  end: number
}

/** Most blanks between ring and dot. */
const longestGap = 2

/** A ring with its dot. */
function shapeAt(text: string, index: number): Shape | null {
  const one = text.charAt(index)
  const isLoose = (mark: string, gap: number): boolean => gap > 0 || looseDots.includes(mark)
  if (one === '(' || one === '⊂' || (one === 'C' && !isLetter(text.charAt(index - 1)))) {
    const gap = gapAt(text, index + 1)
    const at = index + 1 + gap
    const mark = text.charAt(at)
    // "(or", "Co.": letters of a word
    const word =
      isLetter(mark) && (gap > 0 || one === 'C' || isLetter(text.charAt(at + 1)) || isDigit(text.charAt(at + 1)))
    if (mark === '' || !drawnDots.includes(mark) || word) return null
    const behind = at + 1 + gapAt(text, at + 1)
    const closed = /[)⊃]/.test(text.charAt(behind))
    return { dotOnRight: true, closed, loose: isLoose(mark, gap), end: closed ? behind + 1 : at + 1 }
  }
  if (!drawnDots.includes(one) || isLetter(text.charAt(index - 1))) return null
  const gap = isLetter(one) ? 0 : gapAt(text, index + 1)
  const ring = text.charAt(index + 1 + gap)
  if (ring !== ')' && ring !== '⊃') return null
  return { dotOnRight: false, closed: false, loose: isLoose(one, gap), end: index + 2 + gap }
}

function gapAt(text: string, at: number): number {
  let gap = 0
  while (gap < longestGap && isSpace(text.charAt(at + gap))) gap += 1
  return gap
}

function decide(dot: Pole, ring: Pole): Polarity | null {
  if (dot !== null && dot === ring) return null
  if (dot === 'plus' || ring === 'minus') return 'centre-positive'
  if (dot === 'minus' || ring === 'plus') return 'centre-negative'
  return null
}

function poleOf(sign: string): Pole {
  if (plus.includes(sign)) return 'plus'
  return minus.includes(sign) ? 'minus' : null
}

/** Signs cut before the ring or dot, joined to it by lines or spaces. */
function leftHalf(tokens: readonly Token[], index: number): { pole: Pole; start: number; takesBack: number } {
  let pole: Pole = null
  let start = index
  let takesBack = 0
  for (let at = tokens.length - 1; at >= 0 && takesBack < reach; at -= 1) {
    const token = tokens[at]!
    if (token.type !== 'sign' || start - token.end > 2) break
    const isLine = token.sign === '-' || token.sign === '--' || token.sign === '='
    const isPole = poleOf(token.sign) !== null
    if (!isLine && !isPole) break
    if (pole !== null && isPole) break
    if (isPole) pole = poleOf(token.sign)
    start = token.start
    takesBack += 1
    if (isPole) break
  }
  return { pole, start, takesBack }
}

function rightHalf(text: string, from: number): { pole: Pole; end: number } {
  let end = from
  let at = from
  while (at - from < reach) {
    const one = text.charAt(at)
    if (one === '') break
    if (isSpace(one)) {
      at += 1
      continue
    }
    if (line.includes(one)) {
      at += 1
      end = at
      continue
    }
    const bracketed = one === '(' && text.charAt(at + 2) === ')' ? text.charAt(at + 1) : ''
    if (bracketed === '+' || bracketed === '-') return { pole: bracketed === '+' ? 'plus' : 'minus', end: at + 3 }
    const pole = poleOf(one)
    // "+5V" after a drawing is the next rail
    if (pole !== null && !(one === '+' && /[\d.]/.test(text.charAt(at + 1)))) return { pole, end: at + 1 }
    break
  }
  return { pole: null, end }
}
