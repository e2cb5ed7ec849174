import { measuredDemandHeadroom, plateDemandHeadroom } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { decimal, millimetres, plain, volts } from '../../words/quantity.js'
import type { DeviceRail, PreparedPlug } from '../case/situation.js'
import { drawnA } from './matchRails.js'
import { kindText } from './railText.js'

/**
 * The least current that has to stand on the plate of a supply for a rail, to the next tenth of an ampere up: plates are
 * printed so, and a supply must not fall short.
 *
 *   I = k · I_drawn, k of the table: a measured demand takes a quarter more, a plate's is the most already
 *
 * @returns [A]; null where the machine's demand is not known
 * @source the thresholds of the output current
 */
export function leastRatedA(rail: DeviceRail): number | null {
  const drawn = drawnA(rail)
  if (drawn === null) return null
  const needed = drawn * (rail.currentIs === 'measured' ? measuredDemandHeadroom : plateDemandHeadroom).value
  return Number((Math.ceil(needed * 10 - 1e-9) / 10).toFixed(1))
}

/** "1.5 A", as plates print it: never "500 mA" of half an ampere. */
export const ratedText = (currentA: number): Phrase => plain(currentA, 'A')

/** What has to stand on the plate of a supply for a rail: "12 V DC 1.5 A", as far as it is known. */
export function soughtText(rail: DeviceRail): Phrase {
  const leastA = leastRatedA(rail)
  const kind = rail.kind === null ? '' : say` ${kindText(rail.kind)}`
  return say`${volts(rail.voltageV)}${kind}${leastA === null ? '' : say` ${ratedText(leastA)}`}`
}

type Size = Pick<PreparedPlug, 'outerMm' | 'innerMm' | 'name'>

const bothSizes = ({ outerMm, innerMm }: Size, times: '×' | 'x'): Phrase | null =>
  outerMm !== null && innerMm !== null ? say`${decimal(outerMm)} ${times} ${millimetres(innerMm)}` : null

/** A plug's size as it is printed, "5.5 × 2.1 mm"; else its name as it was given, in quotation marks; null where neither is known. */
export const plugSizeText = (plug: Size): Phrase | null => bothSizes(plug, '×') ?? namedText(plug) ?? outerText(plug)

const namedText = ({ name }: Size): Phrase | null => (name === null ? null : say`“${name}”`)
const outerText = ({ outerMm }: Size): Phrase | null => (outerMm === null ? null : say`${millimetres(outerMm)} outside`)

/** The same as it is typed into a search, on any keyboard: "5.5 x 2.1 mm", or the name. */
export const typedSize = (plug: Size): Phrase | null =>
  bothSizes(plug, 'x') ?? (plug.name === null ? outerText(plug) : say`${plug.name}`)
