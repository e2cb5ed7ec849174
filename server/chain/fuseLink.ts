import { type BandPoint, mergeGates, widestBand } from '../physics/fuseCurve.js'
import { amperes, volts } from '../physics/quantity.js'
import { capacityOf, type FittedFuse, type FuseMarking, readFuseMarking, slowness } from '../plate/fuseMarking.js'
import { splitPrescription } from '../plate/fusePrescription.js'
import { type FuseGateRow, fuseGateRows } from '../reference/fuseGates.js'
import { bs1362GateRows, type OtherGateRow, ulGateRows } from '../reference/fuseGatesOther.js'
import type { BreakingLetter, Characteristic } from '../reference/fuseMarks.js'
import { meltingTables } from '../reference/fuseMelting.js'
import { bs1362LargestA, bs1362RatedV, ulInterruptingAt125V, ulInterruptingAt250V } from '../reference/fuseRatings.js'
import type { Source } from '../reference/source.js'
import type { FuseRequest } from './fuseRequest.js'
import { isFor } from './plateWindow.js'

/** A link with everything that was read of it. */
export type FuseLink = FuseMarking

const nothing: FuseLink = {
  ratedA: null,
  ratedV: null,
  characteristic: null,
  breaking: null,
  breakingCapacityA: null,
  scheme: null,
  sizeMm: null,
  unread: [],
  notes: [],
}

/**
 * Interrupting rating of a UL Listed link [A]; null where rating or voltage is not known.
 *
 * @source UL 248-14 as in the Littelfuse Fuseology Selection Guide 2014, p. 12
 */
function ulInterrupting({ ratedA, ratedV }: Pick<FittedFuse, 'ratedA' | 'ratedV'>): number | null {
  if (ratedA === null || ratedV === null) return null
  if (ratedV <= 125) return ulInterruptingAt125V.value
  if (ratedV > 250) return null
  return ulInterruptingAt250V.find((row) => ratedA <= row.uptoA)?.breakingA ?? null
}

/** A link that names BS 1362 and a rating beyond it: nothing it claims is believed. */
const unbelieved = (link: FuseLink): FuseLink => ({
  ...link,
  ratedA: null,
  ratedV: null,
  breakingCapacityA: null,
  notes: [
    `${link.ratedA} A is not a rating of BS 1362, which stops at ${bs1362LargestA.value} A: a link with this mark is not what it claims to be and must not be used.`,
  ],
})

/** True for a link whose marking cannot be true by the standard it names. */
export const isCounterfeit = (link: FuseLink): boolean =>
  link.scheme === 'BS1362' &&
  link.ratedA === null &&
  link.notes.some((note) => note.includes('not what it claims to be'))

/** The fitted link: its marking, with the fields that were entered by hand laid over it. */
export function fittedLink({ marking, fuse }: Pick<FuseRequest, 'marking' | 'fuse'>): FuseLink {
  const read = marking?.trim() ? readFuseMarking(marking) : nothing
  const scheme = fuse?.scheme ?? read.scheme
  const link: FuseLink = {
    ...read,
    ratedA: fuse?.ratedA ?? read.ratedA,
    ratedV: fuse?.ratedV ?? read.ratedV,
    characteristic: fuse?.characteristic ?? read.characteristic,
    breaking: fuse?.breaking ?? read.breaking,
    scheme,
  }
  if (isCounterfeit(link)) return link
  if (scheme === 'BS1362' && link.ratedA !== null && link.ratedA > bs1362LargestA.value) return unbelieved(link)
  const overridden = [fuse?.ratedA, fuse?.breaking, fuse?.scheme].some((value) => value != null)
  const breakingCapacityA = overridden ? capacityOf(link) : read.breakingCapacityA
  return {
    ...link,
    ratedV: link.ratedV ?? (scheme === 'BS1362' ? bs1362RatedV.value : null),
    breakingCapacityA: breakingCapacityA ?? (scheme === 'UL' ? ulInterrupting(link) : null),
  }
}

export interface Prescription {
  link: FuseLink
  /** as printed, or the part of it that stands for the voltage in use */
  text: string
  /** true where it was chosen from several by the voltage in use */
  chosenByVoltage: boolean
}

