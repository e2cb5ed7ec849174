import { plateLimits } from '../tables/plateLimits.js'
import { plateSayings, type Saying } from '../tables/plateSayings.js'

const expression = (saying: Saying): RegExp =>
  new RegExp(
    plateSayings
      .filter((row) => row.saying === saying)
      .flatMap(({ patterns }) => patterns)
      .join('|'),
    'giu',
  )

const expressions = new Map([...new Set(plateSayings.map(({ saying }) => saying))].map((one) => [one, expression(one)]))

/** One expression of all wordings of a saying: for `search`, `replace` and `matchAll`, which leave no mark in it. */
const wordingsOf = (saying: Saying): RegExp => expressions.get(saying) ?? /(?!)/

/** The part of a plate that is read. */
export const readPart = (label: string | null | undefined): string =>
  label?.slice(0, plateLimits.mostCharacters.value) ?? ''

/** Whether words of a plate say something of the thing; a denial in the same words counts where it has a saying of its own. */
export function says(label: string | null | undefined, saying: Saying): boolean {
  const text = readPart(label)
  // "unregulated" holds the word for its opposite
  return (saying === 'regulated' ? text.replace(wordingsOf('unregulated'), ' ') : text).search(wordingsOf(saying)) >= 0
}

/**
 * Whether a plate says that its unit finds the mains voltage itself, so that there is no selector to set. A line that takes it
 * back says nothing: it has none, it is switched off, or other models have it.
 */
export const saysSetsItself = (label: string | null | undefined): boolean =>
  readPart(label)
    .split(/[\n.]/)
    .some((line) => says(line, 'sets itself') && !says(line, 'taken back'))

/** Every place where words of a plate say something: [start, end) of each. */
export function placesOf(label: string | null | undefined, saying: Saying): [number, number][] {
  return [...readPart(label).matchAll(wordingsOf(saying))].map(({ index, 0: words }) => [index, index + words.length])
}

/** What stands from the first word for the output on; all of it where there is none. */
export function fromOutput(label: string | null | undefined): string {
  const text = readPart(label)
  return text.slice(Math.max(0, text.search(wordingsOf('output'))))
}

const printedHertz = /(?<![\d.,])(\d{2})(?:\s*(?:Hz)?\s*[/-]\s*(\d{2}))?\s*(?:Hz|c\/s|cps|cycles?|Гц|ヘルツ|赫兹)/giu
/** Frequencies that a mains has [Hz]. */
const mainsHertz = { least: 45, most: 65 }

/** Frequencies of a mains that stand on a plate, whatever the voltage beside them [Hz]. */
export function hertzOn(label: string | null | undefined): number[] {
  const found = [...readPart(label).matchAll(printedHertz)].flatMap(([, one, other]) => [one, other])
  return [...new Set(found.map(Number))].filter((hz) => hz >= mainsHertz.least && hz <= mainsHertz.most)
}

/** Whether two voltages stand side by side as one or the other: "9/12 V", "9 V 1 A or 12 V", with no sign before the second. */
export function isPrintedAsEither(label: string | null | undefined, oneV: number, otherV: number): boolean {
  const printed = (volts: number): string => String(volts).replace('.', '[.,]')
  const current = '(?:[^\\d+\\n/]{0,6}\\d+(?:[.,]\\d+)?\\s*m?A)?'
  const between = `(?:\\s*V)?${current}[^\\d+\\n/]{0,6}(?:/|\\bor\\b|\\boder\\b|\\bou\\b)\\s*`
  return new RegExp(`(?<![\\d.,+])${printed(oneV)}${between}${printed(otherV)}(?![\\d]|[.,]\\d)`, 'iu').test(
    readPart(label),
  )
}
