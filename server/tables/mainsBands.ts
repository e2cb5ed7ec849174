import { countryRows } from './mainsCountries.js'
import { fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/**
 * 'supply' rows are what the network may deliver in normal times; only they decide a band.
 * 'rare' rows add excursions, 'equipment terminals' rows the drop inside a building, 'former' and 'proposed' rows are not in force.
 */
type BandKind = 'supply' | 'rare' | 'equipment terminals' | 'former' | 'proposed'

export interface MainsBand extends Sourced {
  readonly name: string
  readonly voltageV: number
  readonly frequenciesHz: readonly number[]
  readonly minV: number
  readonly maxV: number
  readonly kind: BandKind
  /** ISO 3166-1 alpha-2; null: wherever no national row exists */
  readonly countries: readonly string[] | null
  readonly meaning: string
}

const standardsPaper = (detail: string): Source =>
  published('Energex / Electrical Consulting and Training, "Voltage and Equipment Standards"', detail)
const dinIec = published('eco-grid.eu, questions and answers, quoting DIN IEC 60038', '207 to 253 V')
const en50160 = published(
  'Schneider Electric, technical note 7EN72-0197, "EN 50160: supply voltage variations"',
  'limits of the 10-minute mean values',
)
const ukRegulations = published(
  'Electricity Supply (Amendment) (No. 2) Regulations 1994, S.I. 1994/3021',
  '230 V +10/−6 % (legislation.gov.uk); volts as in IEE Wiring Regulations, appendix 2',
)
const ukWiring = published('IEE Wiring Regulations, appendix 2, as quoted at diynot.com', 'thread 31268')
const maryland = published('Code of Maryland Regulations 20.50.07.02, Voltage Limits', 'limits at the meter')
const ansi = published(
  'ANSI C84.1, table 1 (draft of the 2016 revision), and the PG&E "Voltage Tolerance Boundary"',
  'as noted by a reader of both',
)
const hydroQuebec = published('Hydro-Québec, "Power quality", citing CAN3-C235-83', 'limits at the service entrance')
const japan = published(
  'Yomiuri Rikou, course on the standard voltage (2018-11-07)',
  'citing Electricity Business Act art. 26 and Enforcement Regulations art. 38',
)
const watchYourPower = published('Watch Your Power, questions and answers (watchyourpower.org)', 'supply voltage')
const prodist = published(
  'ANEEL, PRODIST module 8 (Resolution 956/2021, annex VIII)',
  'limits as used in two public programs; the annex itself not seen',
)
const korea = published(
  'yaenergy.kr, library 44, on the Electric Utility Act Enforcement Rules, annex 3',
  'legal band and its change to KS C IEC 60038',
)
const saudi = published('Saudi Electricity Company, "Change of Electric Voltage" (se.com.sa)', 'nominal voltage only')
const saudiBand = fromMemory('Saudi distribution code', '±5 %')

/** CENELEC members but for the UK, which has a row of its own, and territories on the network of one. */
const european = [
  ...['AT', 'BE', 'BG', 'CH', 'CY', 'CZ', 'DE', 'DK', 'EE', 'ES', 'FI', 'FR', 'GR', 'HR', 'HU', 'IE', 'IS', 'IT'],
  ...['LT', 'LU', 'LV', 'MK', 'MT', 'NL', 'NO', 'PL', 'PT', 'RO', 'RS', 'SE', 'SI', 'SK', 'TR'],
  ...['AX', 'SJ', 'LI', 'MC', 'SM', 'VA'],
]
const unitedStates = ['US', 'PR', 'VI', 'GU', 'AS', 'MP']

// biome-ignore format: a row a line
export const mainsBands = rows<MainsBand>()(['name', 'voltageV', 'frequenciesHz', 'minV', 'maxV', 'kind', 'countries', 'meaning', 'sources'], [
  ['IEC 60038, 230/400 V systems', 230, [50], 207, 253, 'supply', null, 'supply terminals, ±10 %, normal conditions', [dinIec, standardsPaper('IEC 60038, 230 V ±10 %')]],
  ['IEC 60038, 230/400 V systems', 230, [50], 197.8, 253, 'equipment terminals', null, 'the supply band and a further 4 % lost inside the building; often printed as 198 V', [standardsPaper('the further 4 %'), fromMemory('IEC 60038:2009, annex A', '198 V'), published('emc-pstc list archive, message 26452', 'an IEE recommendation of 1996 to test at 230 V +10/−14 %, said there not to have been adopted by IEC or CENELEC')]],
  ['EN 50160, public low-voltage networks', 230, [50], 207, 253, 'supply', european, '95 % of the 10-minute mean values of a week, ±10 %', [en50160]],
  ['EN 50160, public low-voltage networks', 230, [50], 195.5, 253, 'rare', european, 'all 10-minute mean values, +10/−15 %; dips and swells shorter than that are not covered', [en50160, published('electrical-contractor.net, post 135752', '195.5 to 253 V worked out')]],
  ['HD 472 S1, change from 220 V (1995 to 2008)', 230, [50], 207, 243.8, 'former', european, 'supply terminals, +6/−10 %', [published('Change-over plan, 220/380 V to 230/400 V (scribd.com, document 193415696)', '+6/−10 %')]],
  ['Former continental 220 V systems', 220, [50], 198, 242, 'former', european, '220 V ±10 %; the band older plates of 220 V were made for', [published('emc-pstc list archive, message 26452', '220 V −10 %'), fromMemory('IEC 38, before 1983', '220 V +10 %')]],
  ['UK statutory', 230, [50], 216.2, 253, 'supply', ['GB'], 'supply terminals, +10/−6 %', [ukRegulations, ukWiring, fromMemory('ESQCR 2002, S.I. 2002/2665, regulation 27', 'carries it on')]],
  ['UK before 1 January 1995', 240, [50], 225.6, 254.4, 'former', ['GB'], '240 V ±6 %; many supplies still lie near 240 V', [ukWiring, published('emc-pstc list archive, message 12475', 'supplies still near 240 V')]],
  ['AS 60038:2000', 230, [50], 216.2, 253, 'supply', ['AU'], 'point of supply, +10/−6 %; wiring rules allow a further 5 % drop', [standardsPaper('AS 60038:2000')]],
  ['AS 61000.3.100:2011', 230, [50], 225.4, 243.8, 'supply', ['AU'], 'preferred range, +6/−2 %', [published('budgetlightforum.com, thread 37817', 'text of unnamed origin'), fromMemory('AS 61000.3.100', 'the same figures')]],
  ['AS 2926, Australia before 2000', 240, [50], 225.6, 254.4, 'former', ['AU'], '240 V ±6 %', [standardsPaper('AS 2926 and its nominal voltage'), fromMemory('AS 2926', '±6 %')]],
  ['New Zealand, Electricity (Safety) Regulations 2010', 230, [50], 216.2, 243.8, 'supply', ['NZ'], 'point of supply, ±6 %; wiring rules allow a further 5 % drop', [standardsPaper('citing Electricity (Safety) Regulations 2010')]],
  ['ANSI C84.1, range A, service', 120, [60], 114, 126, 'supply', unitedStates, 'at the meter, ±5 %; the everyday range', [maryland, ansi]],
  ['ANSI C84.1, range A, utilization', 120, [60], 108, 126, 'equipment terminals', unitedStates, 'at the socket; older editions 110 V for circuits with lighting', [ansi, fromMemory('ANSI C84.1-1995 and -2011', 'assignment, and the older figure')], { doubt: 'The draft read does not show for certain that 108 V belongs to range A.' }],
  ['ANSI C84.1, range B, service', 120, [60], 110, 127, 'rare', unitedStates, 'at the meter, short or infrequent excursions, about +5.8/−8.3 %', [ansi]],
  ['ANSI C84.1, range B, utilization', 120, [60], 104, 127, 'rare', unitedStates, 'at the socket, about +6/−13 %; older editions 106 V for circuits with lighting', [ansi, published('ustpower.com, utility voltage levels', '+6/−13 %'), fromMemory('ANSI C84.1-1995', 'the older figure')]],
  ['Maryland, 120/240 V split phase', 240, [60], 228, 252, 'supply', unitedStates, 'at the meter, line to line, ±5 %', [maryland]],
  ['Illinois', 120, [60], 113, 127, 'rare', ['US'], 'one state: at the point of delivery, for longer than two minutes', [published('83 Illinois Administrative Code 410.300, as quoted at forums.mikeholt.com', 'thread 2569799')]],
  ['CAN3-C235-83, normal operating conditions', 120, [60], 110, 125, 'supply', ['CA'], 'service entrance, single phase 120/240 V', [hydroQuebec]],
  ['CAN3-C235-83, as reviewed elsewhere', 120, [60], 114, 126, 'supply', ['CA'], 'service; that review gives 110 to 125 V as the range at the equipment', [published('tnlab.org, review of voltage standards', 'Canada, service voltage')]],
  ['CAN3-C235-83, extreme operating conditions', 120, [60], 106, 127, 'rare', ['CA'], 'service entrance; outside the normal range the utility plans a correction', [hydroQuebec]],
  ['Japan, 100 V', 100, [50, 60], 95, 107, 'supply', ['JP'], 'supply point, 101 V ±6 V', [japan]],
  ['Japan, 200 V', 200, [50, 60], 182, 222, 'supply', ['JP'], 'supply point, 202 V ±20 V', [japan]],
  ['Japan, as listed in 1989', 100, [50, 60], 90, 110, 'former', ['JP'], '±10 %', [published('BSI, World Electricity Supplies, 5th edition (1989), as quoted in the emc-pstc list archive', 'message 26186')]],
  ['India, usual state regulations', 230, [50], 216, 244, 'supply', ['IN'], 'single phase at the consumer, 230 V ±6 %', [watchYourPower]],
  ['India, IS 12360, states with 240 V', 240, [50], 226, 254, 'supply', ['IN'], '240 V ±6 %', [watchYourPower]],
  ['India, proposed alignment to IEC', 230, [50], 207, 253, 'proposed', ['IN'], '230 V ±10 %', [watchYourPower]],
  ['PRODIST module 8, 127 V, adequate', 127, [60], 117, 133, 'supply', ['BR'], 'adequate reading at the supply point', [prodist]],
  ['PRODIST module 8, 127 V, critical', 127, [60], 110, 135, 'rare', ['BR'], 'a reading outside is critical', [prodist]],
  ['PRODIST module 8, 220 V, adequate', 220, [60], 202, 231, 'supply', ['BR'], 'adequate reading at the supply point', [prodist]],
  ['PRODIST module 8, 220 V, critical', 220, [60], 191, 233, 'rare', ['BR'], 'a reading outside is critical', [prodist]],
  ['Taiwan', 110, [60], 104.5, 115.5, 'supply', ['TW'], 'lighting circuits, ±5 %; power circuits ±10 %', [fromMemory('Taiwan, supply voltage rules under the Electricity Act', '±5 and ±10 %')], { doubt: 'From memory only.' }],
  ['South Korea, legal band', 220, [60], 207, 233, 'supply', ['KR'], '220 V ±13 V', [korea]],
  ['South Korea, band as amended', 220, [60], 198, 242, 'supply', ['KR'], '220 V ±22 V, the change to KS C IEC 60038; whether in force was not found', [korea]],
  ['South Korea, old 110 V supplies', 110, [60], 104, 116, 'former', ['KR'], '110 V ±6 V', [fromMemory('Electric Utility Act Enforcement Rules (Korea), annex 3', '110 V ±6 V')]],
  ['Saudi Arabia, old supply', 127, [60], 120.7, 133.4, 'supply', ['SA'], '±5 %', [saudi, saudiBand], { doubt: 'The band is from memory only.' }],
  ['Saudi Arabia, new supply', 230, [60], 218.5, 241.5, 'supply', ['SA'], '±5 %', [saudi, saudiBand], { doubt: 'The band is from memory only.' }],
  ['South Africa, NRS 048-2', 230, [50], 207, 253, 'supply', ['ZA'], 'compatibility level ±10 % for supplies below 500 V', [fromMemory('NRS 048-2:2003', '±10 %')]],
  ['GB/T 12325-2008, single phase', 220, [50], 198, 235.4, 'supply', ['CN'], 'supply terminals, +7/−10 %', [published('GB/T 12325-2008', '198.0 and 235.4 V as used in a public program; the standard itself not seen'), published('docs.whres.net (2026-01-08)', 'scope of the standard')]],
  ['Hong Kong, supply rules', 220, [50], 206.8, 233.2, 'supply', ['HK'], 'supply point, ±6 %', [published('The Hongkong Electric Co., Supply Rules (2008)', 'rule 202')]],
  ['Malaysia', 230, [50], 216.2, 253, 'supply', ['MY'], '+10/−6 %', [fromMemory('MS IEC 60038', '+10/−6 %')], { doubt: 'From memory only.' }],
  ['Singapore', 230, [50], 216.2, 243.8, 'supply', ['SG'], '±6 %', [fromMemory('Singapore supply code', '±6 %')], { doubt: 'From memory only.' }],
  ['Philippine Distribution Code', 230, [60], 207, 253, 'supply', ['PH'], 'long-duration variation, ±10 %', [published('electricityworks.blogspot.com (2008-07-26), on the Philippine Distribution Code, art. 3.2', '±10 %'), fromMemory('Philippine Distribution Code', '207 to 253 V')]],
  ['Mexico', 127, [60], 114.3, 139.7, 'supply', ['MX'], '±10 %', [fromMemory('NMX-J-098-ANCE', '±10 %')], { doubt: 'From memory only.' }],
  ['GOST 29322-2014', 230, [50], 207, 253, 'supply', ['RU'], '230 V ±10 %; 5 % is the normal deviation, 10 % the limit', [published('rdvfm.ru, on voltage norms', 'GOST 29322-2014'), published('web.kiozk.ru, "220 or 230 V"', 'nominal voltage')]],
])

export const mainsBandsTable = table<MainsBand>({
  name: 'tolerance-bands',
  title: 'Mains tolerance bands',
  intro:
    'How far the mains may stray from its nominal voltage. Rows of the kind “supply” decide; the others are shown for comparison and decide nothing.',
  rows: mainsBands,
  id: ({ name, voltageV, frequenciesHz, kind, minV, maxV }) => [name, voltageV, ...frequenciesHz, kind, minV, maxV],
  columns: [
    { key: 'name', title: 'Rule' },
    { key: 'voltageV', title: 'Nominal', unit: 'V' },
    { key: 'frequenciesHz', title: 'Frequency', each: 'Hz', between: ' or ', oneOf: [50, 60], filled: true },
    { key: 'minV', title: 'From', unit: 'V' },
    { key: 'maxV', title: 'To', unit: 'V' },
    { key: 'kind', title: 'Kind' },
    {
      key: 'countries',
      title: 'Where',
      as: 'country',
      none: 'wherever no national row stands',
      known: () => countryRows.map(({ country }) => country),
    },
    { key: 'meaning', title: 'Meaning' },
  ],
  rules: [
    {
      fault: 'does not hold its nominal voltage',
      broken: ({ voltageV, minV, maxV }) => !(minV < voltageV && voltageV < maxV),
    },
    { fault: 'reaches below 80 %', broken: ({ voltageV, minV }) => !(minV / voltageV >= 0.8) },
    { fault: 'reaches above 115 %', broken: ({ voltageV, maxV }) => !(maxV / voltageV <= 1.15) },
  ],
})
