import type { Phrase, Words } from '../../../words/phrase.js'
import { prose } from '../../../words/prose.js'
import { head, type PageHead } from '../../page.js'
import type { Table } from './pageTable.js'
import { groups, rowsOf } from './pageTables.js'
import { cellWords, findRows, holds, wordsOf } from './search.js'

interface Hit {
  text: Words
  href: string
}

interface Found {
  title: string
  /** the table with the same search */
  href: string
  total: number
  hits: Hit[]
}

export interface IndexView {
  page: PageHead
  search: string
  groups: { title: string; tables: { title: string; intro: Phrase; href: string; count: number }[] }[]
  /** null: nothing was searched for */
  found: { total: number; tables: Found[] } | null
}

/** Rows of one table that are named in the answer to a search; its page has them all. */
const hitsShown = 6

const address = (name: string, search = ''): string =>
  `/reference/${name}${search === '' ? '' : `?${new URLSearchParams({ q: search })}`}`

function foundIn(table: Table, search: string, words: readonly string[]): Found | null {
  const rows = findRows(rowsOf(table), table.columns, words)
  const titled = holds(table.title, words)
  if (rows.length === 0 && !titled) return null
  return {
    title: table.title,
    href: rows.length === 0 ? address(table.name) : address(table.name, search),
    total: rows.length,
    hits: rows.slice(0, hitsShown).map((row) => ({
      text: cellWords(row.cells[0] ?? null, table.columns[0]),
      href: `${address(table.name)}#${encodeURIComponent(row.id)}`,
    })),
  }
}

/** The page "/reference": every table, and with a search the rows of all of them that hold its words. */
export function indexView(search: string): IndexView {
  const words = wordsOf(search)
  const found = groups
    .flatMap(({ tables }) => tables)
    .flatMap((table) => (words.length === 0 ? [] : (foundIn(table, search, words) ?? [])))
  return {
    page: head(words.length === 0 ? 'Reference' : `“${search}” in the reference`, 'reference'),
    search,
    groups: groups.map(({ title, tables }) => ({
      title,
      tables: tables.map((table) => ({
        title: table.title,
        intro: prose(table.intro),
        href: address(table.name),
        count: rowsOf(table).length,
      })),
    })),
    found: words.length === 0 ? null : { total: found.reduce((sum, { total }) => sum + total, 0), tables: found },
  }
}
