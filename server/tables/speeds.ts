import { commonPractice, fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** What follows the frequency of the mains, and what is usually done about another one. */
export interface SpeedRow extends Sourced {
  readonly what: string
  /** frequency it is made for, and the one it gets [Hz] */
  readonly madeHz: number
  readonly getsHz: number
  /** its speed over its own [1] */
  readonly ratio: number
  readonly result: string
  readonly done: string
}

const arithmetic = commonPractice(
  'Speed and frequency',
  'a synchronous motor turns in proportion to the mains: 50 / 60 = 0.833, 60 / 50 = 1.2',
)
const applianceGuide = published(
  'Repair guide for appliances and clocks, in a public archive of home-computer texts',
  'section 15.4: clocks on another frequency; motors of cassette decks run on direct current',
)
const drives = published(
  'Mailing list and forum of collectors of old computers, on eight-inch drives',
  'another pulley and belt; a transformer cures the volts, not the speed',
)
const printers = published(
  'Mailing list on teleprinters, July 2018, and a log of a restored machine',
  'gears exchanged; start-stop machines bear 10 % to 20 %',
)
const capacitors = published('Forum on old radio, thread on a cassette deck', '0.6 µF for 60 Hz, 1.0 µF for 50 Hz')
const memory = fromMemory('Motors of sound and data machines', 'which of them follow the mains')

// biome-ignore format: a row a line
export const speedRows = rows<SpeedRow>()(['what', 'madeHz', 'getsHz', 'ratio', 'result', 'done', 'sources'], [
  ['synchronous motor', 60, 50, 0.8333, '16.7 % slow, 3.16 semitones flat', 'another pulley, capstan sleeve or gear of 1.2 times, and the run capacitor', [arithmetic]],
  ['synchronous motor', 50, 60, 1.2, '20 % fast, 3.16 semitones sharp', 'another pulley, or the sleeve taken off, of 0.833 times', [arithmetic]],
  ['induction motor', 60, 50, 0.8333, '15 % to 18 % slow, and a fifth more flux', 'as for a synchronous one, at five sixths of the volts', [arithmetic, memory]],
  ['clock or timer', 60, 50, 0.8333, 'loses 10 minutes an hour', 'a link or pin for 50 Hz, where its board has one; else another movement', [arithmetic, applianceGuide]],
  ['clock or timer', 50, 60, 1.2, 'gains 12 minutes an hour', 'a link or pin for 60 Hz, where its board has one; else another movement', [arithmetic, applianceGuide]],
  ['cassette or reel deck with a run capacitor', 60, 50, 0.8333, '4.76 cm/s become 3.97 cm/s', 'the 50/60 switch changes the capacitor (about 1.2 to 1.7 times), not always the pulley', [arithmetic, capacitors]],
  ['turntable of 33⅓', 60, 50, 0.8333, '27.8 revolutions a minute', 'another motor pulley; the rings of a stroboscope are for one frequency', [arithmetic]],
  ['eight-inch disk drive on the mains', 60, 50, 0.8333, '300 in place of 360 revolutions a minute: discs unreadable elsewhere', 'another motor pulley and belt', [arithmetic, drives]],
  ['large disk spindle by belt', 60, 50, 0.8333, '2000 in place of 2400 revolutions a minute: heads may not fly', 'never run before its pulley and belt are set', [arithmetic, memory]],
  ['teleprinter', 60, 50, 0.8333, '45.45 Bd become 37.9 Bd', 'another set of gears', [arithmetic, printers]],
  ['teleprinter', 50, 60, 1.2, '50 Bd become 60 Bd', 'another set of gears; start-stop machines bear 10 % to 20 % on a short clean line', [arithmetic, printers]],
  ['sound projector', 60, 50, 0.8333, '20 in place of 24 pictures a second', 'another pulley', [arithmetic]],
  ['motor with brushes, on direct current or with a servo', 60, 50, 1, 'its own speed', 'nothing', [memory, applianceGuide]],
])

export const speedsTable = table({
  name: 'speeds',
  title: 'What follows the frequency of the mains',
  intro:
    'How fast motors and clocks run on another frequency, and what is usually done. No transformer or converter changes it.',
  rows: speedRows,
  id: ({ what, madeHz }) => [what, madeHz],
  columns: [
    { key: 'what', title: 'What' },
    { key: 'madeHz', title: 'Made for', unit: 'Hz', above: 0 },
    { key: 'getsHz', title: 'Gets', unit: 'Hz', above: 0 },
    { key: 'ratio', title: 'Speed over its own', above: 0 },
    { key: 'result', title: 'Result' },
    { key: 'done', title: 'What is usually done' },
  ],
})
