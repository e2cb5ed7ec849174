import type { DcPlugRow } from '../../../tables/dcPlugRows.js'
import { type SocketFace, socketFaces } from '../../../tables/socketFaces.js'
import { type Column, type Figure, type Said, sourcesOf, type Table, type Unit } from '../../../tables/table.js'
import { joined, type Phrase, say, type Words } from '../../../words/phrase.js'
import { prose } from '../../../words/prose.js'
import {
  amperes,
  decimal,
  duration,
  farads,
  hertz,
  percent,
  plain,
  quantity,
  quantityRange,
  seconds,
  volts,
  watts,
} from '../../../words/quantity.js'
import { plugEndDrawing } from '../../charts/plugEnd.js'
import { socketFaceDrawing } from '../../charts/socketFace.js'
import { byName, language as ours } from '../../language.js'
import { countryName } from '../../parts/countryNames.js'
import { unbroken } from '../../parts/unbroken.js'
import { type Cell, type Row, type Table as ShownTable, slug } from './pageTable.js'
import { firstText } from './search.js'

const writers: Partial<Record<Unit, (value: number, digits?: number) => Phrase>> = {
  V: volts,
  A: amperes,
  W: watts,
  Hz: hertz,
  s: seconds,
  time: duration,
  Ω: (value, digits) => quantity(value, 'Ω', digits),
  F: farads,
  '%': percent,
}

function figureText({ amount, unit, to, prefix, digits }: Figure): Phrase {
  const writer = prefix === 'none' ? undefined : writers[unit]
  const written = (one: number) =>
    writer ? writer(one, digits) : unit === '' ? decimal(one, digits) : plain(one, unit, digits)
  if (to === undefined) return written(amount)
  return prefix === 'one' ? quantityRange(amount, to, unit, digits) : say`${written(amount)} to ${written(to)}`
}

const languages = new Intl.DisplayNames([ours], { type: 'language' })

/** Row of the sockets table for a letter: the first of its forms. */
const faceOf = new Map(socketFaces.toReversed().map(({ letter, id }) => [letter, id]))

/** How one entry is shown that is more than text. */
const names: Partial<Record<NonNullable<Column<never>['as']>, (code: string) => string>> = {
  country: countryName,
  language: (code) => (code === 'any' ? 'any language' : (languages.of(code) ?? code)),
}

function text(said: Said, names?: boolean): Words {
  if (said === null || said === undefined) return ''
  if (typeof said === 'object')
    return 'amount' in said
      ? figureText(said)
      : joined(
          said.map((one) => text(one, names)),
          '',
        )
  return typeof said === 'boolean' ? (said ? 'yes' : 'no') : names ? String(said) : prose(unbroken(String(said)))
}

function cell(column: Column<object>, row: object): Cell {
  const { key, of, as, each, between = ', ', none = null, names: asWritten } = column
  if (as === 'socket-face') {
    const svg = socketFaceDrawing(row as SocketFace)
    return svg === null ? 'not drawn' : { svg, text: 'drawn on the page' }
  }
  if (as === 'plug-end') {
    const plug = row as DcPlugRow
    const { outerMm, innerMm } = plug
    return { svg: plugEndDrawing(slug(plug.name), plug), text: text([mm(outerMm), ' over ', mm(innerMm)]) }
  }
  const value: unknown = of ? of(row) : row[key as keyof object]
  if (value === null || value === undefined) return none
  if (typeof value === 'number' && !each) return value
  const entry = (one: unknown): Words => {
    if (as) return names[as]?.(String(one)) ?? String(one)
    if (typeof each === 'function') return text(each(one as never), asWritten)
    return text(each && typeof one === 'number' ? { amount: one, unit: each } : (one as Said), asWritten)
  }
  if (of || !Array.isArray(value)) return entry(value)
  if (as === 'socket')
    return value.map((letter) => ({ text: letter, href: `/reference/sockets#${faceOf.get(letter)}` }))
  return joined(value.map(entry), between)
}

const mm = (amount: number): Figure => ({ amount, unit: 'mm' })

/** A table of the data as it is shown, searched and handed out. */
export function shownTable(table: Table): ShownTable {
  const columns = table.columns.filter(({ title }) => title !== undefined)
  const rowOf = (row: object): Row => ({
    id: slug(...table.id(row)),
    lang: table.language?.(row),
    cells: columns.map((column) => cell(column, row)),
    sources: sourcesOf(row),
    doubt: (row as { doubt?: string }).doubt,
  })
  const made = () => table.rows.map(rowOf)
  return {
    name: table.name,
    title: table.title,
    intro: table.intro,
    ...(table.warning === undefined ? {} : { warning: table.warning }),
    columns: columns.map(({ title = '', unit }) => ({ title, ...(unit === undefined ? {} : { unit }) })),
    rows: table.byName ? () => made().sort((one, other) => byName(firstText(one), firstText(other))) : made,
  }
}