/** What is prescribed at the voltage in use; null where nothing is printed. */
export function prescriptionAt(text: string | null | undefined, voltageV: number): Prescription | null {
  const printed = text?.trim()
  if (!printed) return null
  const several = splitPrescription(printed)
  const fits = several.filter(({ mains }) => isFor(mains, voltageV))
  const [one] = fits
  const chosen = fits.length === 1 && one ? one.text : printed
  return { link: readFuseMarking(chosen), text: chosen, chosenByVoltage: fits.length === 1 }
}

const ulSpeed = (characteristic: Characteristic | null): string | null =>
  characteristic === null || characteristic === 'M'
    ? characteristic
    : slowness(characteristic) > slowness('M')
      ? 'time-delay'
      : 'fast-acting'

/** "T 1.6 A L 250 V, 5x20 mm": what is known of a link, in the order of IEC 60127. */
export function describe(link: FuseLink): string {
  const parts = [
    link.scheme === 'UL' ? ulSpeed(link.characteristic) : link.characteristic,
    link.ratedA === null ? null : amperes(link.ratedA),
    link.breaking,
    link.ratedV === null ? null : volts(link.ratedV),
    link.scheme === 'BS1362' ? 'BS 1362' : link.scheme === 'UL' ? '(UL)' : null,
  ].filter((part) => part !== null)
  const size = link.sizeMm === null ? [] : [`${link.sizeMm.replace('x', ' × ')} mm`]
  return [parts.join(' ') || 'a link of which nothing is known', ...size].join(', ')
}

export interface LinkBand {
  points: BandPoint[]
  notes: string[]
  sources: Source[]
}

const sourcesOf = (rows: readonly { readonly sources: readonly Source[] }[]): Source[] => [
  ...new Set(rows.flatMap((row) => row.sources)),
]

const inRange = (ratedA: number) => (row: { ratedFromA: number; ratedToA: number }) =>
  ratedA >= row.ratedFromA && ratedA <= row.ratedToA

const disagreement = (points: readonly BandPoint[], single: boolean): string[] => {
  const at = points.filter((point) => point.disagree).map((point) => `${Math.round(point.multiple * 100)} %`)
  return single && at.length > 0 ? [`The data sheets disagree at ${at.join(', ')}: the wider band is drawn.`] : []
}

const doubts = (rows: readonly { readonly doubt?: string }[]): string[] =>
  [...new Set(rows.flatMap((row) => row.doubt ?? []))].map((doubt) => `Doubt: ${doubt}.`)

/**
 * The time-current gates of a link, as multiples of its rated current.
 *
 * Where the breaking letter is not known the band holds for every sheet it could belong to; where sources disagree it
 * is the wider one. Empty where no standard gate is held for it, with the reason in `notes`.
 *
 * @source IEC 60127-2 sheets 1, 2, 3, 5, 6; UL 248-14; BS 1362
 */
export function gatesOf(link: FuseLink): LinkBand {
  const none = (note: string): LinkBand => ({ points: [], notes: [note], sources: [] })
  if (link.ratedA === null) return none('No gates: the rated current is not known.')
  if (link.scheme === 'BS1362') return otherGates(bs1362GateRows, link.ratedA, 'BS 1362')
  if (link.scheme === 'BS646') return none('No gates of BS 646 are held here.')
  if (link.scheme === 'UL') return ulGates(link.ratedA, link.characteristic)
  if (link.characteristic === null) return none('No gates: the speed of the link is not known.')
  return iecGates({ ...link, ratedA: link.ratedA, characteristic: link.characteristic })
}

const otherGates = (rows: readonly OtherGateRow[], ratedA: number, name: string): LinkBand => {
  const mine = rows.filter(inRange(ratedA))
  const points = mergeGates(mine)
  if (points.length === 0)
    return { points, notes: [`No gates of ${name} are held for ${amperes(ratedA)}.`], sources: [] }
  return {
    points,
    notes: [`Gates of ${name}.`, ...disagreement(points, true), ...doubts(mine)],
    sources: sourcesOf(mine),
  }
}

