import { namedTwice } from './faults.js'
import * as from from './plugSources.js'
import { socketLetters } from './socketLetters.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

export interface PlugType extends Sourced {
  /** as the standard writes it: "CEE 7/16" */
  readonly name: string
  /** IEC letters the plug is filed under */
  readonly letters: readonly string[]
  readonly ratedV: number
  readonly ratedA: number
  readonly earthed: boolean
  /** line and neutral cannot be swapped */
  readonly polarised: boolean
  /** may be fitted by hand; null where not known */
  readonly rewirable: boolean | null
  readonly fused: boolean
  readonly notes: readonly string[]
  /** other ways it is written */
  readonly aliases: readonly string[]
}

// biome-ignore format: a row a line
export const plugTypes = rows<PlugType>()(['name', 'letters', 'ratedV', 'ratedA', 'earthed', 'polarised', 'rewirable', 'fused', 'notes', 'aliases', 'sources'], [
  ['NEMA 1-15P', ['A'], 125, 15, false, true, true, false, ['Neutral blade wider; most made since the 1950s are so.'], ['NEMA 1-15', 'NEMA 1-15P polarised', 'NEMA 1-15P polarized'], [from.wikipediaNema, from.plugAndCable]],
  ['NEMA 1-15P unpolarised', ['A'], 125, 15, false, false, true, false, ['Both blades narrow; still used on plug-in supplies.'], ['NEMA 1-15 unpolarised', 'NEMA 1-15P unpolarized', 'NEMA 1-15 unpolarized'], [from.wikipediaNema, from.plugAndCable]],
  ['JIS C 8303 two-pin', ['A'], 125, 15, false, false, true, false, ['Same shape as the unpolarised American plug; used at 100 V.'], ['JIS C 8303 2-pin', 'JIS 1-15P'], [from.wikipediaJapan, from.techwalla]],
  ['GB 1002 two-pin', ['A'], 250, 10, false, false, true, false, ['Looks like the American two-pin plug but is used at 220 V; blades of equal width.'], ['GB 1002 2-pin', 'GB 2099.1 two-pin'], [from.gb1002]],
  ['NEMA 5-15P', ['B'], 125, 15, true, true, true, false, ['Earth pin longer than the blades, so earth makes first.'], ['NEMA 5-15'], [from.plugAndCable, from.nema]],
  ['NEMA 5-20P', ['B'], 125, 20, true, true, true, false, ['One blade turned a quarter; does not enter a 15 A outlet.'], ['NEMA 5-20'], [from.nema]],
  ['JIS C 8303 three-pin', ['B'], 125, 15, true, true, true, false, ['Same form as NEMA 5-15P; used at 100 V.'], ['JIS C 8303 3-pin', 'JIS 5-15P'], [from.wikipediaJapan, from.jis]],
  ['NEMA 6-15P', [], 250, 15, true, false, true, false, ['240 V line to line; both blades horizontal, which keeps loads of 240 V out of sockets of 120 V.'], ['NEMA 6-15'], [from.nema]],
  ['CEE 7/16', ['C'], 250, 2.5, false, false, false, false, ['For class II equipment only; flat body, 4.0 mm sprung pins with sleeves.', 'Comes attached to a cord or an appliance; one that can be rewired does not comply.'], ['Europlug', 'EN 50075', 'CEE 7/16 alternative II', 'CEE7/XVI', 'Euro plug'], [from.wikipediaEuroplug, from.museumEuroplug]],
  ['CEE 7/17', ['C'], 250, 16, false, false, true, false, ['For class II equipment up to 16 A; 4.8 mm pins.', 'Rewirable ones exist, but some countries (the Netherlands named) do not permit them.'], ['contour plug', 'CEE7/XVII'], [from.museumContour]],
  ['BS 4573', [], 250, 0.2, false, false, false, false, ['The two-pin shaver plug of the UK; not a CEE 7/16: pins 5 mm on 16.6 mm centres.'], ['UK shaver plug'], [from.wikipediaBs546, from.bs4573], { doubt: 'The rating is from memory only.' }],
  ['BS 546 5 A', ['D'], 250, 5, true, true, true, false, ['Three round pins, the earth pin larger; ones with a fuse exist but are rare.', 'India rates its form 6 A.'], ['BS 546', 'IS 1293', 'IS 1293 6 A', 'BS 546 5A'], [from.wikipediaBs546]],
  ['BS 546 15 A', ['M'], 250, 15, true, true, true, false, ['Larger round pins than the 5 A size; the two do not interchange.', 'South Africa and India rate their forms 16 A.'], ['SANS 164-1', 'IS 1293 16 A', 'BS 546 15A'], [from.wikipediaBs546, from.museumIec]],
  ['CEE 7/6', ['E'], 250, 16, true, true, true, false, ["Hole for the socket's earth pin, no side contacts; now rare.", 'Which hole is live is not agreed between countries.'], ['CEE7/VI', 'NF C 61-314'], [from.wikipediaFrench, from.museumFrench]],
  ['CEE 7/7', ['E', 'F'], 250, 16, true, false, true, false, ['Earths in both E and F; one way round in E, either way in F; mostly moulded.'], ['CEE7/VII', 'E/F hybrid', 'type E/F'], [from.museumHybrid, from.wallSwitches]],
  ['CEE 7/4', ['F'], 250, 16, true, false, true, false, ['Side earth contacts only, no hole for the earth pin of E.'], ['Schuko', 'CEE7/IV', 'DIN 49441'], [from.wikipediaSchuko, from.toughLeads]],
  ['BS 1363', ['G'], 250, 13, true, true, true, true, ['BS 1362 cartridge fuse-link of 13 A or less, which protects the flexible cord; 3 A and 13 A are usual, 5 A is sold.', 'Moulded plugs that cannot be rewired are allowed too.'], ['BS 1363-1', 'BS1363/A', 'UK plug'], [from.saintLucia, from.patTesting]],
  ['SI 32', ['H'], 250, 16, true, true, true, false, ['Pins not sleeved; round pins since about 2000.'], ['SI 32 round pins'], [from.museumIsraeli, from.worldStandardsH, from.rewirableSold]],
  ['SI 32 flat pins', ['H'], 250, 16, true, true, true, false, ['First rated 10 A, later marked 16 A without redesign; overheating at high load was reported.'], ['SI 32 old'], [from.museumIsraeli, from.worldStandardsH, from.rewirableSold]],
  ['AS/NZS 3112 10 A', ['I'], 250, 10, true, true, true, false, ['Line and neutral pins sleeved since April 2005.'], ['AS/NZS 3112', 'AS 3112', 'AS 3112 10 A'], [from.wikipediaAustralia, from.rewirableSold]],
  ['AS/NZS 3112 10 A two-pin', ['I'], 250, 10, false, true, true, false, ['The form for class II equipment.'], ['AS/NZS 3112 two-pin', 'AS/NZS 3112 2-pin', 'AS 3112 two-pin'], [from.wikipediaAustralia, from.rewirableSold]],
  ['AS/NZS 3112 15 A', ['I'], 250, 15, true, true, true, false, ['Wider earth pin; enters sockets of 15 A and more only.'], ['AS 3112 15 A'], [from.wikipediaAustralia]],
  ['IRAM 2073 10 A', ['I'], 250, 10, true, true, true, false, ['Argentina; line and neutral the other way round than AS/NZS 3112; pin sleeves optional.'], ['IRAM 2073', 'IRAM 2071'], [from.wikipediaAustralia, from.wikipediaTypeI]],
  ['GB 1002 three-pin', ['I'], 250, 10, true, true, true, false, ['China; pins 1 mm longer than the Australasian plug; a 16 A size exists.'], ['GB 1002', 'GB 2099.1', 'GB 1002 3-pin', 'GB 2099'], [from.wikipediaAustralia, from.gb1002]],
  ['SN 441011 T12', ['J'], 250, 10, true, true, true, false, ['Offset earth pin; sleeved pins compulsory since 2013.'], ['SEV 1011 T12', 'T12', 'SEV 1011', 'SN 441011', 'SEV T12'], [from.swissSellers, from.museumSwiss, from.rewirableSold]],
  ['SN 441011 T11', ['J'], 250, 10, false, false, true, false, ['The two-pin form for class II equipment.'], ['SEV 1011 T11', 'T11', 'SEV T11'], [from.swissSellers, from.museumSwiss, from.rewirableSold]],
  ['SN 441011 T23', ['J'], 250, 16, true, true, true, false, ['Rectangular pins; does not enter a T13 socket.'], ['SEV 1011 T23', 'T23', 'SEV T23'], [from.swissSellers, from.museumSwiss]],
  ['DS 60884-2-D1', ['K'], 250, 13, true, true, true, false, ['Half-round earth pin.', 'Forms with flat pins for computer and medical circuits fit both kinds of socket.'], ['Afsnit 107-2-D1', 'SB 107-2-D1', '107-2-D1', 'DS 60884'], [from.wikipediaDanish, from.wikipediaStecker, from.rewirableSold]],
  ['CEI 23-50 S11', ['L'], 250, 10, true, false, true, false, ['Three pins in line, 4 mm pins on 19 mm centres.'], ['CEI 23-50 S11 10 A', 'CEI 23-50 10 A', 'CEI 23-16 10 A', 'S11'], [from.museumItalian, from.wikipediaItalian, from.pinogiunta, from.rewirableSold]],
  ['CEI 23-50 S17', ['L'], 250, 16, true, false, true, false, ['Three pins in line, 5 mm pins on 26 mm centres; does not mate with 10 A sockets.'], ['CEI 23-50 S17 16 A', 'CEI 23-50 16 A', 'CEI 23-16 16 A', 'S17'], [from.museumItalian, from.wikipediaItalian, from.rewirableSold]],
  ['IEC 60906-1', ['N'], 250, 16, true, true, true, false, ['4.5 mm sleeved pins; South Africa.'], ['SANS 164-2', 'IEC 60906-1 16 A'], [from.museumIec, from.wikipediaIec, from.rewirableSold]],
  ['NBR 14136 10 A', ['N'], 250, 10, true, true, true, false, ['4.0 mm pins; used at both 127 V and 220 V; not fully compatible with IEC 60906-1.'], ['NBR 14136'], [from.museumIec, from.wikipediaIec, from.nbr]],
  ['NBR 14136 20 A', ['N'], 250, 20, true, true, true, false, ['4.8 mm pins; enters sockets of 20 A only.'], [], [from.museumIec, from.wikipediaIec, from.nbr]],
  ['TIS 166-2549', ['O'], 250, 10, true, true, false, false, ['Only moulded plugs on cords are on sale.'], ['TIS 166'], [from.museumThai, from.worldStandardsO], { doubt: 'The museum says 10 A, World Standards 16 A: the lower figure is taken.' }],
])

export const plugTypesTable = table<PlugType>({
  name: 'plugs',
  title: 'Mains plugs',
  intro: 'Ratings of the plugs by their standards, and whether one may be fitted by hand.',
  rows: plugTypes,
  id: ({ name }) => [name],
  columns: [
    { key: 'name', title: 'Plug' },
    { key: 'letters', title: 'Letters', as: 'socket', known: () => socketLetters },
    { key: 'ratedV', title: 'Rated', unit: 'V', oneOf: [125, 250] },
    { key: 'ratedA', title: 'Rated', unit: 'A', from: 0.2, to: 20 },
    { key: 'earthed', title: 'Earthed' },
    { key: 'polarised', title: 'Polarised' },
    { key: 'rewirable', title: 'Rewirable', none: 'not known' },
    { key: 'fused', title: 'Fused' },
    { key: 'aliases', title: 'Also written', names: true },
    { key: 'notes', title: 'Notes', between: ' ' },
  ],
  whole: (rows) => namedTwice(rows, ({ name, aliases }) => [name, ...aliases]),
})
