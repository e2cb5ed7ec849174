import {
  type BreakingLetter,
  breakingLetters,
  type Characteristic,
  characteristics,
  type FuseScheme,
  type NoLink,
} from '../tables/fuseMarks.js'
import {
  bs1362BreakingA,
  bs1362LargestA,
  bs1362RatedV,
  bs1362Ratings,
  iecBreakingCapacity,
  plausibleRatedA,
} from '../tables/fuseRatings.js'
import { damagedPiece } from './fuseDamage.js'
import { type Draft, distinct, scan, tidy } from './fuseMarkingScan.js'
import { noLinkOf } from './noFuseLink.js'

/** What a fuse-link is, as far as it is known. Unknown is null. */
export interface FittedFuse {
  ratedA: number | null
  ratedV: number | null
  /** FF, F, M, T or TT */
  characteristic: Characteristic | null
  /** L, E or H */
  breaking: BreakingLetter | null
  breakingCapacityA: number | null
  scheme: FuseScheme | null
}

/** What is printed on a fuse-link or beside its holder. */
export interface FuseMarking extends FittedFuse {
  /** "5x20", "6.3x32" …, only where it is printed or a symbol stands for it */
  sizeMm: string | null
  /** rated voltage on direct current [V]; null where none is printed */
  ratedDcV: number | null
  /** what it can break, as printed, and at which voltage; null: at its rated voltage */
  printedBreaking: { valueA: number; atV: number | null }[] | null
  /** voltage of the circuit that is named beside it [V], which is not the link's */
  circuitV: number | null
  /** how many links are named, one for each pole */
  links: number | null
  /** what is named instead of a fuse-link; then nothing of it is read as one */
  noLink: NoLink | null
  /** every piece of the text that found no place */
  unread: string[]
  /** what a reader should know about this marking, in plain words */
  notes: string[]
}

/**
 * Reads the marking of a fuse-link, or what is printed beside its holder.
 *
 * Forms of IEC 60127 in any order and spacing (below 1 A the number is in mA and the unit may be left out: T315 is
 * 315 mA, T3.15 is 3.15 A), decimal comma, words for the speed in several languages, North American fractions and
 * words, BS 1362, BS 646, body sizes, colour bands and makers' catalogue symbols. Nothing is guessed: what is not
 * printed is null, what is printed twice with two values is null, and what found no place stands in `unread`.
 *
 * @param text  as printed; any length, read in one pass
 * @source IEC 60127-1 clause 6.1, IEC 60127-2 clause 6.1, IEC 60127-1 table A.1
 */
