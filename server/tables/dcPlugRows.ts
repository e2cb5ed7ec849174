import { namedTwice } from './faults.js'
import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { figure, table } from './table.js'

/** A coaxial low-voltage plug. */
export interface DcPlugRow extends Sourced {
  readonly name: string
  readonly aliases: readonly string[]
  /** null where no standard names the size */
  readonly standard: string | null
  readonly outerMm: number
  /** bore of the plug: the jack's pin goes in here */
  readonly innerMm: number
  /** the plug's own pin, where it has one */
  readonly centrePinMm: number | null
  /** nominal voltages [V] of its class; null where the size has no class */
  readonly voltageMinV: number | null
  readonly voltageMaxV: number | null
  /** usual contact rating [A] */
  readonly contactA: number | null
  readonly notes: readonly string[]
}

const eiaj = published('JEITA RC-5320A, as given by Wikipedia, "EIAJ connector"', 'sizes and voltage classes')
const eiajGerman = published(
  'JEITA RC-5320A, as given by Wikipedia (de), "EIAJ-Steckverbinder"',
  'bore of type 4 as 3.4 mm',
)
const eiajJapanese = published('Wikipedia (ja), "ACアダプタ", as quoted by weblio.jp', 'RC-5322, RC-6705, DIN 45323')
const retail = published('Retail listings of plugs (w1.ipwo.jp, 4411)', 'bores, pins and 2 A ratings')
const accessCommunications = published('accesscomms.com.au, "Concentric barrel plug"', 'sizes in use')
const wallwart = published('hurontel.on.ca, "wallwart"', 'sizes in use')
const hardwareNotes = published('0cjs, hardware notes on barrel connectors', 'sizes in use')
const notebooks = published('Shop listing of notebook supply plugs', 'sizes, and the volts and amperes sold with them')
const coaxial = published('Wikipedia, "Coaxial power connector"', 'IEC 60130-10 type A with both bores')
const iec = fromMemory('IEC 60130-10:1971', 'sizes')
const makers = fromMemory("Component makers' catalogues", 'sizes and ratings')
const contact = commonPractice('Usual contact current', 'a cautious figure for a plug of unknown make')
const pin = commonPractice('Notebook plugs', 'pin sizes, and the pin as an identification contact')

const rc5320 =
  'Unified polarity: centre positive. The class is a range of nominal voltages, not an over-voltage rating.'
const noClass = 'No voltage class.'
const memoryOnly = 'From memory only.'

type Rest = Partial<Omit<DcPlugRow, 'name' | 'outerMm' | 'innerMm' | 'sources'>>

const plug = (
  name: string,
  outerMm: number,
  innerMm: number,
  sources: readonly Source[],
  rest: Rest = {},
): DcPlugRow => ({
  name,
  aliases: [],
  standard: null,
  outerMm,
  innerMm,
  centrePinMm: null,
  voltageMinV: null,
  voltageMaxV: null,
  contactA: null,
  notes: [],
  sources,
  ...rest,
})

