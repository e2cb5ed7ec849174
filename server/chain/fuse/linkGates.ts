import { type BandPoint, mergeGates, widestBand } from '../../physics/fuseCurve.js'
import { type FuseGateRow, fuseGateRows } from '../../tables/fuseGates.js'
import { bs1362GateRows, type OtherGateRow, ulGateRows } from '../../tables/fuseGatesOther.js'
import type { BreakingLetter, Characteristic } from '../../tables/fuseMarks.js'
import type { Source } from '../../tables/source.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes } from '../../words/quantity.js'
import { describe, type FuseLink } from './fuseLink.js'

interface LinkBand {
  points: BandPoint[]
  notes: Phrase[]
  sources: Source[]
}

const sourcesOf = (rows: readonly { readonly sources: readonly Source[] }[]): Source[] => [
  ...new Set(rows.flatMap((row) => row.sources)),
]

const inRange = (ratedA: number) => (row: { ratedFromA: number; ratedToA: number }) =>
  ratedA >= row.ratedFromA && ratedA <= row.ratedToA

const disagreement = (points: readonly BandPoint[], single: boolean): Phrase[] => {
  const at = points.filter((point) => point.disagree).map((point) => `${Math.round(point.multiple * 100)} %`)
  return single && at.length > 0 ? [say`The data sheets disagree at ${at.join(', ')}: the wider band is drawn.`] : []
}

const doubts = (rows: readonly { readonly doubt?: string }[]): Phrase[] =>
  [...new Set(rows.flatMap((row) => row.doubt ?? []))].map((doubt) => say`Doubt: ${doubt}.`)

/**
 * The time-current gates of a link, as multiples of its rated current.
 *
 * Where the breaking letter is not known the band holds for every sheet it could belong to; where sources disagree it
 * is the wider one. Empty where no standard gate is held for it, with the reason in `notes`.
 *
 * @source IEC 60127-2 sheets 1, 2, 3, 5, 6; UL 248-14; BS 1362
 */
export function gatesOf(link: FuseLink): LinkBand {
  const none = (note: Phrase): LinkBand => ({ points: [], notes: [note], sources: [] })
  if (link.ratedA === null) return none(say`No gates: the rated current is not known.`)
  if (link.scheme === 'BS1362') return otherGates(bs1362GateRows, link.ratedA, 'BS 1362')
  if (link.scheme === 'BS646') return none(say`No gates of BS 646 are held here.`)
  if (link.scheme === 'UL') return ulGates(link.ratedA, link.characteristic)
  if (link.characteristic === null) return none(say`No gates: the speed of the link is not known.`)
  return iecGates({ ...link, ratedA: link.ratedA, characteristic: link.characteristic })
}

const otherGates = (rows: readonly OtherGateRow[], ratedA: number, name: string): LinkBand => {
  const mine = rows.filter(inRange(ratedA))
  const points = mergeGates(mine)
  if (points.length === 0)
    return { points, notes: [say`No gates of ${name} are held for ${amperes(ratedA)}.`], sources: [] }
  return {
    points,
    notes: [say`Gates of ${name}.`, ...disagreement(points, true), ...doubts(mine)],
    sources: sourcesOf(mine),
  }
}

const ulGates = (ratedA: number, characteristic: Characteristic | null): LinkBand => {
  if (characteristic === 'M') return { points: [], notes: [say`UL 248-14 has no medium speed.`], sources: [] }
  const slow = characteristic === 'T' || characteristic === 'TT'
  const rowsFor = (timeDelay: boolean) =>
    ulGateRows.filter((row) => row.timeDelay === null || row.timeDelay === timeDelay)
  if (characteristic !== null)
    return otherGates(rowsFor(slow), ratedA, `UL 248-14, ${slow ? 'time-delay' : 'fast-acting'}`)
  const both = [otherGates(rowsFor(false), ratedA, 'UL 248-14'), otherGates(rowsFor(true), ratedA, 'UL 248-14')]
  return {
    points: widestBand(both.map((band) => band.points)),
    notes: [say`Gates of UL 248-14; the speed is not known, so the band holds for fast-acting and time-delay links.`],
    sources: [...new Set(both.flatMap((band) => band.sources))],
  }
}

const iecGates = (link: FuseLink & { ratedA: number; characteristic: Characteristic }): LinkBand => {
  const { ratedA, characteristic, breaking, sizeMm, scheme } = link
  if (sizeMm !== null && sizeMm !== '5x20')
    return {
      points: [],
      notes: [say`The sheets held here are for 5 × 20 mm links, not for ${sizeMm.replace('x', ' × ')} mm.`],
      sources: [],
    }
  const family = scheme === null ? [say`The family of standards is not stated: the IEC gates are drawn.`] : []
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
        notes: [say`No sheet of IEC 60127-2 held here covers ${describe(link)}.`, ...family],
        sources: [],
      }
    return { points: mergeGates(general), notes: [...family, ...doubts(general)], sources: sourcesOf(general) }
  }
  const merged = groups.map((group) => mergeGates(group))
  const points = merged.length === 1 ? (merged[0] ?? []) : widestBand(merged)
  const sheets = [...new Set(rows.map((row) => row.sheet))].join(', ')
  const open = groups.length > 1 ? [say`The breaking letter is not known: the band holds for sheets ${sheets}.`] : []
  return {
    points,
    notes: [
      say`Gates of IEC 60127-2, sheet${groups.length > 1 ? say`s` : say``} ${sheets}.`,
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
