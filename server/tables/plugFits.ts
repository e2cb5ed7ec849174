import { frozen } from './frozen.js'
import { countryRows } from './mainsCountries.js'
import * as from from './plugSources.js'
import { plugTypes } from './plugTypes.js'
import { socketLetters } from './socketLetters.js'
import type { Sourced } from './sourced.js'
import { table } from './table.js'

export interface FitRow extends Sourced {
  /** names of plugTypes.ts */
  readonly plugs: readonly string[]
  /** IEC letters of the socket */
  readonly letters: readonly string[]
  /** which sockets of that letter */
  readonly socket: string
  /** ISO 3166-1 alpha-2 where the row holds for the sockets of these countries only */
  readonly countries?: readonly string[]
  /** 'rare': an old or special socket that does not decide for the letter */
  readonly commonness: 'usual' | 'rare'
  readonly fits: 'yes' | 'forced' | 'no'
  readonly earth: 'made' | 'lost' | 'not applicable' | 'depends'
  readonly note: string
  /** goes in, but is not what to buy for the socket */
  readonly substitute?: true
}

type Rest = Partial<Pick<FitRow, 'countries' | 'doubt' | 'commonness' | 'substitute'>>

const row =
  (fits: FitRow['fits'], earth: FitRow['earth']) =>
  (
    plugs: string | readonly string[],
    letters: string,
    socket: string,
    note: string,
    sources: FitRow['sources'],
    rest: Rest = {},
  ): FitRow => ({
    plugs: typeof plugs === 'string' ? [plugs] : plugs,
    letters: letters.split(' '),
    socket,
    commonness: 'usual',
    fits,
    earth,
    note,
    sources,
    ...rest,
  })

const yes = row('yes', 'not applicable')
const yesEarthed = row('yes', 'made')
const yesEarthLost = row('yes', 'lost')
const yesEarthDepends = row('yes', 'depends')
const forced = row('forced', 'not applicable')
const forcedEarthLost = row('forced', 'lost')
const no = row('no', 'not applicable')

const rare = { commonness: 'rare' } as const
const substitute = { substitute: true } as const
const europlug = 'CEE 7/16'
const contour = 'CEE 7/17'
const continental = ['CEE 7/7', 'CEE 7/4', 'CEE 7/6'] as const
const american = ['NEMA 1-15P', 'NEMA 1-15P unpolarised', 'NEMA 5-15P', 'NEMA 5-20P', 'NEMA 6-15P'] as const
const japanese = ['JIS C 8303 two-pin', 'JIS C 8303 three-pin'] as const
const typeI = [
  'AS/NZS 3112 10 A',
  'AS/NZS 3112 10 A two-pin',
  'AS/NZS 3112 15 A',
  'IRAM 2073 10 A',
  'GB 1002 three-pin',
] as const
const american220 = ['PE', 'PH', 'VN', 'KH', 'LA'] as const
const swissSources = [from.swissSellers, from.museumSwiss]
const israeliSources = [from.museumIsraeli, from.worldStandardsH]
const italianSources = [from.museumItalian, from.wikipediaItalian]
const danishSources = [from.wikipediaDanish, from.wikipediaStecker]
const thaiSources = [from.museumThai, from.worldStandardsO]
const iecSources = [from.museumIec, from.wikipediaIec]
const nemaSources = [from.wikipediaNema, from.plugAndCable]