const ulGates = (ratedA: number, characteristic: Characteristic | null): LinkBand => {
  if (characteristic === 'M') return { points: [], notes: ['UL 248-14 has no medium speed.'], sources: [] }
  const slow = characteristic === 'T' || characteristic === 'TT'
  const rowsFor = (timeDelay: boolean) =>
    ulGateRows.filter((row) => row.timeDelay === null || row.timeDelay === timeDelay)
  if (characteristic !== null)
    return otherGates(rowsFor(slow), ratedA, `UL 248-14, ${slow ? 'time-delay' : 'fast-acting'}`)
  const both = [otherGates(rowsFor(false), ratedA, 'UL 248-14'), otherGates(rowsFor(true), ratedA, 'UL 248-14')]
  return {
    points: widestBand(both.map((band) => band.points)),
    notes: ['Gates of UL 248-14; the speed is not known, so the band holds for fast-acting and time-delay links.'],
    sources: [...new Set(both.flatMap((band) => band.sources))],
  }
}

const iecGates = (link: FuseLink & { ratedA: number; characteristic: Characteristic }): LinkBand => {
  const { ratedA, characteristic, breaking, sizeMm, scheme } = link
  if (sizeMm !== null && sizeMm !== '5x20')
    return {
      points: [],
      notes: [`The sheets held here are for 5 × 20 mm links, not for ${sizeMm.replace('x', ' × ')} mm.`],
      sources: [],
    }
  const family = scheme === null ? ['The family of standards is not stated: the IEC gates are drawn.'] : []
  const inSheets = fuseGateRows.filter(
    (row) => row.sheet !== null && row.characteristic === characteristic && inRange(ratedA)(row),
  )
  const general = fuseGateRows.filter((row) => row.sheet === null && row.characteristic === characteristic)
  const letters = breaking === null ? distinctLetters(inSheets) : [breaking]
  const groups = letters
    .map((letter) => inSheets.filter((row) => row.breaking === letter))
    .filter((rows) => rows.length > 0)
  const rows = groups.flat()
  if (rows.length === 0) {
    const isSheetless =
      general.length > 0 && !fuseGateRows.some((row) => row.sheet !== null && row.characteristic === characteristic)
    if (!isSheetless)
      return {
        points: [],
        notes: [`No sheet of IEC 60127-2 held here covers ${describe(link)}.`, ...family],
        sources: [],
      }
    return { points: mergeGates(general), notes: [...family, ...doubts(general)], sources: sourcesOf(general) }
  }
  const merged = groups.map((group) => mergeGates(group))
  const points = merged.length === 1 ? (merged[0] ?? []) : widestBand(merged)
  const sheets = [...new Set(rows.map((row) => row.sheet))].join(', ')
  const open = groups.length > 1 ? [`The breaking letter is not known: the band holds for sheets ${sheets}.`] : []
  return {
    points,
    notes: [
      `Gates of IEC 60127-2, sheet${groups.length > 1 ? 's' : ''} ${sheets}.`,
      ...family,
      ...open,
      ...disagreement(points, groups.length === 1),
      ...doubts(rows),
    ],
    sources: sourcesOf(rows),
  }
}

const distinctLetters = (rows: readonly FuseGateRow[]): BreakingLetter[] => [
  ...new Set(rows.flatMap((row) => row.breaking ?? [])),
]

export interface MeltingRange {
  lowI2t: number
  highI2t: number
  sources: Source[]
}

/**
 * Typical melting I²t of a 5 x 20 mm link, as a range over the data sheets that give one.
 *
 * @returns [A²s]; null unless two data sheets give the rating
 * @source data sheets of makers; no tolerance is stated in any
 */
export function meltingRange(
  link: Pick<FittedFuse, 'ratedA' | 'characteristic' | 'breaking' | 'scheme'>,
): MeltingRange | null {
  const { ratedA, characteristic, breaking, scheme } = link
  if (ratedA === null || (scheme !== null && scheme !== 'IEC')) return null
  const found = meltingTables.flatMap((table) => {
    const i2t =
      table.characteristic === characteristic && table.breaking === breaking ? table.i2tByRatedA[ratedA] : undefined
    return i2t === undefined ? [] : [{ i2t, source: table.source }]
  })
  if (found.length < 2) return null
  const values = found.map(({ i2t }) => i2t)
  return { lowI2t: Math.min(...values), highI2t: Math.max(...values), sources: found.map(({ source }) => source) }
}
