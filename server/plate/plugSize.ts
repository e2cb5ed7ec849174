import { dcPlugsBySize } from '../tables/dcPlugs.js'
import { plateLimits } from '../tables/plateLimits.js'
import { plugWords } from '../tables/plugWords.js'
import { foldWord } from './fold.js'
import type { LabelPlug } from './labelReading.js'

/** A plug that the words of a plate give the size of, and where they stand in the folded text. */
export interface PrintedPlug {
  plug: LabelPlug
  stretches: { start: number; end: number }[]
}

const number = '(\\d{1,2}(?:[.,]\\d{1,2})?)'
const mm = '(?: {0,2}MM)?'
const any = (words: readonly string[]): string => `(?:${words.map(foldWord).join('|')})`
const sign = '(?:[\u2300\u03A6\u03C6\u03D5\u0424] {0,2}|DIA\\.? {0,2})?'

/** what follows a word that belongs to the size before it */
const noFigure = '(?![ :.=]{0,3}[\u2300\\d])'

/** "5.5x2.1mm", "5,5/2,1", "5.5 x 2.1 x 9.5" */
const pair = new RegExp(
  `(?<![\\p{L}\\d.,])(${sign})${number}${mm} {0,2}([X\u00D7*/]) {0,2}${sign}${number}(?:${mm} {0,2}[X\u00D7*/] {0,2}${number})?( {0,2}MM)?(?![\\d.,]*\\d| {0,2}(?:[VAW]|M?A|HZ|CM|IN)(?!\\p{L})|\\p{L})`,
  'gu',
)
/** "DC5521" */
const code = /(?<![\p{L}\d])DC ?-?(\d\d)(\d\d)(?![\d\p{L}-])/gu
const outerBefore = new RegExp(`${any(plugWords.outer)}[ :.=]{0,3}${sign}${number} {0,2}MM`, 'gu')
const innerBefore = new RegExp(`${any(plugWords.inner)}[ :.=]{0,3}${sign}${number} {0,2}MM`, 'gu')
const outerAfter = new RegExp(`${number} {0,2}MM {0,2}${any(plugWords.outer)}${noFigure}`, 'gu')
const innerAfter = new RegExp(`${number} {0,2}MM {0,2}${any(plugWords.inner)}${noFigure}`, 'gu')
const boreOfPlug = new RegExp(`(?<![\\d.,X\u00D7/] {0,1})${number} {0,2}MM[ -]{0,2}${any(plugWords.barrel)}`, 'gu')
const named = /(?<!\p{L})(?:EIAJ|JEITA)[ -]{0,2}(?:TYPE )?0?([1-5])(?!\d)/gu
const plugWord = new RegExp(any([...plugWords.plug, ...plugWords.barrel]), 'u')

const value = (digits: string): number => Number(digits.replace(',', '.'))
const isOuter = (size: number): boolean => size >= plateLimits.leastPlugMm.value && size <= plateLimits.mostPlugMm.value
const isInner = (size: number): boolean => size >= plateLimits.leastBoreMm.value && size <= plateLimits.mostBoreMm.value
/** How far from its sizes a word for a plug may stand, in characters. */
const wordReach = 24

/**
 * The size of the plug on a supply's lead, or that a machine's jack takes, as printed: outer diameter and bore [mm], or the name of a
 * standard plug. Two sizes that differ, as of a set of tips, say nothing.
 *
 * @param upper  folded text in capitals
 */
export function printedPlug(upper: string): PrintedPlug | null {
  const found = [...pairs(upper), ...codes(upper), ...sizes(upper), ...names(upper)]
  const pick = <Value>(key: 'outerMm' | 'innerMm' | 'name'): Value | null | undefined => {
    const said = new Set(found.flatMap((one) => (one[key] === undefined ? [] : [one[key]])))
    return said.size > 1 ? undefined : (([...said][0] as Value | undefined) ?? null)
  }
  const [outerMm, innerMm, name] = [pick<number>('outerMm'), pick<number>('innerMm'), pick<string>('name')]
  if (found.length === 0 || outerMm === undefined || innerMm === undefined || name === undefined) return null
  if (outerMm !== null && innerMm !== null && !(innerMm < outerMm)) return null
  return { plug: { outerMm, innerMm, polarity: null, name }, stretches: found }
}

interface Found {
  outerMm?: number
  innerMm?: number
  name?: string
  start: number
  end: number
}

const matches = (upper: string, shape: RegExp): RegExpExecArray[] =>
  Array.from(upper.matchAll(shape)) as RegExpExecArray[]

function pairs(upper: string): Found[] {
  return matches(upper, pair).flatMap((match) => {
    const [whole, mark, outer, joint, inner, length, unit] = match
    const [outerMm, innerMm] = [value(outer!), value(inner!)]
    const [start, end] = [match.index, match.index + whole.length]
    const around = upper.slice(Math.max(0, start - wordReach), end + wordReach)
    const isTold = mark !== '' || plugWord.test(around)
    const isKnown = dcPlugsBySize(outerMm, innerMm).length > 0
    const hasFraction = /[.,]/.test(outer! + inner!)
    const fits = isOuter(outerMm) && isInner(innerMm) && innerMm < outerMm
    const lengthFits = length === undefined || value(length) > outerMm
    // a stroke joins settings and currents, too
    const isSize = joint === '/' ? isTold && hasFraction : isTold || (isKnown && (unit !== undefined || hasFraction))
    return fits && lengthFits && isSize ? [{ outerMm, innerMm, start, end }] : []
  })
}

function codes(upper: string): Found[] {
  return matches(upper, code).flatMap((match) => {
    const [outerMm, innerMm] = [Number(match[1]) / 10, Number(match[2]) / 10]
    return dcPlugsBySize(outerMm, innerMm).some((row) => row.outerMm === outerMm && row.innerMm === innerMm)
      ? [{ outerMm, innerMm, start: match.index, end: match.index + match[0].length }]
      : []
  })
}

function sizes(upper: string): Found[] {
  const read = (shape: RegExp, key: 'outerMm' | 'innerMm', fits: (size: number) => boolean): Found[] =>
    matches(upper, shape).flatMap((match) => {
      const size = value(match[1] ?? match[2]!)
      return fits(size) ? [{ [key]: size, start: match.index, end: match.index + match[0].length }] : []
    })
  const told = [
    ...read(outerBefore, 'outerMm', isOuter),
    ...read(outerAfter, 'outerMm', isOuter),
    ...read(innerBefore, 'innerMm', isInner),
    ...read(innerAfter, 'innerMm', isInner),
  ]
  // 2.5 mm and 3.5 mm may be a phone plug's
  return told.length > 0
    ? told
    : read(boreOfPlug, 'innerMm', (size) => isInner(size) && size < plateLimits.leastPhonePlugMm.value)
}

const names = (upper: string): Found[] =>
  matches(upper, named).map((match) => ({
    name: `EIAJ-0${match[1]}`,
    start: match.index,
    end: match.index + match[0].length,
  }))
