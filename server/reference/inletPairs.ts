import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'

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

const table = published(
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

const listed: readonly Source[] = [table, stayOnline]

export const inletPairs: readonly InletPair[] = frozen([
  {
    connector: 'C1',
    inlet: 'C2',
    ratedA: 0.2,
    ratedANorthAmerica: 0.2,
    protectionClass: 'II',
    earthed: false,
    maxPinC: 70,
    nicknames: ['shaver'],
    usualCord: 'tinsel or 2 × 0.5 mm² flat, not over 2 m',
    notes: [],
    sources: [...listed, usual],
  },
  {
    connector: 'C3',
    inlet: 'C4',
    ratedA: 2.5,
    ratedANorthAmerica: null,
    protectionClass: 'II',
    earthed: false,
    maxPinC: 70,
    nicknames: [],
    usualCord: null,
    notes: ['Withdrawn; not in AS/NZS 60320.1:2004.'],
    sources: [accessCommunications, museum],
  },
  {
    connector: 'C5',
    inlet: 'C6',
    ratedA: 2.5,
    ratedANorthAmerica: 2.5,
    protectionClass: 'I',
    earthed: true,
    maxPinC: 70,
    nicknames: ['cloverleaf'],
    usualCord: '3 × 0.75 mm² (H05VV-F); 18 AWG SVT',
    notes: ['North American figures vary by certificate (2.5, 3 and 7 A seen): take the lower marking.'],
    sources: [...listed, usual],
  },
  {
    connector: 'C7',
    inlet: 'C8',
    ratedA: 2.5,
    ratedANorthAmerica: 2.5,
    protectionClass: 'II',
    earthed: false,
    maxPinC: 70,
    nicknames: ['figure-8', 'shotgun'],
    usualCord: '2 × 0.75 mm² (H03VVH2-F); 18 AWG SPT-1, SPT-2 or NISPT',
    notes: ['Not polarised.'],
    doubt: 'Charts disagree on North America (7 or 10 A at 125 V): 2.5 A holds unless the cord is marked higher.',
    sources: [...listed, worldCordsets, cordGlossary],
  },
  {
    connector: 'C7P',
    inlet: 'C8A',
    ratedA: 2.5,
    ratedANorthAmerica: 2.5,
    protectionClass: 'II',
    earthed: false,
    maxPinC: 70,
    nicknames: ['polarised figure-8'],
    usualCord: '2 × 0.75 mm² (H03VVH2-F); 18 AWG SPT-1, SPT-2 or NISPT',
    notes: ['One squared side: goes in one way round only.'],
    doubt: 'Sold as "polarised C7", which one text says is not in IEC 60320; C8A as the squared inlet is from memory.',
    sources: [worldCordsets, sheets],
  },
  {
    connector: 'C9',
    inlet: 'C10',
    ratedA: 6,
    ratedANorthAmerica: 6,
    protectionClass: 'II',
    earthed: false,
    maxPinC: 70,
    nicknames: [],
    usualCord: '2 × 0.75 mm² (H05VVH2-F)',
    notes: ['Two flat-sided pins; older audio equipment.'],
    sources: [...listed, usual],
  },
  {
    connector: 'C11',
    inlet: 'C12',
    ratedA: 10,
    ratedANorthAmerica: null,
    protectionClass: 'II',
    earthed: false,
    maxPinC: 70,
    nicknames: [],
    usualCord: null,
    notes: ['Withdrawn; not in AS/NZS 60320.1:2004.'],
    sources: [accessCommunications, museum],
  },
  {
    connector: 'C13',
    inlet: 'C14',
    ratedA: 10,
    ratedANorthAmerica: 15,
    protectionClass: 'I',
    earthed: true,
    maxPinC: 70,
    nicknames: ['computer lead'],
    usualCord: '3 × 0.75 mm² up to 2 m, else 3 × 1.0 mm²; 18 AWG SVT or SJT (10 A), 16 AWG (13 A), 14 AWG (15 A)',
    notes: ["The connector's rating is not the cord's: an 18 AWG cord carries 10 A."],
    sources: [table, interpower, cableLeader],
  },
  {
    connector: 'C15',
    inlet: 'C16',
    ratedA: 10,
    ratedANorthAmerica: 15,
    protectionClass: 'I',
    earthed: true,
    maxPinC: 120,
    nicknames: ['hot-condition lead'],
    usualCord: '3 × 1.0 mm² rubber (H05RR-F)',
    notes: ['A notch keeps the C13 out of a C16.'],
    sources: [table, cableLeader, usual],
  },
  {
    connector: 'C15A',
    inlet: 'C16A',
    ratedA: 10,
    ratedANorthAmerica: 15,
    protectionClass: 'I',
    earthed: true,
    maxPinC: 155,
    nicknames: ['very-hot-condition lead'],
    usualCord: '3 × 1.0 mm² rubber',
    notes: [],
    sources: [table, museum],
  },
  {
    connector: 'C17',
    inlet: 'C18',
    ratedA: 10,
    ratedANorthAmerica: 15,
    protectionClass: 'II',
    earthed: false,
    maxPinC: 70,
    nicknames: [],
    usualCord: '2 × 0.75 or 1.0 mm² (H05VVH2-F)',
    notes: [],
    sources: [table, museum],
  },
  {
    connector: 'C19',
    inlet: 'C20',
    ratedA: 16,
    ratedANorthAmerica: 20,
    protectionClass: 'I',
    earthed: true,
    maxPinC: 70,
    nicknames: ['server lead'],
    usualCord: '3 × 1.5 mm² (3 × 1.0 mm² up to 2 m); 14 AWG (15 A), 12 AWG (20 A)',
    notes: ['A cord set with a plug rated below 16 A does not comply.'],
    sources: [table, cableLeader, museum, cordSet],
  },
  {
    connector: 'C21',
    inlet: 'C22',
    ratedA: 16,
    ratedANorthAmerica: 20,
    protectionClass: 'I',
    earthed: true,
    maxPinC: 155,
    nicknames: ['very-hot-condition lead'],
    usualCord: '3 × 1.5 mm² rubber',
    notes: [],
    doubt: 'One seller says 120 °C; the table and the museum say 155 °C.',
    sources: [table, museum, stayOnlineShapes],
  },
  {
    connector: 'C23',
    inlet: 'C24',
    ratedA: 16,
    ratedANorthAmerica: 20,
    protectionClass: 'II',
    earthed: false,
    maxPinC: 70,
    nicknames: [],
    usualCord: '2 × 1.5 mm²',
    notes: ['Rare.'],
    sources: [table, museum],
  },
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

export const crossMatings: readonly CrossMating[] = frozen([
  mates('C15', 'C14', hotter, { sources: [cableLeader, stayOnlineShapes] }),
  mates('C15A', 'C14', hotter, { sources: [sheets], doubt: remembered }),
  mates('C15A', 'C16', hotter, { sources: [sheets], doubt: remembered }),
  mates('C21', 'C20', hotter, { sources: [stayOnlineShapes] }),
  doesNot('C13', 'C16', cooler, { sources: [cableLeader, stayOnlineShapes] }),
  doesNot('C13', 'C16A', cooler, { sources: [sheets], doubt: remembered }),
  doesNot('C15', 'C16A', cooler, { sources: [sheets], doubt: remembered }),
  doesNot('C19', 'C22', cooler, { sources: [stayOnlineShapes] }),
  mates(
    'C7',
    'C8A',
    'The plain connector goes into the squared inlet either way round: polarity is then not assured.',
    {
      sources: [worldCordsets, sheets],
      doubt: 'Commonly reported; the sheet was not seen.',
    },
  ),
  doesNot('C7P', 'C8', 'The squared side does not enter the round inlet.', { sources: [sheets], doubt: remembered }),
  mates('C13', 'C18', 'An earthed connector goes into the inlet without earth pin; the earth is not used.', {
    sources: [sheets],
    doubt: 'Commonly reported; the sheet was not seen.',
  }),
  doesNot('C17', 'C14', 'A connector without earth is kept out of an inlet with an earth pin.', {
    sources: [sheets],
    doubt: remembered,
  }),
])
