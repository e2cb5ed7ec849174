import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** A connector of IEC 60320 and the appliance inlet it is made for. */
export interface InletPair extends Sourced {
  readonly connector: string
  readonly inlet: string
  /** international rating [A] at 250 V */
  readonly ratedA: number
  /** lowest North American rating seen [A]; null where none was found */
  readonly ratedANorthAmerica: number | null
  readonly protectionClass: 'I' | 'II'
  readonly earthed: boolean
  /** highest pin temperature the pair is made for [°C] */
  readonly maxPinC: number
  readonly nicknames: readonly string[]
  readonly usualCord: string | null
  readonly notes: readonly string[]
}

/** A connector that goes, or notably does not go, into the inlet of another pair. */
export interface CrossMating extends Sourced {
  readonly connector: string
  readonly inlet: string
  readonly fits: boolean
  readonly why: string
}

const standardSheets = published(
  'AS/NZS 60320.1:2004, table of standard sheets',
  'as given by 2cit.com.au, "IEC Plug Details", and accesscomms.com.au, IEC 320',
)
const accessCommunications = published('accesscomms.com.au, IEC 320', 'list of connectors')
const stayOnline = published('StayOnline, IEC 320 reference chart (2026-01-12)', 'North American ratings')
const cableLeader = published('cableleader.com, IEC power connector chart', 'North American ratings')
const interpower = published('Interpower, "IEC 60320 C13 ratings"', 'North American rating')
const worldCordsets = published('worldcordsets.com, IEC 60320 C7', 'shapes, and 10 A at 125 V')
const museum = published(
  'Museum of Plugs and Sockets (plugsocketmuseum.nl)',
  'page on appliance connectors, PowerCord1.html: 10 A is 15 A and 16 A is 20 A in North America; C3 and C11 withdrawn',
)
const cordGlossary = published('industry-electronics.com, glossary', 'C7 and C8')
const cordSet = published(
  'IEC 60799, clauses 5.2.1 and 5.2.2',
  'as given in GB 15934 and in "International Cord Regulations" (blogquail.com): plug current not below the connector\'s',
)
const stayOnlineShapes = published(
  'StayOnline, "The Shape of Things: C13, C15, C19 and C21" (2025-10-21)',
  'C15 goes into C14 and C16, C13 into C14 only; C21 into C20 and C22, C19 into C20 only',
)
const sheets = fromMemory('IEC 60320-3', 'standard sheets: shapes and mating')
const usual = commonPractice('Usual cord', 'what cord sets of this kind are sold with')

const listed: readonly Source[] = [standardSheets, stayOnline]

// biome-ignore format: a row a line
export const inletPairs = rows<InletPair>()(['connector', 'inlet', 'ratedA', 'ratedANorthAmerica', 'protectionClass', 'earthed', 'maxPinC', 'nicknames', 'usualCord', 'notes', 'sources'], [
  ['C1', 'C2', 0.2, 0.2, 'II', false, 70, ['shaver'], 'tinsel or 2 × 0.5 mm² flat, not over 2 m', [], [...listed, usual]],
  ['C3', 'C4', 2.5, null, 'II', false, 70, [], null, ['Withdrawn; not in AS/NZS 60320.1:2004.'], [accessCommunications, museum]],
  ['C5', 'C6', 2.5, 2.5, 'I', true, 70, ['cloverleaf'], '3 × 0.75 mm² (H05VV-F); 18 AWG SVT', ['North American figures vary by certificate (2.5, 3 and 7 A seen): take the lower marking.'], [...listed, usual]],
  ['C7', 'C8', 2.5, 2.5, 'II', false, 70, ['figure-8', 'shotgun'], '2 × 0.75 mm² (H03VVH2-F); 18 AWG SPT-1, SPT-2 or NISPT', ['Not polarised.'], [...listed, worldCordsets, cordGlossary], { doubt: 'Charts disagree on North America (7 or 10 A at 125 V): 2.5 A holds unless the cord is marked higher.' }],
  ['C7P', 'C8A', 2.5, 2.5, 'II', false, 70, ['polarised figure-8'], '2 × 0.75 mm² (H03VVH2-F); 18 AWG SPT-1, SPT-2 or NISPT', ['One squared side: goes in one way round only.'], [worldCordsets, sheets], { doubt: 'Sold as "polarised C7", which one text says is not in IEC 60320; C8A as the squared inlet is from memory.' }],
  ['C9', 'C10', 6, 6, 'II', false, 70, [], '2 × 0.75 mm² (H05VVH2-F)', ['Two flat-sided pins; older audio equipment.'], [...listed, usual]],
  ['C11', 'C12', 10, null, 'II', false, 70, [], null, ['Withdrawn; not in AS/NZS 60320.1:2004.'], [accessCommunications, museum]],
  ['C13', 'C14', 10, 15, 'I', true, 70, ['computer lead'], '3 × 0.75 mm² up to 2 m, else 3 × 1.0 mm²; 18 AWG SVT or SJT (10 A), 16 AWG (13 A), 14 AWG (15 A)', ["The connector's rating is not the cord's: an 18 AWG cord carries 10 A."], [standardSheets, interpower, cableLeader]],
  ['C15', 'C16', 10, 15, 'I', true, 120, ['hot-condition lead'], '3 × 1.0 mm² rubber (H05RR-F)', ['A notch keeps the C13 out of a C16.'], [standardSheets, cableLeader, usual]],
  ['C15A', 'C16A', 10, 15, 'I', true, 155, ['very-hot-condition lead'], '3 × 1.0 mm² rubber', [], [standardSheets, museum]],
  ['C17', 'C18', 10, 15, 'II', false, 70, [], '2 × 0.75 or 1.0 mm² (H05VVH2-F)', [], [standardSheets, museum]],
  ['C19', 'C20', 16, 20, 'I', true, 70, ['server lead'], '3 × 1.5 mm² (3 × 1.0 mm² up to 2 m); 14 AWG (15 A), 12 AWG (20 A)', ['A cord set with a plug rated below 16 A does not comply.'], [standardSheets, cableLeader, museum, cordSet]],
  ['C21', 'C22', 16, 20, 'I', true, 155, ['very-hot-condition lead'], '3 × 1.5 mm² rubber', [], [standardSheets, museum, stayOnlineShapes], { doubt: 'One seller says 120 °C; the table and the museum say 155 °C.' }],
  ['C23', 'C24', 16, 20, 'II', false, 70, [], '2 × 1.5 mm²', ['Rare.'], [standardSheets, museum]],
])

