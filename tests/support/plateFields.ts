import type { LabelRail, LabelReading } from '../../server/plate/labelReading.js'
import { readPlate } from '../../server/plate/readPlate.js'
import type { Plate } from '../plate/plates.js'

interface Field {
  text: string
  name: string
  expected: string | null
  read: string | null
}

/** Parts of the short form by what they name: kind, windows, "50Hz", "0.1A", "10VA", "8W". */
function inputParts(short: string | undefined): Record<string, string | null> {
  const [kind, ...rest] = short?.split(' ') ?? []
  const pick = (unit: RegExp): string | null => rest.filter((part) => unit.test(part)).join(' ') || null
  return {
    'input kind': kind === undefined || kind === '?' ? null : kind,
    'input voltage': pick(/\d$/),
    frequency: pick(/Hz$/),
    'input current': pick(/\dA$/),
    'input VA': pick(/VA$/),
    'input W': pick(/W$/),
  }
}

function readInput({ input }: LabelReading): Record<string, string | null> {
  const figure = (value: number | null | undefined, unit: string): string | null =>
    value == null ? null : `${value}${unit}`
  return {
    'input kind': input?.kind ?? null,
    'input voltage':
      input?.voltages.map(({ min, max }) => (min === max ? `${min}` : `${min}..${max}`)).join(' ') || null,
    frequency: input && input.frequenciesHz.length > 0 ? `${input.frequenciesHz.join('/')}Hz` : null,
    'input current': figure(input?.currentA, 'A'),
    'input VA': figure(input?.powerVA, 'VA'),
    'input W': figure(input?.powerW, 'W'),
  }
}

const shortRail = ({ kind, voltageV, voltageMaxV, currentA, powerVA, powerW }: LabelRail): string =>
  [
    voltageMaxV === null ? `${voltageV}` : `${voltageV}..${voltageMaxV}`,
    kind ?? '?',
    ...(currentA === null ? [] : [`${currentA}A`]),
    ...(powerVA === null ? [] : [`${powerVA}VA`]),
    ...(powerW === null ? [] : [`${powerW}W`]),
  ].join(' ')

function fields({ text, of, ...expected }: Plate): Field[] {
  const reading = readPlate(text, of)
  const out: Field[] = []
  const field = (name: string, wanted: string | null | undefined, read: string | null): void => {
    out.push({ text, name, expected: wanted ?? null, read })
  }
  const read = readInput(reading)
  for (const [name, wanted] of Object.entries(inputParts(expected.in))) field(name, wanted, read[name] ?? null)
  for (const [name, list, short] of [
    ['output', reading.outputs, expected.out],
    ['taken', reading.takes, expected.takes],
  ] as const) {
    const wanted = short?.split('; ') ?? []
    const read = list.map(shortRail)
    for (let at = 0; at < Math.max(wanted.length, read.length); at += 1)
      field(`${name} ${at + 1}`, wanted[at], read[at] ?? null)
  }
  const sign = reading.polarity === null ? null : reading.polarity === 'centre-positive' ? '+' : '-'
  field('polarity', expected.polarity, sign)
  field('class', expected.class, reading.protectionClass)
  field('fuse', expected.fuse, reading.fuse)
  field('total', expected.totalW?.toString(), reading.outputsTotalW?.toString() ?? null)
  return out
}

/** A rail of which less is read than stands there is not misread: the same volts and nothing that contradicts. */
function saysLess(read: string, expected: string): boolean {
  const [volts, kind, ...figures] = read.split(' ')
  const [expectedVolts, expectedKind, ...expectedFigures] = expected.split(' ')
  return (
    volts === expectedVolts &&
    (kind === '?' || kind === expectedKind) &&
    figures.every((figure) => expectedFigures.includes(figure))
  )
}

const isRail = (name: string): boolean => name.startsWith('output') || name.startsWith('taken')

const isMisread = ({ name, expected, read }: Field): boolean =>
  read !== null && read !== expected && !(isRail(name) && expected !== null && saysLess(read, expected))

export interface PlateCounts {
  plates: number
  fields: number
  /** shares of all fields [1] */
  rightShare: number
  misreadShare: number
  /** each field that differs, one a line */
  summary: string
}

/** Reads every plate and compares it, field by field, with what a person reads on it. Fields that neither has do not count. */
export function countFields(plates: readonly Plate[]): PlateCounts {
  const all = plates.flatMap(fields).filter(({ expected, read }) => expected !== null || read !== null)
  const wrong = all.filter(({ expected, read }) => expected !== read)
  const misread = wrong.filter(isMisread)
  const percent = (count: number): string => `${((100 * count) / all.length).toFixed(2)} %`
  const lines = wrong.map(
    (one) =>
      `\n  ${isMisread(one) ? 'MISREAD' : 'not read'} ${JSON.stringify(one.text)}, ${one.name}: ${one.expected} read as ${one.read}`,
  )
  return {
    plates: plates.length,
    fields: all.length,
    rightShare: (all.length - wrong.length) / all.length,
    misreadShare: misread.length / all.length,
    summary: `${plates.length} plates, ${all.length} fields: ${percent(all.length - wrong.length)} right, ${percent(misread.length)} misread, ${percent(wrong.length - misread.length)} not read${lines.join('')}`,
  }
}
