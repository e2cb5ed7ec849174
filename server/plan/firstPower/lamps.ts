import { filament, type LampRating, sizeFor } from '../../physics/filament.js'
import { glow } from '../../physics/glow.js'
import { type Arrangement, type LampString, lampString, type StringState, stringAt } from '../../physics/lampString.js'
import { tungstenFrom } from '../../physics/tungsten.js'
import {
  heatCapacityRows,
  heatCapacitySource,
  radiationSource,
  resistivitySource,
  tungstenRows,
} from '../../tables/filament.js'
import { type GlowWord, glowRows } from '../../tables/glow.js'
import { gasLossLaws, heatContentVoltageExponent, lampSizeRows, tableLampV } from '../../tables/lamps.js'
import {
  bodyCurrentSource,
  lampOverVoltage,
  loadLineSource,
  noIsolationSource,
  unequalSeriesRatio,
} from '../../tables/seriesLamp.js'
import type { Source } from '../../tables/source.js'
import { joined, type Phrase, say, type Words } from '../../words/phrase.js'
import { amperes, decimal, ohms, percent, plain, volts, watts } from '../../words/quantity.js'
import { unique } from '../../words/unique.js'

/** Lamps in the line conductor of a mains. */
export interface LampSetup {
  /** the frequency matters to the switch-on only */
  readonly mains: { readonly voltageV: number; readonly frequencyHz?: number | null }
  readonly lamps: readonly LampRating[]
  readonly arrangement: Arrangement
}

/** What every answer of first power carries. */
export interface Explained {
  working: Words[]
  cautions: Words[]
  sources: Source[]
}

const gasFilled = lampSizeRows.filter((row) => row.fill === 'gas')

/** Least and greatest wattage the lamp table covers [W]. */
export const lampWattRange = {
  min: Math.min(...gasFilled.map((row) => row.ratedW)),
  max: Math.max(...gasFilled.map((row) => row.ratedW)),
} as const

/** What may be printed on a lamp that someone has at hand [W]: below the table no tungsten lamp serves, and it is asked about. */
export const lampAtHandWatts = { min: 1, max: lampWattRange.max } as const

/** Which of the two views of the gas loss: the one that leaves the lamp less voltage at a current, or the one that leaves it more. */
export type BandEdge = keyof typeof gasLossLaws

/**
 * The lamps as one element, from the reference tables.
 *
 * @param edge  of the band of the lamps' voltage at a current
 * @throws RangeError for a wattage outside {@link lampWattRange}
 * @source the lamp and tungsten tables
 */
export function lampsOf(
  { lamps, arrangement }: Pick<LampSetup, 'lamps' | 'arrangement'>,
  edge: BandEdge = 'lower',
): LampString {
  const tungsten = tungstenFrom(tungstenRows, heatCapacityRows)
  const made = new Map<string, ReturnType<typeof filament>>()
  const built = lamps.map((rating) => {
    const key = `${rating.ratedV} ${rating.ratedW}`
    const known = made.get(key)
    if (known) return known
    const size = sizeFor(rating.ratedW, gasFilled)
    if (!size)
      throw new RangeError(`ratedW must be ${lampWattRange.min} W to ${lampWattRange.max} W, got ${rating.ratedW}`)
    const heatScale = (rating.ratedV / tableLampV) ** heatContentVoltageExponent.value
    const lamp = filament(rating, size, tungsten, gasLossLaws[edge].exponent, heatScale)
    made.set(key, lamp)
    return lamp
  })
  return lampString(built, arrangement)
}

/** Why these lamps cannot be worked out on this mains; null where they can. */
export function lampsFault(setup: LampSetup): Phrase | null {
  const { mains, lamps } = setup
  const string = lampsOf(setup)
  if (mains.voltageV <= string.maxV) return null
  return say`lamps would burn out at once: with the load shorted, ${describeLamps(setup)} on ${volts(mains.voltageV)} would pass the melting point of tungsten, which they reach at ${volts(string.maxV, 3, 'down')}; use lamps whose ${lamps.length > 1 && setup.arrangement === 'series' ? say`rated voltages add up to` : say`rated voltage is`} about ${volts(mains.voltageV)}`
}

/** "two lamps of 60 W 120 V in series", "lamps of 25 W 120 V and 40 W 120 V in series", "a lamp of 60 W 230 V". */
export function describeLamps({ lamps, arrangement }: Pick<LampSetup, 'lamps' | 'arrangement'>): Phrase {
  const each = lamps.map(({ ratedV, ratedW }) => say`${watts(ratedW)} ${volts(ratedV)}`)
  const kinds = unique(each)
  if (each.length === 1) return say`a lamp of ${each[0]!}`
  const number = numbers[each.length] ?? say`${each.length}`
  const how = arrangement === 'series' ? say`in series` : say`in parallel`
  return kinds.length === 1
    ? say`${number} lamps of ${kinds[0]!} ${how}`
    : say`lamps of ${joined(each, say` and `)} ${how}`
}

const numbers = [say`no`, say`one`, say`two`, say`three`, say`four`, say`five`, say`six`]

export const glowOf = (filamentK: number): GlowWord => glow(filamentK, glowRows)