/** Plugs that go into a socket, or notably do not. Where one row is silent, `differentShape` below may speak. */
// biome-ignore format: a row a line
const particular: readonly FitRow[] = [
  // CEE 7/16
  yes(europlug, 'C E F', 'CEE 7/1, 7/5, 7/3', 'Class II only, 2.5 A.', [from.museumEuroplug, from.wikipediaEuroplug]),
  yes(europlug, 'J', 'SN 441011 T12, T13, T23', 'Class II only, 2.5 A.', swissSources),
  yes(europlug, 'K', 'DS 60884-2-D1', 'Class II only, 2.5 A.', danishSources),
  yes(europlug, 'L', 'CEI 23-50 P11 or P17/11', 'Class II only, 2.5 A.', italianSources),
  no(europlug, 'L', 'CEI 23-50 of 16 A only', 'Holes on 26 mm.', italianSources, rare),
  yes(europlug, 'H', 'SI 32 since 1989', 'Older sockets for flat pins only do not take it. Class II only, 2.5 A.', israeliSources),
  yes(europlug, 'N', 'IEC 60906-1, NBR 14136', 'In Brazil the socket may carry 127 V or 220 V. Class II only, 2.5 A.', [from.museumEuroplug, from.wikipediaEuroplug]),
  yes(europlug, 'O', 'TIS 166-2549', 'Class II only, 2.5 A.', thaiSources),
  yes(europlug, 'A C', 'two-pin outlet for A and C', 'Not in the three-pin outlet. Class II only, 2.5 A.', [from.wikipediaEurostecker], { countries: ['CN'] }),
  forced(europlug, 'G', 'BS 1363', 'Goes in only if the shutters are defeated through the earth hole: dangerous, and no fuse protects the cord.', [from.forcedShutters, from.wikipediaEurostecker, from.bs1363Converter]),
  forced(europlug, 'D', 'BS 546 5 A, IS 1293 6 A', 'Spacing nearly equal but the holes suit thicker pins: loose contact, not intended.', [from.bs546], { doubt: 'From memory only.' }),
  no(europlug, 'M', 'BS 546 15 A', 'Spacing 25.4 mm.', [from.bs546]),
  no(europlug, 'I', 'AS/NZS 3112', 'Round pins, slanted flat slots.', [from.wikipediaEurostecker]),
  no(europlug, 'A B', 'NEMA or JIS', 'Some combination outlets take both.', [from.wikipediaEurostecker]),
  // CEE 7/17
  yes(contour, 'C E F', 'CEE 7/1, 7/5, 7/3', 'Class II only.', [from.museumContour]),
  yes(contour, 'K', 'DS 60884-2-D1', 'Class II only.', danishSources),
  yes(contour, 'O', 'TIS 166-2549', 'Pins may stay touchable when part-way out.', thaiSources, substitute),
  no(contour, 'J', 'SN 441011 T13, T23', 'The recess keeps it out.', swissSources),
  forced(contour, 'J', 'SN 441011 T12, flush', '4.8 mm pins in holes meant for 4 mm; not permitted.', [from.swiss, ...swissSources], { doubt: 'The hole size is from memory.' }),
  forced(contour, 'H', 'SI 32', '4.8 mm pins; hard to withdraw, by analogy with CEE 7/7.', [from.worldStandardsH]),
  no(contour, 'L', 'CEI 23-50 10 A', '4.8 mm pins are thicker than the holes.', [from.cei]),
  no(contour, 'G', 'BS 1363', 'Round pins, rectangular holes and shutters.', [from.bs1363]),
  // CEE 7/7, 7/4, 7/6
  yesEarthed('CEE 7/7', 'E', 'CEE 7/5', 'One way round only.', [from.museumHybrid]),
  yesEarthed('CEE 7/7', 'F', 'CEE 7/3', 'Either way round: line and neutral are not fixed.', [from.museumHybrid]),
  yesEarthed('CEE 7/4', 'F', 'CEE 7/3', 'Either way round: line and neutral are not fixed.', [from.wikipediaSchuko]),
  no('CEE 7/4', 'E', 'CEE 7/5', "The socket's earth pin blocks a plug without the hole.", [from.wallSwitches]),
  yesEarthed('CEE 7/6', 'E', 'CEE 7/5', 'One way round only.', [from.wikipediaFrench]),
  forcedEarthLost('CEE 7/6', 'F', 'CEE 7/3', 'Not made for each other; the earth is not made.', [from.kyAutomation, from.toughLeads], { doubt: 'One trade page says it mates without earth, others call the two incompatible: treated as not allowed.' }),
  yesEarthLost(continental, 'C', 'CEE 7/1', 'The socket has no earth contact.', [from.wikipediaCee7]),
  yesEarthLost(continental, 'K', 'DS 60884-2-D1', 'The earth contacts meet nothing in the Danish socket.', [...danishSources, from.powercords]),
  forcedEarthLost(continental, 'L', 'CEI 23-50 P11', 'Must be forced, and the earth is left out.', [from.gufosaggio]),
  yesEarthed(['CEE 7/7', 'CEE 7/4'], 'L', 'CEI 23-50 P30, P40', 'The combined Italian socket has side contacts.', [from.cei], rare),
  forcedEarthLost(continental, 'J', 'SN 441011 T12, flush', 'The recess of the T13 exists to stop this.', swissSources),
  no(continental, 'J', 'SN 441011 T13, T23', 'The recess keeps it out.', swissSources),
  forcedEarthLost(continental, 'H', 'SI 32', 'Pins 0.3 mm too thick, hard to withdraw.', israeliSources),
  yesEarthLost(continental, 'O', 'TIS 166-2549', 'Enters, but the earth is not made and live pins stay touchable.', thaiSources),
  no(continental, 'N', 'IEC 60906-1, NBR 14136', 'Rim or recess and pin size keep it out.', iecSources),
  no(continental, 'G', 'BS 1363', 'Needs a fused, earthed converter plug.', [from.bs1363]),
  // American and Japanese
  yes('NEMA 1-15P unpolarised', 'A B', 'NEMA 1-15R, 5-15R', '', nemaSources),
  yes('NEMA 1-15P unpolarised', 'A B', 'JIS C 8303', 'The socket carries 100 V.', [from.techwalla], { countries: ['JP'] }),
  yes('NEMA 1-15P', 'A B', 'NEMA 1-15R with a wide neutral slot, 5-15R', '', nemaSources),
  no('NEMA 1-15P', 'A', 'old NEMA 1-15R with two narrow slots', 'The wide blade does not enter.', nemaSources, rare),
  yes('NEMA 1-15P', 'A B', 'JIS C 8303 with a wide neutral slot', 'The socket carries 100 V.', [from.wikipediaJapan], { countries: ['JP'] }),
  no('NEMA 1-15P', 'A', 'JIS C 8303 with two narrow slots', 'The wide blade does not enter.', [from.wikipediaNema, from.techwalla], { countries: ['JP'] }),
  yes('JIS C 8303 two-pin', 'A B', 'JIS C 8303', '', [from.wikipediaJapan], { countries: ['JP'] }),
  yes('JIS C 8303 two-pin', 'A B', 'NEMA 1-15R, 5-15R', 'Equipment for 100 V only then gets 120 V (+20 %).', [from.wikipediaJapan, ...nemaSources], substitute),
  yesEarthed('JIS C 8303 three-pin', 'B', 'JIS C 8303', '', [from.wikipediaJapan], { countries: ['JP'] }),
  yesEarthed('JIS C 8303 three-pin', 'B', 'NEMA 5-15R', 'Equipment for 100 V only then gets 120 V (+20 %).', [from.jis], substitute),
  yesEarthed('NEMA 5-15P', 'B', 'NEMA 5-15R', '', [from.plugAndCable]),
  yesEarthed('NEMA 5-20P', 'B', 'NEMA 5-20R', '', [from.nema], rare),
  no('NEMA 5-20P', 'B', 'NEMA 5-15R', 'One blade is turned a quarter.', [from.nema]),
  no(['NEMA 5-15P', 'NEMA 5-20P', 'JIS C 8303 three-pin'], 'A', 'NEMA 1-15R or a Japanese two-slot outlet', 'No hole for the earth pin.', nemaSources),
  no('NEMA 6-15P', 'A B', 'NEMA 1-15R, 5-15R', 'Both blades lie across the slots.', [from.nema]),
  yes(['NEMA 1-15P', 'NEMA 1-15P unpolarised', 'JIS C 8303 two-pin', 'GB 1002 two-pin'], 'A B', 'outlet of American shape', 'The outlet carries 220 to 230 V.', [from.shapesDiffer], { countries: american220 }),
  yesEarthDepends(['NEMA 5-15P', 'JIS C 8303 three-pin'], 'B', 'outlet of American shape', 'The outlet carries 220 to 230 V; its earth hole is often not wired.', [from.earthOftenMissing], { countries: american220 }),
  yes(['NEMA 1-15P', 'NEMA 1-15P unpolarised', 'JIS C 8303 two-pin'], 'A', 'two-pin outlet for A and C', 'The outlet carries 220 V.', [from.gb1002], { countries: ['CN'], substitute: true }),
  yes(['NEMA 1-15P', 'NEMA 1-15P unpolarised', 'JIS C 8303 two-pin', 'GB 1002 two-pin'], 'O', 'TIS 166-2549', 'The outlet carries 230 V.', thaiSources, substitute),
  yesEarthed(['NEMA 5-15P', 'JIS C 8303 three-pin'], 'O', 'TIS 166-2549', 'The outlet carries 230 V.', thaiSources, substitute),
  yes('GB 1002 two-pin', 'A B', 'NEMA 1-15R, 5-15R', 'Equipment for 220 V then gets 120 V.', [from.gb1002], substitute),
  yes('GB 1002 two-pin', 'A', 'two-pin outlet for A and C', '', [from.gb1002], { countries: ['CN'] }),
  // British
  yesEarthed('BS 1363', 'G', 'BS 1363-2', 'This socket only; the plug fuse protects the cord.', [from.patTesting]),
  yesEarthed('BS 546 5 A', 'D', 'BS 546 5 A, IS 1293 6 A', 'No fuse in the plug.', [from.wikipediaBs546]),
  no('BS 546 5 A', 'M', 'BS 546 15 A', 'The sizes do not interchange.', [from.wikipediaBs546]),
  yesEarthed('BS 546 5 A', 'M', 'Indian socket for 6 A and 16 A', 'Takes both sizes.', [from.is1293], rare),
  yesEarthed('BS 546 15 A', 'M', 'BS 546 15 A, SANS 164-1', 'No fuse in the plug.', [from.wikipediaBs546]),
  no('BS 546 15 A', 'D G', 'BS 546 5 A, BS 1363', 'The sizes do not interchange.', [from.wikipediaBs546]),
  no('BS 4573', 'E F', 'CEE 7/5, 7/3', 'Pin size and spacing differ from CEE 7/16.', [from.wikipediaBs546]),
  // Australasian, Argentine, Chinese
  yesEarthed('AS/NZS 3112 10 A', 'I', 'AS/NZS 3112 10 A or 15 A', '', [from.wikipediaAustralia]),
  yes('AS/NZS 3112 10 A two-pin', 'I', 'AS/NZS 3112 10 A or 15 A', '', [from.wikipediaAustralia]),
  yesEarthed('AS/NZS 3112 15 A', 'I', 'AS/NZS 3112 15 A', '', [from.wikipediaAustralia], rare),
  no('AS/NZS 3112 15 A', 'I', 'AS/NZS 3112 10 A', 'Wide earth pin; never file it down.', [from.wikipediaAustralia]),
  yesEarthed('AS/NZS 3112 10 A', 'I', 'GB 1002', 'Same places of line and neutral, socket mounted upside down.', [from.wikipediaAustralia], { countries: ['CN'], substitute: true }),
  yes('AS/NZS 3112 10 A two-pin', 'I', 'GB 1002', 'Same places of line and neutral, socket mounted upside down.', [from.wikipediaAustralia], { countries: ['CN'], substitute: true }),
  yesEarthed('AS/NZS 3112 10 A', 'I', 'IRAM 2071', 'Line and neutral reversed: a single-pole switch or fuse ends up in the neutral.', [from.wikipediaAustralia], { countries: ['AR'], substitute: true }),
  yes('AS/NZS 3112 10 A two-pin', 'I', 'IRAM 2071', 'Line and neutral reversed: a single-pole switch or fuse ends up in the neutral.', [from.wikipediaAustralia], { countries: ['AR'], substitute: true }),
  yesEarthed('IRAM 2073 10 A', 'I', 'IRAM 2071', '', [from.wikipediaTypeI], { countries: ['AR'] }),
  yesEarthed('IRAM 2073 10 A', 'I', 'AS/NZS 3112 10 A', 'Line and neutral reversed: a single-pole switch or fuse ends up in the neutral.', [from.wikipediaAustralia], substitute),
  yesEarthed('GB 1002 three-pin', 'I', 'GB 1002', '', [from.wikipediaAustralia], { countries: ['CN'] }),
  yesEarthed('GB 1002 three-pin', 'I', 'AS/NZS 3112 10 A', 'Pins are 1 mm longer, so live metal may stay exposed; not approved there.', [from.wikipediaAustralia], { doubt: 'Whether live metal stays exposed was not confirmed.', substitute: true }),
  // Swiss, Danish, Italian, Israeli
  yes('SN 441011 T11', 'J', 'SN 441011 T12, T13, T15, T23', 'Class II only.', swissSources),
  yesEarthed('SN 441011 T12', 'J', 'SN 441011 T12, T13, T23', '', swissSources),
  no('SN 441011 T23', 'J', 'SN 441011 T13', 'Rectangular 16 A pins.', swissSources),
  yesEarthed('SN 441011 T23', 'J', 'SN 441011 T23', '', swissSources),
  no('SN 441011 T12', 'N', 'IEC 60906-1, NBR 14136', 'Looks alike, but the earth offset differs and line and neutral are the other way round.', [...swissSources, ...iecSources]),
  no(['IEC 60906-1', 'NBR 14136 10 A', 'NBR 14136 20 A'], 'J', 'SN 441011 T13', 'The earth offset differs.', [...swissSources, ...iecSources]),
  yesEarthed('DS 60884-2-D1', 'K', 'DS 60884-2-D1', '', danishSources),
  yesEarthed('CEI 23-50 S11', 'L', 'CEI 23-50 P11 or P17/11', '', italianSources),
  yesEarthed('CEI 23-50 S11', 'L', 'CEI 23-50 P30, P40', '', [from.cei], rare),
  no('CEI 23-50 S11', 'L', 'CEI 23-50 P17 of 16 A only', 'Holes on 26 mm.', italianSources, rare),
  yesEarthed('CEI 23-50 S17', 'L', 'CEI 23-50 P17 or P17/11', '', italianSources),
  no('CEI 23-50 S17', 'L', 'CEI 23-50 P11', 'Holes on 19 mm.', italianSources),
  no('CEI 23-50 S11', 'C E F', 'CEE 7/1, 7/5, 7/3', 'The centre earth pin meets the plate.', [from.pinogiunta]),
  yesEarthed(['SI 32', 'SI 32 flat pins'], 'H', 'SI 32 since 1989', '', israeliSources),
  no('SI 32', 'H', 'old SI 32 for flat pins', 'The older socket takes flat pins only.', israeliSources, rare),
  // N and O
  yesEarthed('NBR 14136 10 A', 'N', 'NBR 14136 10 A or 20 A', 'Same shape at 127 V and 220 V.', [...iecSources, from.nbr], { countries: ['BR'] }),
  no('NBR 14136 20 A', 'N', 'NBR 14136 10 A', '4.8 mm pins.', [from.nbr], { countries: ['BR'] }),
  yesEarthed('NBR 14136 20 A', 'N', 'NBR 14136 20 A', '', [...iecSources, from.nbr], { countries: ['BR'] }),
  no('IEC 60906-1', 'N', 'NBR 14136 10 A', '4.5 mm pins, 4.0 mm holes; the Brazilian standard is not compatible.', [...iecSources, from.nbr], { countries: ['BR'] }),
  yesEarthed('IEC 60906-1', 'N', 'IEC 60906-1, SANS 164-2', '', iecSources),
  yesEarthed('TIS 166-2549', 'O', 'TIS 166-2549', 'Earths only if the installation has an earth.', thaiSources),
  no('TIS 166-2549', 'H K', 'SI 32, DS 60884-2-D1', 'Look alike, do not interchange.', [from.worldStandardsO]),
]

