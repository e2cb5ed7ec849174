/** Text made uniform for reading, with the way back to what was printed. */
export interface Folded {
  /** compatibility forms and look-alike dashes, tildes and slashes unified; accents dropped; case kept */
  readonly text: string
  /** `text` in capitals, of the same length */
  readonly upper: string
  /** for each character of `text`, and for its end, the index in the original */
  readonly origin: readonly number[]
}

/** Stands where the reader must not read: inside text whose direction of writing is forced. */
export const unreadable = '\uFFFD'

/** The figures of other scripts, each from its nought: Arabic, Persian, Devanagari, Bengali and Thai. */
const noughts = ['\u0660', '\u06F0', '\u0966', '\u09E6', '\u0E50']
const figures = noughts.flatMap((nought) =>
  Array.from({ length: 10 }, (_, figure): [string, string] => [
    String.fromCharCode(nought.charCodeAt(0) + figure),
    String(figure),
  ]),
)

const sets: readonly [string, string][] = [
  ...figures,
  ['\u066B', ','],
  ['\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE63\uFF0D\u2500\u2501\u23AF\u2796', '-'],
  ['\u223C\u223F\u301C\uFF5E\u23E6\u02DC\u223D\u0334', '~'],
  ['\u2044\u2215\uFF0F', '/'],
  ['\u3001\uFF0C\uFE50', ','],
  ['\u3002', '.'],
  ['\u2715\u2A2F\u2716', '\u00D7'],
  ['\u2550\uFE66', '='],
  ['\u2795', '+'],
  ['\u2A01', '\u2295'],
  ['\u2A02\u229D', '\u2296'],
  ['\u2194\u21D4\u27F7\u21C4', '\u2194'],
  ['\n\u2028\u2029\u0085\u000B\u000C\r', '\n'],
  ['\u00D8', 'O'],
  ['\u00F8', 'o'],
  ['\u0141', 'L'],
  ['\u0142', 'l'],
  ['\u0131', 'i'],
  ['\u00DF', 'ss'],
  ['\u00C6', 'AE'],
  ['\u00E6', 'ae'],
  ['\u2019\u2018\u00B4\u0060', "'"],
]

const fixed = new Map<string, string>(sets.flatMap(([from, to]) => [...from].map((one) => [one, to] as const)))

/** Zero-width and direction marks that change nothing one can see. */
const invisible = /^[\u00AD\u200B-\u200F\u2060-\u2064\u2066-\u2069\u202A\u202B\u202C\uFEFF]$/
/** Numerals whose plain form would read as another number: superscripts, circled figures, fractions. */
const otherNumeral = /^[\p{No}]$/u
const hangul = /^\p{Script=Hangul}$/u
const mark = /\p{M}/gu

/** Longest expansion taken over; longer ones are no words of a plate. */
const longestExpansion = 4

function foldOne(one: string): string {
  const set = fixed.get(one)
  if (set !== undefined) return set
  if (invisible.test(one)) return ''
  if (otherNumeral.test(one) || one === unreadable) return one
  if (/^[\p{Cc}\p{Zs}]$/u.test(one)) return ' '
  let plain = one.normalize('NFKC')
  if (!hangul.test(plain)) plain = plain.normalize('NFD')
  const stripped = plain.replace(mark, '')
  if (/^[Vv]\u0303$/.test(plain)) return `${stripped}~`
  const out = [...stripped].map((part) => fixed.get(part) ?? part).join('')
  return out.length > longestExpansion ? one : out
}

const rightToLeftOverride = '\u202E'
const leftToRightOverride = '\u202D'
const endOfOverride = '\u202C'

/**
 * Unifies the characters of a text one by one, so that the time is proportional to the length whatever the text.
 * (Normalising the whole string at once would sort long runs of combining marks, which is not.)
 *
 * @param original  any text
 */
export function fold(original: string): Folded {
  const cache = new Map<string, string>()
  const parts: string[] = []
  const origin: number[] = []
  let previous = ''
  let forced = false
  let escaped = false
  let index = 0
  const length = original.length
  while (index < length) {
    const plain = plainRun(original, index)
    if (plain > index && !forced && !escaped) {
      for (let at = index; at < plain; at += 1) origin.push(at)
      parts.push(original.slice(index, plain))
      previous = original.charAt(plain - 1)
      index = plain
      continue
    }
    const one = oneAt(original, index)
    let out: string
    const code = one.charCodeAt(0)
    if (one === rightToLeftOverride || one === leftToRightOverride) {
      forced = true
      out = unreadable
    } else if (one === '\\' && /^[nr]/.test(original.slice(index + 1, index + 2))) {
      // a line end written as an escape, as texts copied from code and spreadsheets have it
      escaped = true
      out = '\n'
    } else if (escaped) {
      escaped = false
      out = ''
    } else if (one === '\u0303') {
      // a tilde typed as a combining mark after the unit; over any other letter it is an accent
      out = previous === 'V' || previous === 'v' || previous === ' ' ? '~' : ''
    } else if (code >= 0x20 && code < 0x7f && code !== 0x60) {
      out = one
    } else {
      let known = cache.get(one)
      if (known === undefined) {
        known = foldOne(one)
        cache.set(one, known)
      }
      out = known
    }
    if (one === endOfOverride || out === '\n') forced = false
    if (forced && out !== '') out = unreadable
    for (let at = 0; at < out.length; at += 1) origin.push(index)
    if (out !== '') {
      parts.push(out)
      previous = out
    }
    index += one.length
  }
  origin.push(original.length)
  const text = parts.join('')
  const upper = text.toUpperCase()
  return { text, upper: upper.length === text.length ? upper : sameLengthUpper(text), origin }
}

/** A character; a Korean syllable written in its parts is one. */
function oneAt(text: string, index: number): string {
  const code = text.charCodeAt(index)
  if (code < 0x1100 || code > 0x1112) return String.fromCodePoint(text.codePointAt(index)!)
  const vowel = text.charCodeAt(index + 1)
  if (!(vowel >= 0x1161 && vowel <= 0x1175)) return text.charAt(index)
  const last = text.charCodeAt(index + 2)
  return text.slice(index, index + (last >= 0x11a8 && last <= 0x11c2 ? 3 : 2))
}

/** The end of a run of characters that are taken over as they are. */
function plainRun(text: string, from: number): number {
  let end = from
  while (end < text.length) {
    const code = text.charCodeAt(end)
    if (code < 0x20 || code > 0x7e || code === 0x60 || code === 0x5c) break
    end += 1
  }
  return end
}

/** Capitals of one word or phrase, folded as a text is. */
export const foldWord = (word: string): string => fold(word).upper

function sameLengthUpper(text: string): string {
  let out = ''
  for (let at = 0; at < text.length; at += 1) {
    const capital = text.charAt(at).toUpperCase()
    out += capital.length === 1 ? capital : text.charAt(at)
  }
  return out
}
