import { frozen } from './frozen.js'
import type { Source } from './source.js'

/** Units that figures within a cell are written with; '%' of a share, 'time' as people say a wait ("4 h"). */
export type Unit = 'V' | 'A' | 'W' | 'VA' | 'Hz' | 's' | 'time' | 'Ω' | 'MΩ' | 'F' | 'mA' | 'mm' | 'K' | '°C' | '%' | ''

/** A figure within a cell: it becomes text where it is shown. */
export interface Figure {
  readonly amount: number
  readonly unit: Unit
  /** another end: "207 V to 253 V" */
  readonly to?: number
  /** 'one': both ends with one prefix, "50 mA to 800 mA"; 'none': "0.25 W" */
  readonly prefix?: 'one' | 'none'
  readonly digits?: number
}

type Piece = string | number | boolean | null | undefined | Figure

/** What a cell says: one piece, or pieces written one after the other. */
export type Said = Piece | readonly Piece[]

/**
 * One column of a table: what is shown of a row, and what its value may be. From it come the check at start, the page, the
 * CSV and the search. A column without a title is checked only.
 */
export interface Column<Row> {
  readonly key?: keyof Row & string
  readonly title?: string
  /** of every number in the column, told in the heading; '' for a plain number, absent where the column holds text */
  readonly unit?: string
  /** told in each cell instead; or how the value, or each of a list, is written */
  readonly each?: Unit | ((value: never) => Said)
  /** what is shown, where it is not the value under the key */
  readonly of?: (row: Row) => Said
  /** between the entries of a list; a comma if not said */
  readonly between?: string
  /** shown where the value is null; if not said the cell is empty */
  readonly none?: string
  /** how the value, or each of a list, is shown: letters of sockets with their address, codes by their names, or a drawing */
  readonly as?: 'socket' | 'country' | 'language' | 'socket-face' | 'plug-end'
  /** true: names as others write them, so that their figures stay as they are */
  readonly names?: true

  /** true: the row need not say it */
  readonly optional?: true
  /** the value, or each of a list, lies from here to there; null is let through */
  readonly from?: number
  readonly to?: number
  /** and is more than this */
  readonly above?: number
  readonly oneOf?: readonly unknown[]
  readonly pattern?: RegExp
  /** true: the list holds something */
  readonly filled?: true
  /** true: rows rise by it */
  readonly rises?: true
  /** true: no other row has it */
  readonly unique?: true
  /** the names that another table has; the value, or each of a list, is one of them */
  readonly known?: () => Iterable<unknown>
}

/** A rule over the whole row: what is wrong, and where it is. */
export interface Rule<Row> {
  readonly fault: string
  readonly broken: (row: Row) => boolean
}

/** Rows as data with their columns. */
export interface Table<Row extends object = object> {
  /** last part of the address "/reference/…" */
  readonly name: string
  readonly title: string
  readonly intro: string
  /** stands above the table, before anyone reads a row */
  readonly warning?: string
  readonly rows: readonly Row[]
  /** what names a row: its address is made of it, and no two rows have the same */
  readonly id: (row: Row) => readonly (string | number)[]
  /** the first that is shown names the row */
  readonly columns: readonly Column<Row>[]
  readonly rules?: readonly Rule<Row>[]
  /** faults of the table as a whole */
  readonly whole?: (rows: readonly Row[]) => readonly string[]
  /** true: shown in the order of the names in the language of the reader */
  readonly byName?: true
  /** of the first cell, where it is in another language than the page: a BCP 47 tag */
  readonly language?: (row: Row) => string | undefined
}

/** A table, frozen; its row type is told by its rows. */
export const table = <Row extends object>(described: Table<Row>): Table => frozen(described) as unknown as Table

type Line<Row, Keys extends readonly (keyof Row)[]> = readonly [
  ...{ [At in keyof Keys]: Row[Keys[At]] },
  rest?: Partial<Row>,
]

/**
 * Rows written as lines: the keys once, then a line a row with its values in that order, and behind them what only this row
 * has. `usual` holds for rows that do not say otherwise.
 */
export const rows =
  <Row extends object>(usual: Partial<Row> = {}) =>
  <const Keys extends readonly (keyof Row & string)[]>(keys: Keys, lines: readonly Line<Row, Keys>[]): readonly Row[] =>
    frozen(
      lines.map((line) => {
        const cells: readonly unknown[] = line
        const named = Object.fromEntries(keys.map((key, at) => [key, cells[at]]))
        return { ...usual, ...named, ...(cells[keys.length] as Partial<Row> | undefined) } as Row
      }),
    )

/** A figure with its unit, for a cell that says more than a number. */
export const figure = (amount: number, unit: Unit, more: Partial<Figure> = {}): Figure => ({ amount, unit, ...more })

/** Where a row comes from; rows name one source or several. */
export const sourcesOf = (row: object): readonly Source[] => {
  const { source, sources = source ? [source] : [] } = row as { source?: Source; sources?: readonly Source[] }
  return sources
}
