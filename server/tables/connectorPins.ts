import { fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** How the contacts of a connector are numbered, and what was found on them: two machines of one shell differ. */
export interface ConnectorPinsRow extends Sourced {
  readonly connector: string
  readonly contacts: string
  readonly numbering: string
  readonly caution: string
}

const notes = published(
  'Public hardware notes on DIN connectors, after a connector maker’s catalogue',
  'numbering, mating of one count in another, supplies of small computers',
)
const pinLists = published('Public list of pinouts, three-pole XLR', 'audio, talkback and lighting')
const measured = published('Note of someone who measured a charger with this connector', '63 V at up to 3 A')
const manuals = published(
  'Manuals of a broadcast monitor and of stage lighting',
  'pages 6 and 8: the table of contacts',
)
const rack = published('Overview of rack connectors by a distributor', 'lengths, amperes and rows')
const memory = fromMemory('Makers’ sheets of connectors', 'numbering and usual use')

/** A standard gives the numbers, never the meaning, unless the row says so. */
// biome-ignore format: a row a line
export const connectorPinsRows = rows<ConnectorPinsRow>()(['connector', 'contacts', 'numbering', 'caution', 'sources'], [
  ['DIN circular, by place', '3, 5 at 180°, 7, 8', 'into the socket, groove up: 3 left, 5, 2 bottom, 4, 1 right; one place has one number', 'the plug, and the solder side of the socket, are its mirror', [notes]],
  ['DIN circular, round the ring', '4, 5 at 240°, 6', 'into the socket: 5 and 1 at the top, of six the last in the centre', 'another scheme than by place: number 4 is elsewhere', [notes]],
  ['DIN circular of eight', '8 at 268° and 270°', 'two arcs nearly alike', 'they nearly mate: a forced plug bends 2 or 8', [notes]],
  ['DIN circular, fewer in more', '3 in 5, 5 in 7 or 8', 'usually goes in', 'a signal plug may land on contacts of the supply', [notes]],
  ['DIN of seven on two small computers', '7', 'one has +15 V on 1 and 4; the other +5 V on 1 and 6, +12 V on 4, −12 V on 5', 'one shell: +15 V meets +5 V, and −12 V meets ground', [notes]],
  ['DIN of five for pictures', '5', 'contact 1 may carry +5 V or +12 V', 'it looks like a plug for signals: contact 1 is measured first', [notes]],
  ['Flat-sided power DIN', '4', 'asymmetric, the flat side shows the way', 'outer pairs are often plus and plus, minus and minus; makers differ', [memory]],
  ['Mini-DIN', '3 to 9', 'into the plug: left to right, bottom row to top', 'made for 1 A; 63 V were found on one of two contacts, above what may be touched', [notes, measured]],
  ['XLR of three', '3', 'the numbers are moulded beside the contacts; 1 makes first', 'audio: 1 screen, 2 and 3 signal; talkback has +24 V, lighting +15 V on 2, a charger 63 V on 2 and 3', [pinLists, measured, memory]],
  ['XLR of four', '4', 'by convention 1 negative, 4 positive', 'the polarity is a convention, the voltage is not: 12 V, 24 V and 28 V share it', [manuals]],
  ['Rack connector, types D, E, F', '24 to 48', 'rows by letter, on the male', 'the female is the mirror: read the letters, not the picture', [rack]],
  ['Rack connector, type H', '11, 15', 'even numbers 4 to 32; longer males make first', 'a first-make contact left out loses the earth', [rack, memory]],
  ['Edge strip of a board', '2 × n', 'component side A or 1, solder side B or a; a slot is the key', 'numbered from either end; some schemes leave out G, I, O, Q', [memory]],
  ['Screw terminals of an open supply', 'n', 'live, neutral and earth at one end, the outputs behind them', 'mains and output on one strip: the wrong screw puts the mains on the logic', [memory]],
  ['Board header of twice six', '12', 'black to black in the middle', 'the halves can be swapped: +12 V meets ground', [memory]],
  ['Four-contact plug for drives', '4', '1 +12 V, 2 and 3 ground, 4 +5 V; bevels are the key', 'forced the other way round +12 V meets +5 V', [memory]],
])

export const connectorPinsTable = table({
  name: 'connector-pins',
  title: 'Connectors of several contacts',
  intro:
    'How the contacts are numbered and what was found on them. One shell carries different voltages: each contact is measured before anything is joined.',
  rows: connectorPinsRows,
  id: ({ connector }) => [connector],
  columns: [
    { key: 'connector', title: 'Connector', unique: true },
    { key: 'contacts', title: 'Contacts' },
    { key: 'numbering', title: 'Numbering' },
    { key: 'caution', title: 'What goes wrong' },
  ],
})
