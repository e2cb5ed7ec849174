import { type Column, type Rule, sourcesOf, type Table } from './table.js'

/** Those that stand more than once. */
const repeated = (keys: readonly unknown[]): unknown[] => [
  ...new Set(keys.filter((key, index) => keys.indexOf(key) !== index)),
]

/** A fault where a number is not more than the one before it. */
export const notRising = (values: readonly number[]): string[] =>
  values.every((value, index) => index === 0 || value > (values[index - 1] ?? value)) ? [] : ['rows do not rise']

/** A fault where a range begins before the one above it has ended. */
export const overlapping = (ranges: readonly (readonly [from: number, to: number])[]): string[] =>
  ranges.every(([from], index) => index === 0 || from > (ranges[index - 1]?.[1] ?? from)) ? [] : ['rows overlap']

const bare = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9.]/g, '')

/** Names that two rows have, without regard to case and signs. */
export const namedTwice = <Row>(rows: readonly Row[], namesOf: (row: Row) => readonly string[]): string[] =>
  repeated(rows.flatMap((row) => [...new Set(namesOf(row).map(bare))])).map((name) => `${name} stands in two rows`)

/** What is wrong with the value a row has in a column. */
function cellFaults(column: Column<object>, row: object): string[] {
  const { key, from, to, above, oneOf, pattern, filled, known, optional } = column
  if (key === undefined) return []
  const value: unknown = row[key as keyof object]
  if (value === undefined) return optional ? [] : [`has no ${key}`]
  if (value === null) return []
  const entries: unknown[] = Array.isArray(value) ? value : [value]
  const names = known && new Set(known())
  const wrong = (one: unknown): string | false =>
    (typeof one === 'number' &&
      (Number.isNaN(one) ||
        (from !== undefined && !(one >= from)) ||
        (to !== undefined && !(one <= to)) ||
        (above !== undefined && !(one > above))) &&
      `${key} is out of range: ${one}`) ||
    (one === '' && !optional && `${key} is empty`) ||
    (oneOf !== undefined && !oneOf.includes(one) && `${key} is none of ${oneOf.join(', ')}: ${one}`) ||
    (pattern !== undefined && !pattern.test(String(one)) && `${key} is not written as it should be: ${one}`) ||
    (names !== undefined && !names.has(one) && `${key} names ${one}, which no table has`)
  return [
    ...entries.flatMap((one) => wrong(one) || []),
    ...(filled && entries.length === 0 ? [`${key} is empty`] : []),
    ...repeated(entries.map((one) => JSON.stringify(one))).map((one) => `${key} has ${one} twice`),
  ]
}

/** What is wrong in a column as a whole. */
function columnFaults({ key, rises, unique }: Column<object>, rows: readonly object[]): string[] {
  if (key === undefined) return []
  const values = rows.map((row) => row[key as keyof object] as unknown)
  return [
    ...(rises ? notRising(values.filter((value) => typeof value === 'number')) : []),
    ...(unique ? repeated(values).map((value) => `${key} ${value} stands twice`) : []),
  ]
}

const broken = (rules: readonly Rule<object>[], row: object): string[] =>
  rules.flatMap(({ fault, broken }) => (broken(row) ? [fault] : []))

/**
 * What is wrong in a table, by its own columns and rules; empty when nothing is. Every row has its sources and a name of
 * its own, every value lies within the bounds of its column, and every name of another table is found there.
 */
export function faultsOf({ name, rows, id, columns, rules = [], whole }: Table): string[] {
  const named = (row: object): string => id(row).join(' ')
  const inRows = rows.flatMap((row) =>
    [
      ...(sourcesOf(row).length === 0 ? ['has no source'] : []),
      ...((row as { doubt?: string }).doubt === '' ? ['has an empty doubt'] : []),
      ...columns.flatMap((column) => cellFaults(column, row)),
      ...broken(rules, row),
    ].map((fault) => `${name}, ${named(row)}: ${fault}`),
  )
  const ofTable = [
    ...(rows.length === 0 ? ['has no rows'] : []),
    ...repeated(rows.map(named)).map((key) => `${key} stands twice`),
    ...columns.flatMap((column) => columnFaults(column, rows)),
    ...(whole?.(rows) ?? []),
  ]
  return [...ofTable.map((fault) => `${name}: ${fault}`), ...inRows]
}
