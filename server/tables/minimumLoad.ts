import { fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** What a supply wants on its outputs before it holds them. */
export interface MinimumLoadRow extends Sourced {
  readonly supply: string
  readonly output: string
  /** least current over the rated one [1]; null where a share says nothing */
  readonly share: number | null
  readonly wants: string
  readonly without: string
}

const designGuide = published(
  'Design guide for supplies of desktop computers, version 2.0, tables 3, 4 and 6',
  'least current of each output',
)
const sheets = published('Technical sheets of two desktop computers of the 1990s', 'output ranges: 145 W and 250 W')
const users = published(
  'Hardware notes of the users of a home computer of the late 1970s, May 2001',
  'a tenth of the rating; 10 Ω and 3 Ω for a 4 A output',
)
const repairGuide = published(
  'Repair guide for switch-mode supplies of the 1990s, section 4.15',
  'loads for the bench; the sensed output is the one to load',
)
const restorer = published(
  'Bench notes of a restorer of minicomputers, June 2003 and July 2012',
  '4 Ω on a linear 5 V; a regulator trimmed without load gave 4.4 V in the machine',
)
const disagree = published(
  'Public notes on the diagnosis of computer supplies',
  'supplies that generally work without load, though a load is better',
)
const openFrame = fromMemory('Data sheets of open-frame supplies of 40 W to 65 W', '10 % to 20 % on the main output')

// biome-ignore format: a row a line
export const minimumLoadRows = rows<MinimumLoadRow>()(['supply', 'output', 'share', 'wants', 'without', 'sources'], [
  ['desktop computer of the 2000s, 250 W to 400 W', '+12 V', 0.07, '1 A on each of two +12 V, 0.3 A on +5 V, 0.5 A on +3.3 V', 'regulation is not promised', [designGuide]],
  ['desktop computer of the 1990s, 145 W', '+5 V', 0.083, '1.5 A of 18 A, and 20 mA on +12 V', 'its latch against over-voltage opens below 130 %, and holds until the mains is off', [sheets]],
  ['desktop computer of the 1990s, 250 W', '+5 V', 0.045, '1 A of 22 A', 'outputs may go 10 % off', [sheets]],
  ['home computer of the late 1970s', '+5 V', 0.1, 'a tenth of its rating: 10 Ω, 20 W for 4 A; for a test 3 Ω, 20 W', 'not to be turned on without a load', [users]],
  ['personal computer on the repair bench', '+5 V', null, '2 Ω or 3 Ω, 15 W; a car lamp serves, its cold filament a tenth of its hot resistance', 'some start and hold without; others shut off or raise their outputs', [repairGuide, disagree], { doubt: 'Sources disagree whether a load is needed.' }],
  ['video recorder on the repair bench', '5 V to 6 V and 12 V', null, '25 Ω, 2 W and 50 Ω, 5 W', 'outputs that nothing senses leave their range', [repairGuide]],
  ['several outputs, any maker', 'the one it regulates by', null, 'most on this one, a modest load on the others', 'it may put too high a voltage on its outputs', [repairGuide]],
  ['open-frame of the 1980s, 40 W to 65 W', 'main +5 V', 0.1, '10 % to 20 %, often 0.5 A to 1 A', '±12 V more than 10 % off', [openFrame], { doubt: 'From memory only.' }],
  ['minicomputer, linear 5 V', '+5 V', null, '4 Ω, 25 W, the mains raised in about a minute', 'nothing: it stands where it should, or its transformer stands high', [restorer]],
  ['minicomputer, switching regulator of 5 V', '+5 V', null, 'trimmed under load only', 'set without load it gave 4.4 V in the machine; turned up there its over-voltage circuit fired', [restorer]],
])

export const minimumLoadTable = table({
  name: 'minimum-load',
  title: 'Least load of supplies',
  intro:
    'What old supplies want on their outputs from the first second, and what they do without. What the unit itself says comes first.',
  rows: minimumLoadRows,
  id: ({ supply }) => [supply],
  columns: [
    { key: 'supply', title: 'Supply', unique: true },
    { key: 'output', title: 'Output' },
    { key: 'share', title: 'Least, of its rating', each: '%', from: 0, to: 1 },
    { key: 'wants', title: 'What it wants' },
    { key: 'without', title: 'Without it' },
  ],
})
