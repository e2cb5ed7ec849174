import { iecPreferred } from '../tables/fuseRatings.js'

const figure = String.raw`\d{1,5}(?:[.,]\d{1,4})?`
const between = String.raw`[\s.,;:'’·_*\-/]`

/** Two figures with nothing but blanks and signs between them, the second one a current: "1. 6A", "3 15mA", "T1·6". */
const split = new RegExp(
  String.raw`(?<before>(?:\p{L}{1,20}|x\s)?)(?<![\d.,])(?<first>${figure})(?<gap>${between}{1,4})(?<second>${figure})(?!\d)\s?(?<unit>m?a(?![a-z]{2})|[leh](?![a-z]))?(?!\s?[x°%]|\s?v(?![a-z]{3})|/\d)`,
  'giu',
)

/** Figures with letters among them that look like figures: "5OOmA", "3I5mA". */
const lettered =
  /(?<![\p{L}\d])(?:ff|tt|[fmt])?(?=[\doqlisbz|.,]{0,6}\d)(?=[\d.,]{0,6}[oqlisbz|])[\doqlisbz|.,]{2,6}\s?m?a(?![a-z])/iu

const speedLetter = /^(?:ff|tt|[fmt])$/i

/**
 * The piece of a marking whose figures stand apart, or hold letters, as pasted text from a photo does: what rating it
 * means is not known. Null where none does.
 *
 * References ("F2 500mA", "F1: 2A"), fractions ("1 1/2 A"), sizes ("5x20 2A"), and a voltage before a current ("250/2A")
 * are no damage, unless the two figures together make a preferred rating.
 *
 * @param printed  as made uniform by `tidy`
 */
export function damagedPiece(printed: string): string | null {
  for (const match of printed.matchAll(split)) {
    const { before = '', first = '', gap = '', second = '', unit = '' } = match.groups ?? {}
    const letter = speedLetter.test(before)
    // without a unit it is a current only behind a letter; a voltage that leaves its unit out has three figures
    if (unit === '' || !/a/i.test(unit)) if (!letter || second.length > 2) continue
    if (/^[.,]$/.test(gap) || Number(first.replace(',', '.')) >= 100) continue
    if (/^x$/i.test(before.trim()) || /x\s?$/i.test(before)) continue
    if (gap === '/' && /^(?:2|4|8|10|16|32|64|100|200)$/.test(second)) continue
    const reference = before.trim() !== '' && (!letter || /^f$/i.test(before))
    if (reference && (/[:=]|\s-\s/.test(gap) || !makesRating(first, second, unit))) continue
    return match[0].trim()
  }
  return lettered.exec(printed)?.[0].trim() ?? null
}

/** Whether two figures put together are a preferred rating: 1 and 6 A are 1.6 A, 3 and 15 mA are 315 mA. */
function makesRating(first: string, second: string, unit: string): boolean {
  const together = /^m/i.test(unit) ? Number(`${first}${second}`) / 1000 : Number(`${first}.${second}`)
  return together < (/^m/i.test(unit) ? 1 : Number.POSITIVE_INFINITY) && iecPreferred.ratedA.includes(together)
}
