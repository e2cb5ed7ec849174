import type { Source } from '../../../tables/source.js'
import type { Phrase, Words } from '../../../words/phrase.js'

/** Text with an address of its own in the reference. */
export interface Link {
  text: Words
  href: string
}

/** What stands in one cell: text, a number in the column's unit, nothing known (null), several texts with addresses, or a drawing. */
export type Cell = Words | number | null | readonly Link[] | { svg: Phrase; text: Words }

export interface Column {
  title: string
  /** of every number in the column; '' for a plain number, absent where the column holds text */
  unit?: string
}

/** One row, linkable by its id: it is made of what names the row, so it stays when others come and go. */
export interface Row {
  id: string
  /** of the first cell, where it is in another language than the page: a BCP 47 tag */
  lang?: string | undefined
  /** one a column; the first names the row */
  cells: readonly Cell[]
  sources: readonly Source[]
  doubt?: string | undefined
}

/** A table the program decides from, as it is shown, searched and handed out. */
export interface Table {
  /** last part of the address "/reference/…" */
  name: string
  title: string
  intro: string
  /** stands above the table, before anyone reads a row */
  warning?: string
  columns: readonly Column[]
  rows: () => readonly Row[]
}

/** A name for an address from any text: "CEE 7/16" is "cee-7-16". Letters of every script are kept. */
export const slug = (...parts: (string | number)[]): string =>
  parts
    .join(' ')
    .replace(/(\d)[.,](?=\d)/g, '$1p')
    .replace(/−(?=\d)/g, ' minus ')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
