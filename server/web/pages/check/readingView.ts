import { confirmationOf, isConfirmed } from '../../../chain/case/confirmation.js'
import { type Box, boxes } from '../../../facts/boxes.js'
import { polarityText } from '../../../facts/plug.js'
import { says } from '../../../facts/says.js'
import type { LabelInput, LabelRail, LabelReading } from '../../../plate/labelReading.js'
import { joined, type Phrase, say, type Words } from '../../../words/phrase.js'
import { amperes, hertz, voltAmperes, volts, watts } from '../../../words/quantity.js'

export interface Line {
  label: string
  value: Words
}

/** What was made of a plate's words, for the page. */
export interface ReadingView {
  lines: Line[]
  /** every piece that found no place */
  unread: string[]
  /** what damaged or doubtful words may say, each with the keys that confirm it; none of it decides before */
  doubts: { was: string; reads: string; keys: string; confirmed: boolean }[]
  /** words were given, but nothing in them was understood */
  nothing: boolean
}

/** What there is of some words, with commas between. */
const parts = (all: readonly Words[]): Phrase =>
  joined(
    all.filter((one) => one !== ''),
    ', ',
  )

const kindWords = { dc: 'DC', ac: 'AC' } as const

const inputVoltages = ({ voltages }: LabelInput): Phrase =>
  joined(
    voltages.map(({ min, max }) => (min === max ? volts(min) : say`${volts(min)} to ${volts(max)}`)),
    ' or ',
  )

const frequencies = ({ frequenciesHz }: LabelInput): Phrase =>
  joined(
    frequenciesHz.map((value) => hertz(value)),
    ' or ',
  )

const railVoltage = ({ voltageV, voltageMaxV }: LabelRail): Phrase =>
  voltageMaxV === null ? volts(voltageV) : say`${volts(voltageV)} to ${volts(voltageMaxV)}`

const railWords = (rail: LabelRail): Phrase =>
  parts([
    railVoltage(rail),
    rail.kind === null ? '(AC or DC not printed)' : kindWords[rail.kind],
    rail.currentA === null ? '' : amperes(rail.currentA),
    rail.powerVA === null ? '' : voltAmperes(rail.powerVA),
    rail.powerW === null ? '' : watts(rail.powerW),
  ])

const inputWords = (input: LabelInput): Phrase =>
  parts([
    input.voltages.length === 0 ? '' : inputVoltages(input),
    input.kind === null ? '' : kindWords[input.kind],
    input.frequenciesHz.length === 0 ? '' : frequencies(input),
    input.currentA === null ? '' : amperes(input.currentA),
    input.powerVA === null ? '' : voltAmperes(input.powerVA),
    input.powerW === null ? '' : watts(input.powerW),
  ])

/** The reading as lines to show; `null` where no words were given. */
export function readingView(
  reading: LabelReading | null,
  of: 'supply' | 'device' = 'supply',
  confirmed: readonly string[] = [],
): ReadingView | null {
  if (reading === null) return null
  const { input, outputs, takes, protectionClass, fuse, unread } = reading
  const lines: Line[] = [
    { label: 'Input', value: input ? inputWords(input) : '' },
    ...outputs.map((rail, index) => ({
      label: outputs.length > 1 ? `Output ${index + 1}` : 'Output',
      value: railWords(rail),
    })),
    { label: 'All outputs', value: reading.outputsTotalW == null ? '' : watts(reading.outputsTotalW) },
    ...takes.map((rail, index) => ({
      label: takes.length > 1 ? `Takes ${index + 1}` : 'Takes',
      value: railWords(rail),
    })),
    { label: 'Polarity', value: reading.polarity ? polarityText(reading.polarity) : '' },
    { label: 'Protection', value: protectionClass ? `class ${protectionClass}` : '' },
    { label: 'Fuse', value: fuse ?? '' },
  ].filter(({ value }) => value !== '')
  return {
    lines,
    unread,
    doubts: doubts(reading, of, confirmed),
    nothing: lines.length === 0,
  }
}

/** One line for each piece of the plate that gave doubtful figures. */
function doubts(reading: LabelReading, of: 'supply' | 'device', confirmed: readonly string[]): ReadingView['doubts'] {
  const { from, unsure, proposals } = reading
  const doubted = from.filter(({ field }) => unsure.includes(field))
  return [...new Set(doubted.map(({ words }) => words))].map((words) => {
    const fields = doubted.filter((one) => one.words === words).map(({ field }) => field)
    const proposal = proposals.find(({ was }) => was === words || was.endsWith(words))
    return {
      was: proposal?.was ?? words,
      reads: proposal?.reads ?? words,
      keys: fields.map((field) => confirmationOf(reading, of, field)).join(' '),
      confirmed: fields.every((field) => isConfirmed(confirmed, reading, of, field)),
    }
  })
}

/** What the plates say, by the name of the box that could correct it. */
export function plateValues(supply: LabelReading | null, machine: LabelReading | null): Record<string, Words> {
  const read: Record<string, Words> = Object.create(null)
  for (const box of boxes) {
    const plate = box.key.startsWith('supply.') ? supply : machine
    const text = plate && printedIn(box, plate)
    if (text) read[box.name] = withEvidence(text, box, plate)
  }
  return read
}

/** What a box's figure is called in a reading: "outputs.0.voltageV" of "supply.outputs.voltageV" in the first row. */
function fieldOf({ key, row }: Box): string {
  const [, ...path] = key.split('.')
  const [list, ...rest] = path
  if (row !== null) return [list === 'inputs' ? 'takes' : list, row - 1, ...rest].join('.')
  return path.at(-1) === 'polarity' ? 'polarity' : path.join('.')
}

/** A figure with the words of the plate that say it, where those are not the figure itself. */
function withEvidence(text: Words, box: Box, { from }: LabelReading): Words {
  const words = from.find(({ field }) => field === fieldOf(box))?.words
  return words === undefined ? text : say`${text}, from “${words}”`
}

function printedIn({ fact, list, row }: Box, plate: LabelReading): Words {
  const of = list && row !== null ? list.printed(plate)[row - 1] : undefined
  if (of && fact.printedText) return fact.printedText(of)
  const value = of ? fact.printedRow?.(of) : fact.printed?.(plate)
  return value == null ? '' : joined(says(fact, value), ' or ')
}

/** The boxes a plate may fill, each with its "Plate: …" line on the page. */
export const plateFields: readonly Box[] = boxes.filter(({ fact }) => fact.printed ?? fact.printedRow)