/** Systems that share no shape at all. */
const differentShape: readonly FitRow[] = [
  no(
    'BS 1363',
    'A B C D E F H I J K L M N O',
    'any other',
    'An adapter that drops the earth pin or the fuse takes both protections away.',
    [from.patTesting, from.wikipediaBs1363],
  ),
  no(
    [...american, ...japanese],
    'C D E F G H I J K L M N',
    'any of these',
    'No direct fit; adapters of two pins change the shape only, not the voltage.',
    [from.shapesDiffer],
  ),
  no(['NEMA 5-20P', 'NEMA 6-15P'], 'O', 'TIS 166-2549', 'Turned blades.', [from.shapesDiffer]),
  no('GB 1002 two-pin', 'C D E F G H I J K L M N', 'any of these', 'Flat pins.', [from.shapesDiffer]),
  no(contour, 'A B D I M', 'any of these', 'Pins of another shape or spacing.', [from.shapesDiffer]),
  no(continental, 'A B D I M', 'any of these', 'Pins of another shape or spacing.', [from.shapesDiffer]),
  no('BS 546 5 A', 'A B C E F G H I J K L N O', 'any other', 'Three round pins in a large triangle.', [from.bs546]),
  no('BS 546 15 A', 'A B C E F H I J K L N O', 'any other', 'Three round pins in a large triangle.', [from.bs546]),
  no(typeI, 'A B C D E F G H J K L M N O', 'any other', 'Slanted flat pins.', [from.australia]),
  no(
    ['SN 441011 T12', 'SN 441011 T23'],
    'A B C D E F G H I K L M O',
    'any other',
    'The offset earth pin has no hole.',
    [from.shapesDiffer],
  ),
  no('SN 441011 T23', 'N', 'IEC 60906-1, NBR 14136', 'Rectangular pins.', [from.shapesDiffer]),
  no('SN 441011 T11', 'A B G I M', 'any of these', 'Pins of another shape or spacing.', [from.shapesDiffer]),
  no('DS 60884-2-D1', 'E F', 'CEE 7/5, 7/3', 'The earth pin has no hole.', [from.danish]),
  no('DS 60884-2-D1', 'A B C D G H I J L M N O', 'any other', 'The earth pin has no hole.', [from.shapesDiffer]),
  no('CEI 23-50 S11', 'A B D G H I J K M N O', 'any other', 'Three pins in line.', [from.shapesDiffer]),
  no('CEI 23-50 S17', 'A B C D E F G H I J K M N O', 'any other', 'Three pins in line, on 26 mm.', [from.shapesDiffer]),
  no(['SI 32', 'SI 32 flat pins'], 'A B C D E F G I J K L M N O', 'any other', 'Three pins in a triangle of its own.', [
    from.shapesDiffer,
  ]),
  no(
    ['IEC 60906-1', 'NBR 14136 10 A', 'NBR 14136 20 A'],
    'A B C D E F G H I K L M O',
    'any other',
    'The offset earth pin has no hole.',
    [from.shapesDiffer],
  ),
  no('TIS 166-2549', 'A B C D E F G I J L M N', 'any other', 'The earth pin has no hole.', [from.shapesDiffer]),
]

