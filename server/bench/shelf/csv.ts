import { parse } from 'csv-parse/sync'
import { stringify } from 'csv-stringify/sync'
import { neutralised, restored } from './formulaCell.js'
import { type Cells, columns } from './shelfCells.js'

/** The most rows and the longest line that are read. */
export const mostRows = 50_000
export const longestLine = 100_000

/** Every cell quoted, so that nothing in it can end it; U+FEFF first, so that spreadsheets read it as UTF-8. */
export function toCsv(rows: Cells[]): string {
  const records = rows.map((cells) => columns.map((column) => neutralised(cells[column] ?? '')))
  return stringify([[...columns], ...records], { quoted: true, bom: true, record_delimiter: '\r\n' })
}

export interface CsvRow {
  /** the line of the file on which the row ends, the first line being 1 */
  line: number
  /** only the columns that the file has */
  cells: Cells
}

/** The whole file cannot be read: `message` says why and what would be. */
export class CsvRefused extends Error {
  constructor(
    message: string,
    readonly line: number | null = null,
  ) {
    super(message)
  }
}

/** The text of an uploaded file; only UTF-8 is read, with or without a byte order mark. */
export function decoded(bytes: Uint8Array): string {
  const [first, second] = bytes
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    throw new CsvRefused('The file is in UTF-16; save it as “CSV UTF-8” and send it again.')
  if (first === 0x50 && second === 0x4b)
    throw new CsvRefused('The file is a spreadsheet or an archive; save it as “CSV UTF-8” and send it again.')
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    if (text.includes('\u0000')) throw new CsvRefused('The file holds bytes that are no text; save it as “CSV UTF-8”.')
    return text
  } catch (error) {
    if (error instanceof CsvRefused) throw error
    throw new CsvRefused('The file is not in UTF-8, so letters beyond a to z would be misread; save it as “CSV UTF-8”.')
  }
}

/** Comma, semicolon or tab: whichever the first line has most of. */
function delimiterOf(text: string): string {
  const end = text.search(/[\r\n]/)
  const first = text.slice(0, end === -1 ? 2000 : Math.min(end, 2000))
  const count = (delimiter: string): number => first.split(delimiter).length
  return [',', ';', '\t'].reduce((best, next) => (count(next) > count(best) ? next : best))
}

const refuseLongLines = (text: string): void => {
  let line = 1
  for (let start = 0; start < text.length; line += 1) {
    const found = text.indexOf('\n', start)
    const end = found === -1 ? text.length : found
    if (end - start > longestLine)
      throw new CsvRefused(`Line ${line} has ${end - start} characters; a line may have at most ${longestLine}.`, line)
    start = end + 1
  }
}

const faultWords: Record<string, string> = {
  CSV_QUOTE_NOT_CLOSED: 'a quotation mark is not closed',
  CSV_INVALID_CLOSING_QUOTE: 'a quotation mark inside a cell is not doubled',
  INVALID_OPENING_QUOTE: 'a quotation mark stands inside a cell that does not begin with one',
  CSV_RECORD_INCONSISTENT_FIELDS_LENGTH: 'the row has more or fewer cells than the first line',
  CSV_MAX_RECORD_SIZE: `the row is longer than ${longestLine} characters`,
}

function headerOf(names: string[]): string[] {
  const header = names.map((name) => {
    const wanted = name.trim().toLowerCase()
    const found = columns.find((column) => column.toLowerCase() === wanted)
    if (!found)
      throw new CsvRefused(
        `The first line names a column “${name.slice(0, 40)}” that is not known; the columns are ${columns.join(', ')}.`,
        1,
      )
    return found
  })
  for (const needed of ['kind', 'name'] as const)
    if (!header.includes(needed))
      throw new CsvRefused(
        `The first line must name the columns; “${needed}” is missing, and kind and name must be there.`,
        1,
      )
  const twice = header.find((column, index) => header.indexOf(column) !== index)
  if (twice) throw new CsvRefused(`The first line names the column “${twice}” twice.`, 1)
  return header
}

/** The rows of a file, with apostrophes before formulas taken away again. */
export function fromCsv(bytes: Uint8Array): CsvRow[] {
  const text = decoded(bytes)
  if (text.trim() === '') throw new CsvRefused('The file is empty; it must begin with a line that names the columns.')
  refuseLongLines(text)
  let records: { record: string[]; info: { lines: number } }[]
  try {
    records = parse(text, {
      delimiter: delimiterOf(text),
      info: true,
      skip_empty_lines: true,
      max_record_size: longestLine,
      to: mostRows + 2,
    }) as unknown as typeof records
  } catch (error) {
    const { code = '', lines } = error as { code?: string; lines?: number }
    throw new CsvRefused(
      `Line ${lines ?? '?'}: ${faultWords[code] ?? 'it cannot be read as CSV'}. Nothing was read.`,
      lines ?? null,
    )
  }
  const [first, ...rows] = records
  if (!first) throw new CsvRefused('The file is empty; it must begin with a line that names the columns.')
  const header = headerOf(first.record)
  if (rows.length > mostRows) throw new CsvRefused(`The file has more than the ${mostRows} rows that are read at once.`)
  return rows.map(({ record, info }) => ({
    line: info.lines,
    cells: Object.fromEntries(header.map((column, index) => [column, restored(record[index] ?? '')])),
  }))
}
