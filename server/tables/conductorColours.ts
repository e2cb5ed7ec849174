import { commonPractice, fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

export interface ColourRow extends Sourced {
  readonly region: string
  /** null where no source was found */
  readonly line: string | null
  readonly neutral: string | null
  readonly earth: string | null
  readonly since: string
}

/** To stand before every use of the table. */
export const colourProvesNothing = commonPractice(
  'Colour proves nothing',
  'old cords were made to other codes, and mended by hand: test each conductor from end to end before it is trusted',
)

const newsgroup = published(
  'electrical-contractor.net, post 133586',
  'a list of 1995, in the order line, neutral, earth',
)
const tables = published('electricalwiring0.blogspot.com (2010)', 'colour tables')
const cannagement = published('cannagement.com, wire colours', 'quoting the note in IEC 60446')
const usWire = published('uswireandcable.com, glossary', 'conductor colours')
const darshan = published('Darshan cables (darshancable.com)', 'core identification')

// biome-ignore format: a row a line
export const conductorColours = rows<ColourRow>()(['region', 'line', 'neutral', 'earth', 'since', 'sources'], [
  ['IEC, EU, UK, Ireland: flexible cord, present', 'brown', 'blue', 'green-and-yellow', 'about 1970', [tables, newsgroup, fromMemory('IEC 60446, later IEC 60445', 'about 1970')]],
  ['EU, UK: fixed wiring, present', 'brown (black, grey for other phases)', 'blue', 'green-and-yellow', 'UK: from 31 March 2004', [tables]],
  ['UK, old: flexible cord', 'red', 'black', 'green', 'until about 1970', [newsgroup, fromMemory('UK flexible cord colours', 'the date')]],
  ['UK, old: fixed wiring', 'red (yellow, blue for other phases)', 'black', 'green, later green-and-yellow', 'until 2004; plain green earth until about 1977', [tables, cannagement]],
  ['Germany, Austria, old', 'grey or black', 'black or grey', 'red', 'until about 1965 to 1970', [newsgroup, fromMemory('VDE 0100', 'black line, grey neutral, red earth')], { doubt: 'Sources and practice disagree on which of grey and black is live. Certain: RED IS EARTH.' }],
  ['Sweden, Norway, Finland, old', null, null, 'red', 'before about 1970', [newsgroup]],
  ['Belgium, old', 'red, yellow or blue', 'grey', 'black', 'before about 1970', [newsgroup]],
  ['Netherlands, old', 'any colour but grey or red', 'red', 'grey', 'before about 1970', [newsgroup]],
  ['Switzerland, old', 'red', 'grey', 'yellow, or yellow-and-red', 'before about 1970', [newsgroup]],
  ['Russia, USSR, old', 'red', 'grey', 'black', 'before about 1970', [newsgroup]],
  ['Poland, old', null, null, 'grey', 'before about 1970', [newsgroup]],
  ['USA, Canada: cord and fixed', 'black (red second)', 'white (or natural grey)', 'green (or green-and-yellow, bare in fixed wiring)', 'long standing', [tables, newsgroup, usWire]],
  ['USA, Canada: flat two-core cord', 'smooth side', 'ribbed, striped or printed side', 'none', 'long standing', [published('ja.eurek-art.com', 'on the ribbed side of a flat cord'), fromMemory('NEC 400.22', 'ridges and stripes')]],
  ['Japan', 'black (red second)', 'white', 'green, or green-and-yellow', 'long standing', [published('oketronics.net', 'post 348'), published('shiuntenlos.ie-yasu.com', 'eema0030')], { doubt: 'Colours of loose cord are not tightly regulated there; many two-core cords have one colour for both.' }],
  ['Australia, New Zealand: flexible cord, present', 'brown', 'light blue', 'green-and-yellow', 'AS/NZS 3000:2007, 3.8.1', [tables]],
  ['Australia, South Africa: fixed wiring', 'red', 'black', 'green-and-yellow (green earlier, or bare)', 'Australia: insulated earth since about 1980', [tables]],
  ['Australia, old: flexible cord', 'red', 'black', 'green', 'before about 1980', [fromMemory('AS 3191', 'core colours')], { doubt: 'From memory only.' }],
  ["India, old (one maker's practice)", 'red', 'black', 'green', "still printed in a maker's table", [darshan]],
  ['China', 'red, with black as its pair; yellow, green, red by phase', 'light blue', 'yellow-and-green', 'unclear', [published('armoured-cable.net', 'conductor colours')], { doubt: 'The translation is unclear.' }],
  ['International note', 'any, not green-and-yellow', 'blue; white or natural grey allowed in the USA, Canada, Japan', 'green-and-yellow; green allowed in the USA, Canada, Japan', 'IEC 60446', [cannagement]],
])

export const conductorColoursTable = table<(typeof conductorColours)[number]>({
  name: 'conductor-colours',
  title: 'Conductor colours, old and new',
  intro:
    'Which colour stood for which conductor, by region and time. It helps to understand what one finds; it is no leave to connect anything. Mains wiring is for a licensed electrician or other qualified person.',
  warning: `${colourProvesNothing.title}: ${colourProvesNothing.detail}.`,
  rows: conductorColours,
  id: ({ region }) => [region],
  columns: [
    { key: 'region', title: 'Region and use' },
    { key: 'line', title: 'Line' },
    { key: 'neutral', title: 'Neutral' },
    { key: 'earth', title: 'Earth' },
    { key: 'since', title: 'Since' },
  ],
  rules: [
    {
      fault: 'says nothing',
      broken: ({ line, neutral, earth }) => line === null && neutral === null && earth === null,
    },
  ],
})