// biome-ignore format: a row a line
export const dcPlugRows: readonly DcPlugRow[] = frozen([
  plug('EIAJ-01', 2.35, 0.7, [eiaj, eiajGerman], { aliases: ['JEITA RC-5320A type 1', 'RC-5320A type 1', 'EIAJ type 1', 'EIAJ 1', '2.35 x 0.7'], standard: 'JEITA RC-5320A type 1', voltageMinV: 0, voltageMaxV: 3.15, contactA: 2, notes: [rc5320, 'Jack: 2.75 mm hole, 0.65 mm pin. Usually a yellow insulating tip.'] }),
  plug('EIAJ-02', 4, 1.7, [eiaj, eiajGerman], { aliases: ['JEITA RC-5320A type 2', 'RC-5320A type 2', 'EIAJ type 2', 'EIAJ 2'], standard: 'JEITA RC-5320A type 2', voltageMinV: 3.15, voltageMaxV: 6.3, contactA: 2, notes: [rc5320, 'Jack: 4.4 mm hole, 1.65 mm pin.', 'The same size is also used at 9 to 20 V (small notebooks): size alone proves nothing.'] }),
  plug('EIAJ-03', 4.75, 1.7, [eiaj, eiajGerman], { aliases: ['JEITA RC-5320A type 3', 'RC-5320A type 3', 'EIAJ type 3', 'EIAJ 3', '4.75 x 1.7'], standard: 'JEITA RC-5320A type 3', voltageMinV: 6.3, voltageMaxV: 10.5, contactA: 2, notes: [rc5320, 'Jack: 5.15 mm hole, 1.65 mm pin.', 'Practically the same shell as 4.8 × 1.7, used at 12 to 19 V.'] }),
  plug('EIAJ-04', 5.5, 3.3, [eiaj, eiajGerman, retail], { aliases: ['JEITA RC-5320A type 4', 'RC-5320A type 4', 'EIAJ type 4', 'EIAJ 4', '5.5 x 3.3', '5.5 x 3.4'], standard: 'JEITA RC-5320A type 4', centrePinMm: 1, voltageMinV: 10.5, voltageMaxV: 13.5, contactA: 2, notes: [rc5320, 'Does not mate with a 5.5 × 2.1 or 5.5 × 2.5 jack.'], doubt: 'Sources differ on the bore: 3.3 mm against 3.4 mm.' }),
  plug('EIAJ-05', 6.5, 4.4, [eiaj, eiajGerman, retail, makers], { aliases: ['JEITA RC-5320A type 5', 'RC-5320A type 5', 'EIAJ type 5', 'EIAJ 5', '6.5 x 4.4', '6.5 x 4.3'], standard: 'JEITA RC-5320A type 5', centrePinMm: 1.4, voltageMinV: 13.5, voltageMaxV: 18, contactA: 2, notes: [rc5320, 'Also written 6.5 × 4.3.', 'Also sold on notebook supplies of 19 to 20 V, outside the class.'], doubt: 'The use outside the class, and 4.3 mm, are from memory.' }),
  plug('RC-5322', 6.5, 3.1, [eiajJapanese, retail, makers], { aliases: ['EIAJ RC-5322', 'EIAJ-06', 'EIAJ 6', '6.5 x 3.1'], standard: 'EIAJ RC-5322', centrePinMm: 1, contactA: 2, notes: ['Vehicle equipment, 12 V; a listing rates it 24 V 2 A.'], doubt: 'Outer diameter 6.5 mm in listings, 6.3 mm in catalogues from memory.' }),
  plug('RC-6705', 5.5, 4, [eiajJapanese, eiaj], { aliases: ['EIAJ RC-6705'], standard: 'EIAJ RC-6705, withdrawn', notes: ['Not to be matched on.'], doubt: 'One source only, and the 4.0 mm bore looks like a misprint; another calls it the 1992 edition of RC-5320A.' }),
  plug('IEC type B', 6, 2.1, [iec], { standard: 'IEC 60130-10 type B', doubt: memoryOnly, aliases: ['6.0 x 2.1'] }),
  plug('IEC type C', 3.8, 1.4, [hardwareNotes, iec], { standard: 'IEC 60130-10 type C', doubt: 'The bore is from memory as 1.4 mm; some lists say 1.1 mm.' }),
  plug('IEC type D', 6.3, 3.1, [iec], { standard: 'IEC 60130-10 type D', aliases: ['6.3 x 3.1'], doubt: 'From memory only; 6.3 × 3.0 and RC-5322 are one nominal size under other names.' }),
  plug('IEC type E', 3.4, 1.3, [iec], { standard: 'IEC 60130-10 type E', aliases: ['3.4 x 1.3'], notes: ['Often sold as 3.5 × 1.3 or 3.5 × 1.35.'], doubt: memoryOnly }),
  plug('DIN 45323', 5, 2, [eiajJapanese, fromMemory('DIN 45323', 'dimensions')], { standard: 'DIN 45323', aliases: ['5.0 x 2.0'], doubt: 'The standard exists; its dimensions are from memory.' }),
  plug('2.5 x 0.7', 2.5, 0.7, [hardwareNotes], { notes: [noClass, 'Often 5 V (tablets, players). Easily taken for EIAJ-01.'] }),
  plug('3.0 x 1.1', 3, 1.1, [wallwart, contact], { contactA: 2, notes: [noClass, 'Met at 5, 12 and 19 V: a dangerous size to assume from.'], doubt: 'The current is common practice, unverified; a shop writes the size 3.0 × 1.0.' }),
  plug('3.5 x 1.1', 3.5, 1.1, [published('Tensility, drawing 50-00045', 'jack 3.5 × 1.1: 24 V d.c., 5 A, pin 1.0 mm')], { contactA: 5, notes: [noClass] }),
  plug('3.5 x 1.35', 3.5, 1.35, [accessCommunications, hardwareNotes, contact], { aliases: ['3.5 x 1.3'], contactA: 2, notes: [noClass, 'Often 5 V, but not always. Also listed as 3.5 × 1.3 and 3.4 × 1.3.'], doubt: 'The current is common practice, unverified.' }),
  plug('3.8 x 1.05', 3.8, 1.05, [accessCommunications], { notes: [noClass] }),
  plug('3.8 x 1.3', 3.8, 1.3, [accessCommunications, contact], { aliases: ['3.8 x 1.35'], contactA: 2, notes: [noClass, 'Lists vary: 3.8 × 1.35, 1.3, 1.1, 1.05.'], doubt: 'The current is common practice, unverified.' }),
  plug('4.0 x 1.35', 4, 1.35, [notebooks], { notes: [noClass, 'Met on notebook supplies of 19 V.'] }),
  plug('4.0 x 1.7', 4, 1.7, [hardwareNotes, notebooks, contact], { contactA: 2, notes: [noClass, 'The metal of EIAJ-02 but sold with any voltage; only a yellow tip and a 3.15–6.3 V label suggest the class.'], doubt: 'The current is common practice, unverified.' }),
  plug('4.5 x 3.0 with pin', 4.5, 3, [notebooks, pin], { aliases: ['4.5 x 3.0'], centrePinMm: 0.6, contactA: 3, notes: ['Notebook supplies of 18.5 to 20 V. The pin is an identification contact; the supply is on the inner sleeve.'], doubt: 'Pin size and current are common practice, unverified.' }),
  plug('4.8 x 1.7', 4.8, 1.7, [hardwareNotes, notebooks, contact], { contactA: 3, notes: [noClass, 'Met at 9 to 20 V. Interchanges with EIAJ-03: never infer the voltage.'], doubt: 'The current is common practice, unverified.' }),
  plug('5.0 x 2.1', 5, 2.1, [accessCommunications], { notes: [noClass, 'A loose fit in a 5.5 mm jack.'] }),
  plug('5.0 x 2.5', 5, 2.5, [accessCommunications], { notes: [noClass] }),
  plug('5.0 x 3.0 with pin', 5, 3, [pin], { aliases: ['5.0 x 3.0'], centrePinMm: 1, notes: ['Notebook supplies of about 19 V.'], doubt: 'Common practice only, unverified.' }),
  plug('5.5 x 1.7', 5.5, 1.7, [notebooks, hardwareNotes], { contactA: 4, notes: ['Notebook supplies; sold with 19 V 3.42 A and 2.37 A. Does not go over a 2.1 mm pin.'] }),
  plug('5.5 x 2.1', 5.5, 2.1, [accessCommunications, hardwareNotes, coaxial, published('equipguide.blog', '3 A at 12 V for a kit of 5.5 × 2.1'), published('Jack data sheets PJ-102AH and PJ-036AH, as recorded in a parts library', '2.5 A and 5 A at 24 V'), published('Tinkerforge, documentation of the DC jack adapter', '3 A')], { aliases: ['5.5 x 2.0', 'IEC type A 2.1'], standard: 'IEC 60130-10 type A', contactA: 2, notes: ['The most common size. No voltage class. Pin of the jack nominally 2.0 to 2.1 mm.'], doubt: 'Ratings seen: 2, 2.5, 3 and 5 A; the lowest holds unless the part is known.' }),
  plug('5.5 x 2.5', 5.5, 2.5, [accessCommunications, hardwareNotes, coaxial, published('provideyourown.com', 'chosen above 2 A'), makers], { aliases: ['IEC type A 2.5'], standard: 'IEC 60130-10 type A, second bore', contactA: 3, notes: ['No voltage class.', 'A 2.5 mm plug goes over a 2.1 mm pin and makes poor, intermittent, hot contact; a 2.1 mm plug does not go on a 2.5 mm pin.'], doubt: 'Data sheets often say 5 A, from memory.' }),
  plug('5.5 x 2.8', 5.5, 2.8, [wallwart], { notes: [noClass] }),
  plug('5.5 x 3.0 with pin', 5.5, 3, [notebooks, pin], { aliases: ['5.5 x 3.0'], centrePinMm: 1, contactA: 4, notes: ['Notebook supplies; sold with 19 V 4.74 A.'], doubt: 'The pin size is common practice, unverified.' }),
  plug('5.5 x 3.8 with pin', 5.5, 3.8, [wallwart], { centrePinMm: 1.8, doubt: 'One list only.' }),
  plug('6.0 x 3.0', 6, 3, [commonPractice('6.0 × 3.0', 'no list was seen with exactly this pair')], { doubt: 'Common practice only, unverified.' }),
  plug('6.0 x 4.4 with pin', 6, 4.4, [hardwareNotes, notebooks, pin], { aliases: ['6.0 x 4.4', '6.0 x 4.3'], centrePinMm: 1.4, notes: ['Notebook and monitor supplies of about 14 to 19.5 V. Not EIAJ-05 (6.5 mm).'], doubt: 'The pin size is common practice, unverified.' }),
  plug('6.3 x 3.0', 6.3, 3, [hardwareNotes, wallwart, contact], { contactA: 5, notes: [noClass, 'Some lists say 6.3 × 3.1.'], doubt: 'The current is common practice, unverified.' }),
  plug('6.5 x 3.0', 6.5, 3, [accessCommunications], { notes: [noClass, 'Near RC-5322.'] }),
  plug('6.9 x 4.2 with pin', 6.9, 4.2, [wallwart], { centrePinMm: 0.7, doubt: 'One list only.' }),
  plug('7.4 x 5.0 with pin', 7.4, 5, [notebooks, published('adapterfamily.com', '7.4 × 5.0'), pin], { aliases: ['7.4 x 5.0'], centrePinMm: 0.6, contactA: 5, notes: ['Notebook supplies of 18.5 to 20 V. The pin is an identification line; supply positive is the inner sleeve.'], doubt: 'Pin size (0.6 to 0.7 mm) and current are common practice, unverified.' }),
  plug('7.9 x 5.5 with pin', 7.9, 5.5, [notebooks, hardwareNotes, pin], { aliases: ['7.9 x 5.5', '8.0 x 5.5', '7.5 x 5.5'], centrePinMm: 0.9, contactA: 4, notes: ['Notebook supplies; sold with 20 V 4.5 A. The pin is an identification contact.'], doubt: 'Written 7.5, 7.9 and 8.0 × 5.5; the pin size is common practice, unverified.' }),
])