export function readFuseMarking(text: string): FuseMarking {
  const printed = tidy(text)
  const noLink = noLinkOf(printed)
  if (noLink)
    return {
      ...nothingRead,
      noLink,
      unread: printed.split(/\s+/).filter(Boolean),
      notes: [`This names a ${noLink}, which is another thing than a fuse-link: nothing of it is read as one.`],
    }
  const draft = scan(printed)
  const { unread, notes } = draft
  const letters = lettersThatCount(draft).filter(
    ({ word, scheme }) => !(draft.northAmerican && word && scheme === 'IEC'),
  )
  const schemes = distinct([
    ...draft.schemes,
    ...(draft.northAmerican ? (['UL'] as const) : []),
    ...letters.flatMap((letter) => letter.scheme ?? []),
  ])

  const breakingLetter = distinct(draft.breaking)
  const breaking = breakingLetter.length === 1 ? (breakingLetter[0] ?? null) : null
  if (breakingLetter.length > 1)
    notes.push(`Two breaking-capacity letters are printed: ${breakingLetter.join(' and ')}.`)

  const fractional = draft.currents.some((current) => current.fraction)
  const scheme = schemeOf(schemes, fractional, notes)
  const { ratedA, printedBreaking, counterfeit } = chooseRating(draft, scheme, damagedPiece(printed))
  const characteristic = chooseCharacteristic(draft)
  const dcVoltages = distinct(draft.voltages.flatMap(({ valueV, dc }) => (dc ? valueV : [])))
  const acVoltages = distinct(draft.voltages.flatMap(({ valueV, ac }) => (ac ? valueV : [])))
  const voltages = acVoltages.length > 0 ? acVoltages : dcVoltages
  const circuits = distinct(draft.circuitsV)
  const circuitV = circuits.length === 1 ? (circuits[0] ?? null) : null
  if (circuitV !== null)
    notes.push(
      `${circuitV} V is no voltage that links are rated at, or is named as the circuit’s: it is not taken for the link’s.`,
    )
  const each = voltages.length > 1 && ratedA === null && draft.currents.length > 1
  if (voltages.length > 1 && !each)
    notes.push(`Several voltages are printed (${listed(voltages, 'V')}): the lowest is taken as the rated voltage.`)
  const ratedV = each ? null : (smallest(voltages) ?? (scheme === 'BS1362' && !counterfeit ? bs1362RatedV.value : null))

  const sizes = distinct(draft.sizes)
  const sizeMm = sizes.length === 1 ? (sizes[0] ?? null) : scheme === 'BS1362' && sizes.length === 0 ? '6.3x25.4' : null

  return {
    ratedA,
    ratedV,
    characteristic,
    breaking,
    breakingCapacityA: counterfeit
      ? null
      : (printedCapacity(printedBreaking, ratedV ?? leastAtV) ?? capacityOf({ ratedA, breaking, scheme })),
    scheme,
    sizeMm,
    ratedDcV: smallest(dcVoltages),
    printedBreaking,
    circuitV,
    links: smallest(draft.links),
    noLink,
    unread,
    notes,
  }
}

/** A marking of which nothing is read. */
export const nothingRead: FuseMarking = {
  ratedA: null,
  ratedV: null,
  characteristic: null,
  breaking: null,
  breakingCapacityA: null,
  scheme: null,
  sizeMm: null,
  ratedDcV: null,
  printedBreaking: null,
  circuitV: null,
  links: null,
  noLink: null,
  unread: [],
  notes: [],
}

/** A figure printed for a lower voltage says nothing of this one, which most links are rated at [V]. */
const leastAtV = 250

/**
 * What a link breaks by its print in a circuit [A]: the largest of the figures printed for that voltage or a higher one.
 * Null where none is.
 *
 * @param voltageV  voltage of the circuit [V]
 */
export function printedCapacity(printed: FuseMarking['printedBreaking'], voltageV: number): number | null {
  const holds = (printed ?? []).filter(({ atV }) => atV === null || atV >= voltageV).map(({ valueA }) => valueA)
  return holds.length > 0 ? Math.max(...holds) : null
}

const schemeOf = (schemes: FuseScheme[], fractional: boolean, notes: string[]): FuseScheme | null => {
  for (const british of ['BS1362', 'BS646'] as const) if (schemes.includes(british)) return british
  if (schemes.includes('IEC') && schemes.includes('UL')) {
    notes.push(
      'Marks of IEC 60127 and of North American practice stand together: which standard it is rated by is not known.',
    )
    return null
  }
  return schemes[0] ?? (fractional ? 'UL' : null)
}

/**
 * Breaking capacity that the standard promises for a marking [A]; null where the marking does not tell.
 *
 * @source IEC 60127-2 sheets 1, 2, 3, 5 and 6; BS 1362
 */
export function capacityOf(fuse: Pick<FittedFuse, 'ratedA' | 'breaking' | 'scheme'>): number | null {
  if (fuse.scheme === 'BS1362') return bs1362BreakingA.value
  if (fuse.breaking === null || (fuse.scheme !== null && fuse.scheme !== 'IEC')) return null
  const { atLeastA, timesRated } = iecBreakingCapacity[fuse.breaking]
  if (timesRated === 0) return atLeastA
  return fuse.ratedA === null ? atLeastA : Math.max(atLeastA, timesRated * fuse.ratedA)
}

/** Least breaking capacity of any of the standards [A]: letter L, or a UL link up to 1 A. */
const leastBreakingA = iecBreakingCapacity.L.atLeastA

