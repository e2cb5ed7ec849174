import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import type { LabelReading } from '../../server/plate/labelReading.js'
import { readPlate } from '../../server/plate/readPlate.js'

/** Plate texts with what a person reads on them; the source of each text stands in its row. */
interface Row {
  id: string
  text: string
  input_v_min: string
  input_v_max: string
  input_alternatives: string
  input_hz: string
  input_a: string
  input_va_or_w: string
  outputs: string
  polarity: string
  class_ii: string
}

/** Line ends are written as escapes in the list. */
const printed = (text: string): string => text.replaceAll('\\n', '\n')

/** One fact of a row: as annotated, as read; `null` on both sides where there is none. */
interface Field {
  row: string
  name: string
  expected: string | null
  read: string | null
}

const numbers = (text: string): number[] => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number)

/** "3|1.5" is two currents, the reading keeps the largest; "18-26 VA" likewise. */
const largest = (text: string): string | null => (text === '' ? null : String(Math.max(...numbers(text))))

/** "0.5 A" and its like, in the order a reading has them. */
function expectedOutputs(text: string): string[] {
  if (text === '') return []
  return text.split(';').map((part) => {
    const [, volts, kind, figure, unit] =
      /^(-?[\d.]+(?:-[\d.]+)?) V (\w+)(?: ([\d.]+) (A|W|VA))?$/.exec(part.trim()) ?? []
    if (volts === undefined) throw new Error(`an output that cannot be compared: "${part}"`)
    return `${volts} V ${kind}${figure === undefined ? '' : ` ${Number(figure)} ${unit}`}`
  })
}

function readOutputs({ outputs }: LabelReading, expected: string[]): string[] {
  return outputs.map(({ kind, voltageV, voltageMaxV, currentA, powerW, powerVA }, index) => {
    const volts = voltageMaxV === null ? `${voltageV}` : `${voltageV}-${voltageMaxV}`
    // power is annotated only where no current is printed
    const unit = / (W|VA)$/.exec(expected[index] ?? '')?.[1]
    const figure = unit === 'W' ? powerW : unit === 'VA' ? powerVA : currentA
    return `${volts} V ${kind ?? 'unstated'}${figure === null ? '' : ` ${figure} ${unit ?? 'A'}`}`
  })
}

const polarities: Record<string, string | null> = {
  'none stated': null,
  'centre-positive': 'centre-positive',
  'centre-negative': 'centre-negative',
}

/** Each row gives the same seven kinds of fact, outputs one by one. */
function fields(row: Row): Field[] {
  const reading = readPlate(printed(row.text))
  const { input } = reading
  const field = (name: string, expected: string | null, read: string | null): Field => ({
    row: row.id,
    name,
    expected,
    read,
  })
  const windows =
    row.input_alternatives !== ''
      ? row.input_alternatives.split('|').map((part) => numbers(part.replace('-', ' ')))
      : row.input_v_min !== ''
        ? [[Number(row.input_v_min), Number(row.input_v_max)]]
        : []
  const expectedWindows = windows.map((ends) => `${ends[0]}..${ends[ends.length - 1]}`).join(' ') || null
  const power = row.input_va_or_w
  const isVA = power.endsWith('VA')
  const expected = expectedOutputs(row.outputs)
  const outputs = readOutputs(reading, expected)
  const readPower = isVA ? input?.powerVA : power === '' ? (input?.powerVA ?? input?.powerW) : input?.powerW
  const classII: Record<string, string> = { yes: 'II', no: 'I' }
  return [
    field('input voltage', expectedWindows, input?.voltages.map(({ min, max }) => `${min}..${max}`).join(' ') || null),
    field('frequency', numbers(row.input_hz).join(' ') || null, input?.frequenciesHz.join(' ') || null),
    field('input current', largest(row.input_a), input?.currentA?.toString() ?? null),
    field('input power', largest(power), readPower?.toString() ?? null),
    ...Array.from({ length: Math.max(expected.length, outputs.length, 1) }, (_, index) =>
      field(`output ${index + 1}`, expected[index] ?? null, outputs[index] ?? null),
    ),
    field('polarity', polarities[row.polarity] ?? null, reading.polarity),
    field('class', classII[row.class_ii] ?? null, reading.protectionClass),
  ]
}

/** A rail of which less is read than stands there is not misread: the same volts, nothing that contradicts. */
function saysLess(read: string, expected: string): boolean {
  const [volts, , kind, ...figure] = read.split(' ')
  const [expectedVolts, , expectedKind, ...expectedFigure] = expected.split(' ')
  const kindAgrees = kind === expectedKind || kind === 'unstated'
  return volts === expectedVolts && kindAgrees && (figure.length === 0 || figure.join() === expectedFigure.join())
}

const isMisread = ({ name, expected, read }: Field): boolean =>
  read !== null && read !== expected && !(name.startsWith('output') && expected !== null && saysLess(read, expected))

const describeField = ({ row, name, expected, read }: Field): string =>
  `row ${row}, ${name}: ${expected} read as ${read}`

/** What became of a list of plates: shares of all its fields [1], and each field that differs, one a line. */
export interface Comparison {
  plates: number
  rightShare: number
  misreadShare: number
  summary: string
}

/**
 * Reads every plate of a list and compares it, field by field, with what a person read on it.
 *
 * @param list  CSV with the columns of `Row`
 */
export function comparePlates(list: URL): Comparison {
  const rows: Row[] = parse(readFileSync(list, 'utf8'), { columns: true })
  const all = rows.flatMap(fields)
  const wrong = all.filter(({ expected, read }) => expected !== read)
  const rightShare = (all.length - wrong.length) / all.length
  const misreadShare = wrong.filter(isMisread).length / all.length
  const summary =
    `${rows.length} plates, ${all.length} fields: ${(100 * rightShare).toFixed(2)} % right, ${(100 * misreadShare).toFixed(2)} % misread` +
    wrong.map((field) => `\n  ${isMisread(field) ? 'MISREAD' : 'not read'} ${describeField(field)}`).join('')
  return { plates: rows.length, rightShare, misreadShare, summary }
}
