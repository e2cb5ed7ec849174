import type { DcPlugRow } from './dcPlugRows.js'
import { dcPlugRows } from './dcPlugRows.js'
import { plugBoreTight } from './thresholds.js'

export type { DcPlugRow }

// 2.1 − 2.0 is a little more than 0.1 in binary
const rounding = 1e-9

/** Rows whose outer and inner diameter [mm] are within 0.1 mm of those given (lists print one size as 2.0 and 2.1, as 4.75 and 4.8), nearest first; often several, so a size proves no voltage. */
export function dcPlugsBySize(outerMm: number, innerMm: number): DcPlugRow[] {
  const distance = (row: DcPlugRow): number =>
    Math.max(Math.abs(row.outerMm - outerMm), Math.abs(row.innerMm - innerMm))
  return dcPlugRows
    .filter((row) => distance(row) <= plugBoreTight.value + rounding)
    .toSorted((one, other) => distance(one) - distance(other))
}

/** Bores that lists write two ways and that are one [mm]; {@link plugBoreTight} has the source. */
const sameBores: readonly (readonly number[])[] = [
  [2, 2.1],
  [3, 3.1],
]

/** Whether two bores [mm] are one size written two ways. */
export const isSameBore = (oneMm: number, otherMm: number): boolean =>
  sameBores.some((pair) => pair.includes(oneMm) && pair.includes(otherMm))

const plain = (text: string): string =>
  text
    .toUpperCase()
    .replace(/×/g, 'X')
    .replace(/,/g, '.')
    .replace(/[^A-Z0-9.]/g, '')
    .replace(/MM/g, '')

/** The row a text names: "5.5 x 2.1", "5.5×2.1 mm", "EIAJ-02", "JEITA RC-5320A type 2"; undefined when it names none. */
export const dcPlugByName = (name: string): DcPlugRow | undefined =>
  dcPlugRows.find((row) => [row.name, ...row.aliases].some((text) => plain(text) === plain(name)))

/**
 * The rows that a text may mean: the one that it names; else those of the standard that it names, such as "IEC 60130-10 type A", which
 * has two bores, or "RC-5320A", which has five sizes; none where it names nothing.
 */
export function dcPlugsNamed(name: string): readonly DcPlugRow[] {
  const row = dcPlugByName(name)
  if (row) return [row]
  const asked = standardName(name)
  return dcPlugRows.filter(
    ({ standard }) => standard !== null && isStandard(standardName(standard.split(',')[0] ?? ''), asked),
  )
}

/** "IEC 60130-10 type A" and "IEC 130-10 A" are one name, and so are "JEITA RC-5320A type 4" and "EIAJ 4". */
const standardName = (name: string): string =>
  plain(name)
    .replace(/TYPE|CLASS|SIZE|PLUG|CONNECTOR|STECKER|NO\.?(?=\d)/g, '')
    .replace(/^IEC(?:60)?130(?:10)?/, 'IEC6013010')
    .replace(/^IEC(?=[A-E]$)/, 'IEC6013010')
    .replace(/^(?:JEITA|EIAJ)+(?=RC)/, '')
    .replace(/^(?:JEITA|EIAJ)0?(?=[1-5]$)/, 'RC5320A')

/** A standard with its type, or the standard alone, which has several. */
const isStandard = (standard: string, asked: string): boolean =>
  standard === asked || (/^(?:IEC6013010|RC5320A?)$/.test(asked) && standard.startsWith(asked))
