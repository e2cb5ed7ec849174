import { published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** What a variable transformer does to one kind of input. */
export interface VariableTransformerRow extends Sourced {
  readonly input: 'transformer' | 'switch-mode' | 'ferroresonant' | 'motor'
  /** where it starts, over the rated mains [1]; null where it starts at no voltage of its own */
  readonly startsFrom: number | null
  readonly startsTo: number | null
  readonly helps: string
  readonly harms: string
}

const mailingList = published(
  'Mailing list of collectors of old computers, thread on variable transformers and first power',
  'switch-mode supplies do nothing up to 85 V to 90 V of 120 V, then start at once; one with a tuned transformer jumps to full output at about 45 V',
)
const repairGuide = published(
  'Repair guide for switch-mode supplies of the 1990s, in a public archive of home-computer texts',
  'sections 4.5, 4.9 and 4.15: something comes at 50 V to 60 V of 115 V; lamp and variable transformer together are better than either; neither isolates',
)
const restorers = published(
  'Bench notes of a restorer of minicomputers, and of an applied-electronics notebook',
  '5 V to 10 V a step with the amperes watched; others 5 V to 120 V in about a minute',
)
const motors = published(
  'Repair guide for appliances, section 15.19, and an electronics shop’s notes',
  'induction motors stall and heat at reduced voltage',
)

/** Where a variable transformer helps at first power and where it harms, by what is on the mains. Start voltages that differ are a band. */
// biome-ignore format: a row a line
export const variableTransformerRows = rows<VariableTransformerRow>()(['input', 'startsFrom', 'startsTo', 'helps', 'harms', 'sources'], [
  ['transformer', null, null, 'raised by 5 V to 10 V a step from nothing with the amperes watched, it reforms slowly and shows a fault at a low voltage', 'it limits no current', [restorers, repairGuide]],
  ['switch-mode', 0.43, 0.75, 'set to the full mains behind the lamp, it tries the low and the high end of the band later', 'nothing happens up to its start, then it starts all at once and draws most at the lowest voltage', [mailingList, repairGuide], { doubt: 'Two reports: 85 V to 90 V of 120 V, and 50 V to 60 V of 115 V. Units differ.' }],
  ['ferroresonant', 0.37, 0.38, 'none: it is no soft start', 'its output jumps to the whole at about three eighths of the mains; a dummy load first', [mailingList]],
  ['motor', null, null, 'none', 'it stalls and heats at reduced voltage: it stays unplugged', [motors]],
])

export const variableTransformerTable = table({
  name: 'variable-transformer',
  title: 'A variable transformer at first power, by what is on the mains',
  intro:
    'Where it helps beside the series lamp, where it harms, and where each kind of input starts. It does not isolate.',
  rows: variableTransformerRows,
  id: ({ input }) => [input],
  columns: [
    {
      key: 'input',
      title: 'On the mains',
      unique: true,
      oneOf: ['transformer', 'switch-mode', 'ferroresonant', 'motor'],
    },
    { key: 'startsFrom', title: 'Starts from, of the mains', each: '%', from: 0, to: 1 },
    { key: 'startsTo', title: 'Starts at most at', each: '%', from: 0, to: 1 },
    { key: 'helps', title: 'Helps' },
    { key: 'harms', title: 'Harms' },
  ],
})
