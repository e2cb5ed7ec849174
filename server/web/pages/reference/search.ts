import type { Source } from '../../../tables/source.js'
import { joined, Phrase, say, type Words } from '../../../words/phrase.js'
import { decimal } from '../../../words/quantity.js'
import { tell } from '../../../words/tell.js'
import type { Cell, Column, Row } from './pageTable.js'

/** What a cell says. */
export function cellWords(cell: Cell, column: Column | undefined): Words {
  if (cell === null) return ''
  if (typeof cell === 'string' || cell instanceof Phrase) return cell
  if (typeof cell === 'number') return column?.unit ? say`${decimal(cell, 6)}\u00a0${column.unit}` : decimal(cell, 6)
  return 'svg' in cell ? cell.text : joined(cell.map(({ text }) => text))
}

/** The same as text, with a decimal point. */
export const cellText = (cell: Cell, column: Column | undefined): string => tell(say`${cellWords(cell, column)}`)

/** What names a row. */
export const firstText = ({ cells }: Row): string => cellText(cells[0] ?? null, undefined)

export const sourceText = ({ title, detail, kind }: Source): string => `${title}, ${detail} (${kind})`

/** Without regard to case, accents, decimal sign, kinds of space and kinds of minus. */
const folded = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/(\d),(?=\d)/g, '$1.')
    .replace(/−/g, '-')
    .replace(/×/g, 'x')
    .replace(/\s+/g, ' ')
    .toLowerCase()

/** The words of a search; a text is found that holds every one of them. */
export const wordsOf = (search: string): string[] =>
  folded(search)
    .split(' ')
    .filter((word) => word !== '')

export const holds = (text: string, words: readonly string[]): boolean =>
  words.every((word) => folded(text).includes(word))

/**
 * The rows that hold every word in their cells (with units) or doubt: first those that are named so, then those that say
 * so, within one kind in the order of the table. Where no row says it, those whose sources do.
 */
export function findRows(rows: readonly Row[], columns: readonly Column[], words: readonly string[]): Row[] {
  const ranked = rows.flatMap((row) => {
    const [name = '', ...rest] = row.cells.map((cell, index) => cellText(cell, columns[index]))
    const told = [name, ...rest, row.doubt ?? ''].join('\n')
    if (!holds([told, ...row.sources.map(sourceText)].join('\n'), words)) return []
    const rank = folded(name) === words.join(' ') ? 0 : holds(name, words) ? 1 : holds(told, words) ? 2 : 3
    return { row, rank }
  })
  const saying = ranked.filter(({ rank }) => rank < 3)
  return (saying.length > 0 ? saying : ranked).sort((one, other) => one.rank - other.rank).map(({ row }) => row)
}
