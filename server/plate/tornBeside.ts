import type { Token } from './token.js'

/** A figure that a space, or a letter for a figure, has torn: "2 4VDC", "7 .5V", "1 00", "lA"; or one with a hole in it; not "No. 5". */
const torn =
  /\d[ \t]+[.,]?\d|(?<!\p{L})[.,][ \t]+\d|(?<![\p{L}\d])[lIOoОо|]+[ \t]?(?:m?A|V|W)(?!\p{L})|\d[?_■]+\d*[ \t]?(?:m?A|V|W)/u
/** The number of an output, behind the word for it or the letter of a voltage: "1", "1:", "U2:", "V1". */
const ordinal = /^\d\s?:?$/u
const voltageName = /^[UVuv]\d\s?:?$/u
/** The end of a list whose other members were read: "127x", "115|", "11S/"; a tolerance ends in its sign. */
const cutList = /\d[^\s\d%]?$|(?<![\p{L}\d.,-])\d{1,3}\p{L}[/-]$/u

/**
 * Whether what was read between two tokens may be the rest of what was not, or belong to a figure that was lost: unread figures are torn in
 * its line or the one before, or stand right against it.
 *
 * @param text    folded
 * @param tokens  all of the plate, those read with their role
 * @param first   the first token that was read
 * @param last    behind the last one
 */
export function isBesideTorn(text: string, tokens: readonly Token[], first: number, last: number): boolean {
  const before = unreadBefore(tokens, first)
  if (before) {
    const words = text.slice(before.start, before.end)
    const gap = text.slice(before.end, tokens[first]!.start)
    const isName = voltageName.test(words) || (before.isOfOutput && ordinal.test(words))
    if (cutList.test(words) && gap.trim() === '' && !isName) return true
  }
  return unreadInLine(tokens, first, last).some(([start, end]) => torn.test(text.slice(start, end)))
}

/** The unread stretch that ends right before a token. */
function unreadBefore(
  tokens: readonly Token[],
  first: number,
): { start: number; end: number; isOfOutput: boolean } | null {
  let at = first
  while (at > 0 && isUnread(tokens[at - 1]!) && !tokens[at - 1]!.spaceBefore) at -= 1
  if (at > 0 && isUnread(tokens[at - 1]!)) at -= 1
  if (at === first) return null
  const [start, end] = [tokens[at]!.start, tokens[first - 1]!.end]
  const word = tokens[at - 1]
  return { start, end, isOfOutput: word?.type === 'word' && word.meaning === 'output' }
}

const isUnread = (token: Token): boolean => token.role === undefined && token.type !== 'line'

/** The unread stretches of the line that a token stands in and of the one before, which may go on in it, as places in the text. */
function unreadInLine(tokens: readonly Token[], first: number, last: number): [number, number][] {
  let from = first
  let to = last
  while (from > 0 && tokens[from - 1]!.type !== 'line') from -= 1
  if (from > 0) from -= 1
  while (from > 0 && tokens[from - 1]!.type !== 'line') from -= 1
  while (to < tokens.length && tokens[to]!.type !== 'line') to += 1
  const stretches: [number, number][] = []
  let isOpen = false
  for (const token of tokens.slice(from, to)) {
    if (!isUnread(token)) isOpen = false
    else if (isOpen) stretches.at(-1)![1] = token.end
    else {
      stretches.push([token.start, token.end])
      isOpen = true
    }
  }
  return stretches
}