const mates = (connector: string, inlet: string, why: string, rest: Pick<CrossMating, 'sources' | 'doubt'>) => ({
  connector,
  inlet,
  fits: true,
  why,
  ...rest,
})
const doesNot = (connector: string, inlet: string, why: string, rest: Pick<CrossMating, 'sources' | 'doubt'>) => ({
  connector,
  inlet,
  fits: false,
  why,
  ...rest,
})
const hotter = 'A hotter connector goes into a cooler inlet; the reverse does not.'
const cooler = 'A connector made for cooler pins is kept out of a hotter inlet by its shape.'
const remembered = 'From memory only.'

// biome-ignore format: a row a line
export const crossMatings: readonly CrossMating[] = frozen([
  mates('C15', 'C14', hotter, { sources: [cableLeader, stayOnlineShapes] }),
  mates('C15A', 'C14', hotter, { sources: [sheets], doubt: remembered }),
  mates('C15A', 'C16', hotter, { sources: [sheets], doubt: remembered }),
  mates('C21', 'C20', hotter, { sources: [stayOnlineShapes] }),
  doesNot('C13', 'C16', cooler, { sources: [cableLeader, stayOnlineShapes] }),
  doesNot('C13', 'C16A', cooler, { sources: [sheets], doubt: remembered }),
  doesNot('C15', 'C16A', cooler, { sources: [sheets], doubt: remembered }),
  doesNot('C19', 'C22', cooler, { sources: [stayOnlineShapes] }),
  mates('C7', 'C8A', 'The plain connector goes into the squared inlet either way round: polarity is then not assured.', { sources: [worldCordsets, sheets], doubt: 'Commonly reported; the sheet was not seen.' }),
  doesNot('C7P', 'C8', 'The squared side does not enter the round inlet.', { sources: [sheets], doubt: remembered }),
  mates('C13', 'C18', 'An earthed connector goes into the inlet without earth pin; the earth is not used.', { sources: [sheets], doubt: 'Commonly reported; the sheet was not seen.' }),
  doesNot('C17', 'C14', 'A connector without earth is kept out of an inlet with an earth pin.', { sources: [sheets], doubt: remembered }),
])

export const inletPairsTable = table<InletPair>({
  name: 'inlets',
  title: 'Appliance inlets and their connectors (IEC 60320)',
  intro:
    'Each connector with the inlet it is made for. The hotter the pins may get, the more notches keep cooler cords out.',
  rows: inletPairs,
  id: ({ connector, inlet }) => [connector, inlet],
  columns: [
    {
      key: 'connector',
      title: 'Pair',
      of: ({ connector, inlet }) => `${connector} connector, ${inlet} inlet`,
      unique: true,
    },
    { key: 'inlet', unique: true },
    { key: 'ratedA', title: 'Rated', unit: 'A', from: 0.2, to: 16 },
    { key: 'ratedANorthAmerica', title: 'North America', unit: 'A', from: 0.2, to: 20 },
    { key: 'protectionClass', title: 'Class' },
    { key: 'earthed', title: 'Earthed' },
    { key: 'maxPinC', title: 'Pins up to', unit: '°C', oneOf: [70, 120, 155] },
    { key: 'nicknames', title: 'Called' },
    { key: 'usualCord', title: 'Usual cord' },
    { key: 'notes', title: 'Notes', between: ' ' },
  ],
  rules: [
    {
      fault: 'the earth does not agree with the class',
      broken: ({ earthed, protectionClass }) => earthed !== (protectionClass === 'I'),
    },
  ],
})

export const crossMatingsTable = table<CrossMating>({
  name: 'inlet-crossings',
  title: 'Connectors in the inlets of other pairs',
  intro:
    'A connector goes into its own inlet. These are the other pairs that mate, or notably do not. Any pair not listed does not mate.',
  rows: crossMatings,
  id: ({ connector, inlet }) => [connector, 'in', inlet],
  columns: [
    {
      key: 'connector',
      title: 'Connector and inlet',
      of: ({ connector, inlet }) => `${connector} in ${inlet}`,
      known: () => inletPairs.map(({ connector }) => connector),
    },
    { key: 'inlet', known: () => inletPairs.map(({ inlet }) => inlet) },
    { key: 'fits', title: 'Mates' },
    { key: 'why', title: 'Why' },
  ],
})