export const plugFits: readonly FitRow[] = frozen([...particular, ...differentShape])

export const plugFitsTable = table<FitRow>({
  name: 'plug-fits',
  title: 'Which plug goes into which socket',
  intro:
    'Going in is not enough: the earth column says whether the earth is made. “forced” means that it enters with force or a tool, and is refused. A rare socket does not decide for its letter.',
  rows: plugFits,
  id: ({ plugs, letters, socket, countries = [] }) => [plugs[0] ?? '', 'in', ...letters, socket, ...countries],
  columns: [
    {
      key: 'plugs',
      title: 'Plugs in sockets',
      of: ({ plugs, letters }) => `${plugs.join(', ')} in ${letters.join(', ')}`,
      filled: true,
      known: () => plugTypes.map(({ name }) => name),
    },
    { key: 'letters', title: 'Sockets', as: 'socket', filled: true, known: () => socketLetters },
    { key: 'socket', title: 'Which of them' },
    { key: 'fits', title: 'Fits' },
    { key: 'earth', title: 'Earth' },
    { key: 'commonness', title: 'Commonness' },
    {
      key: 'countries',
      title: 'Only in',
      as: 'country',
      optional: true,
      known: () => countryRows.map(({ country }) => country),
    },
    { key: 'note', title: 'Note', optional: true },
  ],
  rules: [
    {
      fault: 'does not fit, yet says something of the earth',
      broken: ({ fits, earth }) => fits === 'no' && earth !== 'not applicable',
    },
    {
      fault: 'the earth does not agree with the plug',
      broken: ({ fits, earth, plugs }) =>
        fits !== 'no' &&
        plugTypes.some(({ name, earthed }) => plugs.includes(name) && earthed === (earth === 'not applicable')),
    },
  ],
  whole: (rows) =>
    socketLetters
      .filter((letter) => !rows.some(({ fits, letters }) => fits === 'yes' && letters.includes(letter)))
      .map((letter) => `nothing fits socket ${letter}`),
})
