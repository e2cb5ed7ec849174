import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'

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

export const conductorColours: readonly ColourRow[] = frozen([
  {
    region: 'IEC, EU, UK, Ireland: flexible cord, present',
    line: 'brown',
    neutral: 'blue',
    earth: 'green-and-yellow',
    since: 'about 1970',
    sources: [tables, newsgroup, fromMemory('IEC 60446, later IEC 60445', 'about 1970')],
  },
  {
    region: 'EU, UK: fixed wiring, present',
    line: 'brown (black, grey for other phases)',
    neutral: 'blue',
    earth: 'green-and-yellow',
    since: 'UK: from 31 March 2004',
    sources: [tables],
  },
  {
    region: 'UK, old: flexible cord',
    line: 'red',
    neutral: 'black',
    earth: 'green',
    since: 'until about 1970',
    sources: [newsgroup, fromMemory('UK flexible cord colours', 'the date')],
  },
  {
    region: 'UK, old: fixed wiring',
    line: 'red (yellow, blue for other phases)',
    neutral: 'black',
    earth: 'green, later green-and-yellow',
    since: 'until 2004; plain green earth until about 1977',
    sources: [tables, cannagement],
  },
  {
    region: 'Germany, Austria, old',
    line: 'grey or black',
    neutral: 'black or grey',
    earth: 'red',
    since: 'until about 1965 to 1970',
    doubt: 'Sources and practice disagree on which of grey and black is live. Certain: RED IS EARTH.',
    sources: [newsgroup, fromMemory('VDE 0100', 'black line, grey neutral, red earth')],
  },
  {
    region: 'Sweden, Norway, Finland, old',
    line: null,
    neutral: null,
    earth: 'red',
    since: 'before about 1970',
    sources: [newsgroup],
  },
  {
    region: 'Belgium, old',
    line: 'red, yellow or blue',
    neutral: 'grey',
    earth: 'black',
    since: 'before about 1970',
    sources: [newsgroup],
  },
  {
    region: 'Netherlands, old',
    line: 'any colour but grey or red',
    neutral: 'red',
    earth: 'grey',
    since: 'before about 1970',
    sources: [newsgroup],
  },
  {
    region: 'Switzerland, old',
    line: 'red',
    neutral: 'grey',
    earth: 'yellow, or yellow-and-red',
    since: 'before about 1970',
    sources: [newsgroup],
  },
  {
    region: 'Russia, USSR, old',
    line: 'red',
    neutral: 'grey',
    earth: 'black',
    since: 'before about 1970',
    sources: [newsgroup],
  },
  {
    region: 'Poland, old',
    line: null,
    neutral: null,
    earth: 'grey',
    since: 'before about 1970',
    sources: [newsgroup],
  },
  {
    region: 'USA, Canada: cord and fixed',
    line: 'black (red second)',
    neutral: 'white (or natural grey)',
    earth: 'green (or green-and-yellow, bare in fixed wiring)',
    since: 'long standing',
    sources: [tables, newsgroup, usWire],
  },
  {
    region: 'USA, Canada: flat two-core cord',
    line: 'smooth side',
    neutral: 'ribbed, striped or printed side',
    earth: 'none',
    since: 'long standing',
    sources: [
      published('ja.eurek-art.com', 'on the ribbed side of a flat cord'),
      fromMemory('NEC 400.22', 'ridges and stripes'),
    ],
  },
  {
    region: 'Japan',
    line: 'black (red second)',
    neutral: 'white',
    earth: 'green, or green-and-yellow',
    since: 'long standing',
    doubt: 'Colours of loose cord are not tightly regulated there; many two-core cords have one colour for both.',
    sources: [published('oketronics.net', 'post 348'), published('shiuntenlos.ie-yasu.com', 'eema0030')],
  },
  {
    region: 'Australia, New Zealand: flexible cord, present',
    line: 'brown',
    neutral: 'light blue',
    earth: 'green-and-yellow',
    since: 'AS/NZS 3000:2007, 3.8.1',
    sources: [tables],
  },
  {
    region: 'Australia, South Africa: fixed wiring',
    line: 'red',
    neutral: 'black',
    earth: 'green-and-yellow (green earlier, or bare)',
    since: 'Australia: insulated earth since about 1980',
    sources: [tables],
  },
  {
    region: 'Australia, old: flexible cord',
    line: 'red',
    neutral: 'black',
    earth: 'green',
    since: 'before about 1980',
    doubt: 'From memory only.',
    sources: [fromMemory('AS 3191', 'core colours')],
  },
  {
    region: "India, old (one maker's practice)",
    line: 'red',
    neutral: 'black',
    earth: 'green',
    since: "still printed in a maker's table",
    sources: [darshan],
  },
  {
    region: 'China',
    line: 'red, with black as its pair; yellow, green, red by phase',
    neutral: 'light blue',
    earth: 'yellow-and-green',
    since: 'unclear',
    doubt: 'The translation is unclear.',
    sources: [published('armoured-cable.net', 'conductor colours')],
  },
  {
    region: 'International note',
    line: 'any, not green-and-yellow',
    neutral: 'blue; white or natural grey allowed in the USA, Canada, Japan',
    earth: 'green-and-yellow; green allowed in the USA, Canada, Japan',
    since: 'IEC 60446',
    sources: [cannagement],
  },
])