export const dcPlugsTable = table<DcPlugRow>({
  name: 'dc-plugs',
  title: 'Low-voltage plugs',
  intro:
    'Coaxial plugs seen from their open end, all at one scale: the ring is the sleeve, the hole in it is the bore that goes over the pin of the jack. Many sizes look alike, and one size is used for many voltages.',
  warning:
    'A size proves neither voltage nor polarity, except for the series that codes the voltage by the size. Measure the plug before the machine is connected.',
  rows: dcPlugRows,
  id: ({ name }) => [name],
  columns: [
    { key: 'name', title: 'Plug' },
    { title: 'End view', as: 'plug-end' },
    { key: 'outerMm', title: 'Outside', unit: 'mm', from: 2, to: 8 },
    { key: 'innerMm', title: 'Bore', unit: 'mm', above: 0 },
    { key: 'centrePinMm', title: 'Own pin', unit: 'mm', above: 0 },
    {
      key: 'voltageMinV',
      title: 'Voltage class',
      of: ({ voltageMinV, voltageMaxV }) =>
        voltageMinV === null || voltageMaxV === null ? null : figure(voltageMinV, 'V', { to: voltageMaxV }),
      none: 'none',
      from: 0,
    },
    { key: 'contactA', title: 'Contact', unit: 'A', from: 0.5, to: 10 },
    { key: 'notes', title: 'Notes', between: ' ' },
    { key: 'aliases', title: 'Also called', names: true },
  ],
  rules: [
    { fault: 'the bore is not smaller than the outside', broken: ({ outerMm, innerMm }) => !(innerMm < outerMm) },
    {
      fault: 'the pin is not smaller than the bore',
      broken: ({ centrePinMm, innerMm }) => centrePinMm !== null && !(centrePinMm < innerMm),
    },
    {
      fault: 'has half a voltage class',
      broken: ({ voltageMinV, voltageMaxV }) => (voltageMinV === null) !== (voltageMaxV === null),
    },
    {
      fault: 'has a voltage class upside down',
      broken: ({ voltageMinV, voltageMaxV }) => voltageMinV !== null && !(voltageMinV < (voltageMaxV ?? Infinity)),
    },
  ],
  whole: (rows) => namedTwice(rows, ({ name, aliases }) => [name, ...aliases]),
})