/** The current and voltage of the string when its hottest filament just begins to glow in a dark room. */
function darkLimit(string: LampString): StringState {
  const begin = glowRows.find((row) => row.glow === 'dull')?.fromK ?? Number.NaN
  let low = 0
  let high = string.maxV
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2
    if (stringAt(string, middle).filamentK < begin) low = middle
    else high = middle
  }
  return stringAt(string, low)
}

/** The first lines of every working: what the lamps are. */
export function lampWorking(string: LampString): Phrase[] {
  const kinds = string.lamps.filter((lamp, at) => string.lamps.indexOf(lamp) === at)
  return kinds.map(
    ({ ratedV, ratedW, hotOhm, coldOhm, size }) =>
      say`lamp ${watts(ratedW)} ${volts(ratedV)}: rated current ${watts(ratedW)} / ${volts(ratedV)} = ${amperes(ratedW / ratedV)}, hot ${volts(ratedV)}² / ${watts(ratedW)} = ${ohms(hotOhm)} at ${plain(size.ratedK, 'K')}, cold ${ohms(coldOhm, 3)} (${decimal(hotOhm / coldOhm, 3)} times less); gas carries off ${percent(size.gasShare)} of its power`,
  )
}

/**
 * What holds for every lamp in series, and what these lamps add to it.
 *
 * @param string  by the lower edge of the band, by which a dark lamp passes more
 */
export function lampCautions(setup: LampSetup, string: LampString): Phrase[] {
  const { mains, lamps, arrangement } = setup
  const shorted = stringAt(string, mains.voltageV)
  const cautions: Phrase[] = []
  const overrun = shorted.lamps.map((lamp, at) => lamp.voltageV / (lamps[at] as LampRating).ratedV)
  const worst = Math.max(...overrun)
  const at = overrun.indexOf(worst)
  const strained = lamps[at] as LampRating
  if (worst > lampOverVoltage.fails)
    cautions.push(
      say`Do not use these lamps here: with the load shorted the ${volts(strained.ratedV)} lamp takes ${volts((shorted.lamps[at] as { voltageV: number }).voltageV)}, ${decimal(worst, 3)} times its rated voltage, and fails at once.`,
    )
  else if (worst > lampOverVoltage.caution)
    cautions.push(
      say`With the load shorted the ${volts(strained.ratedV)} lamp takes ${decimal(worst, 3)} times its rated voltage and does not last.`,
    )
  if (arrangement === 'series' && lamps.length > 1) {
    const rated = lamps.map((lamp) => lamp.ratedW / lamp.ratedV)
    if (Math.max(...rated) > unequalSeriesRatio.value * Math.min(...rated))
      cautions.push(
        say`The lamps are unequal: in series the one of least rated current takes most of the voltage. Use equal lamps.`,
      )
  }
  const word = glowOf(shorted.filamentK)
  if (word !== 'full')
    cautions.push(
      say`These lamps do not reach full brightness even into a dead short (filament ${plain(shorted.filamentK, 'K', 3)}, “${word}”): do not wait for a fully lit lamp to tell you of a fault.`,
    )
  const dark = darkLimit(string)
  cautions.push(
    say`A dark lamp does not mean no load: these lamps stay dark up to ${amperes(dark.currentA, 2)}, ${percent(dark.currentA / shorted.currentA, 2)} of what they pass into a short. Measure; do not judge by eye.`,
    say`The lamp does not isolate: everything behind it is at mains potential, whether the lamp glows or not.`,
    say`The lamp does not protect a person: even through a dark lamp more current passes than a body survives. A residual-current device belongs upstream.`,
    say`Lamp and switch stand in the line conductor, and earth passes straight through, never by way of the lamp. Leave the wiring to a licensed electrician or other qualified person, to local codes.`,
    say`The lamp is no converter: it does not make a unit for another voltage fit this mains, because what it drops depends on what the unit draws.`,
    say`A variable transformer brings up a transformer or valves by degrees, and isolates as little as the lamp. It is not for a switch-mode input, which draws more the less voltage it has, and starts all at once.`,
    say`A lit lamp’s glass is hot enough to burn and to set fire: a guarded holder, clear of anything that burns.`,
    say`Only tungsten lamps serve, incandescent or mains-voltage halogen, at the wattage printed on them. LED and compact fluorescent lamps contain electronics and do not limit the current.`,
  )
  return cautions
}

export const lampSources = (string: LampString): Source[] => {
  const sizes = string.lamps.flatMap(({ ratedW }) =>
    gasFilled
      .filter((row, at) => row.ratedW === ratedW || brackets(gasFilled, at, ratedW))
      .flatMap((row) => row.sources),
  )
  return [
    ...new Set([
      loadLineSource,
      resistivitySource,
      radiationSource,
      heatCapacitySource,
      ...gasLossLaws.lower.sources,
      ...gasLossLaws.upper.sources,
      ...sizes,
      ...glowRows.flatMap((row) => row.sources),
      noIsolationSource,
      bodyCurrentSource,
    ]),
  ]
}

const brackets = (rows: readonly { ratedW: number }[], at: number, ratedW: number): boolean => {
  const row = rows[at] as { ratedW: number }
  const next = rows[at + 1]?.ratedW ?? Number.POSITIVE_INFINITY
  const before = rows[at - 1]?.ratedW ?? 0
  return (row.ratedW < ratedW && ratedW < next) || (before < ratedW && ratedW < row.ratedW)
}