const listed = (values: readonly number[], unit: string): string =>
  values
    .slice(0, 4)
    .map((value) => `${value} ${unit}`)
    .concat(values.length > 4 ? ['…'] : [])
    .join(', ')

const smallest = (values: readonly number[]): number | null => values.toSorted((a, b) => a - b)[0] ?? null

interface Rating {
  ratedA: number | null
  printedBreaking: FuseMarking['printedBreaking']
  /** a mark the named standard cannot carry */
  counterfeit: boolean
}

function chooseRating(draft: Draft, scheme: FuseScheme | null, damaged: string | null): Rating {
  const { unread, notes } = draft
  const withUnit = draft.currents.filter((current) => !current.bare)
  const candidates = withUnit.length > 0 ? withUnit : draft.currents
  if (withUnit.length > 0) for (const current of draft.currents) if (current.bare) unread.push(current.raw.trim())

  const found = distinct(candidates.map((current) => current.valueA))
  const [first = 0, second = 0] = found
  const [lowA, highA] = first < second ? [first, second] : [second, first]
  // "F4A 250V 1500A": the second value is what it can break
  const breaks = found.length === 2 && highA >= leastBreakingA && highA >= 10 * lowA
  const rated = breaks ? candidates.filter((current) => current.valueA === lowA) : candidates
  const printedBreaking = breaks
    ? [{ valueA: highA, atV: null }]
    : draft.breakingCurrentsA.length > 0
      ? draft.breakingCurrentsA
      : null

  const reject = (why: string, counterfeit = false): Rating => {
    for (const current of rated) unread.push(current.raw.trim())
    notes.push(why)
    return { ratedA: null, printedBreaking, counterfeit }
  }
  const values = breaks ? [lowA] : found
  const [ratedA] = values
  if (damaged)
    return reject(
      `“${damaged}” looks damaged: figures stand apart, or letters stand among them. What rating it means is not known; read it again and type it as printed.`,
    )
  if (ratedA === undefined) return { ratedA: null, printedBreaking, counterfeit: false }
  if (values.length > 1)
    return reject(`Several rated currents are printed (${listed(values, 'A')}): which one applies is not known.`)
  if (!(ratedA > 0)) return reject('A rated current of 0 A does not exist.')
  if (scheme === 'BS1362' && ratedA > bs1362LargestA.value)
    return reject(
      `${ratedA} A is not a rating of BS 1362, which stops at ${bs1362LargestA.value} A: a link with this mark is not what it claims to be and must not be used.`,
      true,
    )
  if (ratedA < plausibleRatedA.min || ratedA > plausibleRatedA.max)
    return reject(`${ratedA} A is not a rated current of a small fuse-link.`)
  if (scheme === 'BS1362' && !bs1362Ratings.ratedA.includes(ratedA))
    notes.push(`${ratedA} A is not one of the ratings known of BS 1362 links (${bs1362Ratings.ratedA.join(', ')} A).`)
  return { ratedA, printedBreaking, counterfeit: false }
}

/** The letters that count: "F1" before "T2A" is a reference beside the holder, since the value with a unit is the rating. */
function lettersThatCount(draft: Draft): Draft['letters'] {
  const hasUnit = draft.currents.some((current) => !current.bare)
  return draft.letters.filter((letter) => !(hasUnit && letter.withBareNumber))
}

function chooseCharacteristic(draft: Draft): Characteristic | null {
  const letters = lettersThatCount(draft)
  const found = distinct(letters.map((letter) => letter.value))
  if (found.length <= 1) return found[0] ?? null
  draft.notes.push(`Several speeds are printed (${found.join(', ')}): which one applies is not known.`)
  for (const letter of letters) draft.unread.push(letter.raw.trim())
  return null
}

/** How slow a characteristic is: 0 the fastest. */
export const slowness = (characteristic: Characteristic): number => characteristics.indexOf(characteristic)

/** How much a breaking-capacity letter stands for: 0 the least. */
export const breakingRank = (letter: BreakingLetter): number => breakingLetters.indexOf(letter)
