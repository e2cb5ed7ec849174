import type { LampRating } from '../../physics/filament.js'
import { type LampOption, type LoadBehindLamps, lampOption } from '../../physics/lampChoice.js'
import type { Arrangement } from '../../physics/lampString.js'
import { type GlowWord, glowRows } from '../../tables/glow.js'
import { standardLampVoltages, standardWattages, tungstenWattages, unsuitableLamps } from '../../tables/lamps.js'
import { assuredShare, bridgeDropV, lampFitsMains, lampMargin, seriesLampPractice } from '../../tables/seriesLamp.js'
import { joined, type Phrase, say, type Words } from '../../words/phrase.js'
import { amperes, volts, watts } from '../../words/quantity.js'
import { describeLamps, type Explained, glowOf, type LampSetup, lampCautions, lampSources, lampsOf } from './lamps.js'

/** A choice of equal lamps, worked out. */
interface LampChoiceOption {
  ratedV: number
  ratedW: number
  /** how many of them */
  count: number
  arrangement: Arrangement
  /** into a dead short, filaments hot [A rms] */
  shortA: number
  /** left for the load [V rms]; null where there is no point at which it runs */
  idleLoadV: number | null
  ratedLoadV: number | null
  /** whether the load starts at idle behind these lamps, with a quarter to spare; false where that cannot be told */
  suits: boolean
  startsIdle: boolean | null
  startsRated: boolean | null
  /** most that a rectifier with a capacitor gets behind these lamps [W] */
  ceilingW: number
  /** seen with the load idle, at its rating, and with it shorted; null where it does not run */
  glowIdle: GlowWord | null
  glowRated: GlowWord | null
  glowShorted: GlowWord
  reason: Phrase
}

interface LampOrder {
  use: 'first' | 'next' | 'last'
  ratedV: number
  ratedW: number
  count: number
  arrangement: Arrangement
  reason: Phrase
}

export interface LampChoice extends Explained {
  options: LampChoiceOption[]
  order: LampOrder[]
  unsuitable: { kind: string; reason: string }[]
}

export interface LampOnHand extends LampRating {
  readonly count: number
}

export interface LoadToFeed {
  readonly idleW: number
  readonly ratedW: number
  readonly minimumV: number | null
}

/** Whether tungsten lamps are made in that wattage; others are LED or compact fluorescent lamps until someone has looked. */
export const mayBeTungsten = ({ ratedW }: LampRating): boolean => tungstenWattages.watts.includes(ratedW)

/** What is asked about a lamp in whose wattage no tungsten lamp is made. */
export const askWhatLamp = ({ ratedW, ratedV }: LampRating): Phrase =>
  say`What the lamp of ${watts(ratedW)} ${volts(ratedV)} is: no tungsten lamp that serves here is made in that wattage, so it is an LED or compact fluorescent lamp or was misread, and those do not limit the current. It is not used. Read the wattage on the lamp itself, not the one it replaces, and look for the filament.`

interface Candidate extends LampRating {
  count: number
  arrangement: Arrangement
}

/**
 * The lamps worth considering: every standard wattage at the mains voltage, or what is at hand, alone, two in series
 * where two ratings make up the mains, and two in parallel.
 */
function candidates(mainsV: number, onHand: readonly LampOnHand[] | null): Candidate[] {
  const fits = (ratedV: number): boolean => ratedV / mainsV >= lampFitsMains.from && ratedV / mainsV <= lampFitsMains.to
  if (onHand)
    return onHand.filter(mayBeTungsten).flatMap(({ ratedV, ratedW, count }) => {
      const list: Candidate[] = []
      if (count >= 1 && fits(ratedV)) list.push({ ratedV, ratedW, count: 1, arrangement: 'series' })
      if (count >= 2 && fits(2 * ratedV)) list.push({ ratedV, ratedW, count: 2, arrangement: 'series' })
      if (count >= 2 && fits(ratedV)) list.push({ ratedV, ratedW, count: 2, arrangement: 'parallel' })
      return list
    })
  const nearest = (target: number): number =>
    standardLampVoltages.volts.reduce((best, volt) => (Math.abs(volt - target) < Math.abs(best - target) ? volt : best))
  const single = nearest(mainsV)
  const half = nearest(mainsV / 2)
  const alone = fits(single)
  if (!alone && !fits(2 * half)) return []
  return standardWattages.watts.map((ratedW) => ({
    ratedV: alone ? single : half,
    ratedW,
    count: alone ? 1 : 2,
    arrangement: 'series',
  }))
}

const same = (a: Candidate, b: Candidate): boolean =>
  a.ratedV === b.ratedV && a.ratedW === b.ratedW && a.count === b.count && a.arrangement === b.arrangement

const setupOf = (mains: LampSetup['mains'], { ratedV, ratedW, count, arrangement }: Candidate): LampSetup => ({
  mains,
  lamps: Array.from({ length: count }, () => ({ ratedV, ratedW })),
  arrangement,
})

/**
 * Which lamps to use for a load, and in which order.
 *
 * First the least short-circuit current behind which the load starts at idle; next, where that is another, the least
 * behind which it also runs at its rating, both with a quarter to spare; last the largest.
 *
 * @param mains   voltage [V rms] and frequency [Hz]
 * @param load    idle and rated power [W], least voltage [V rms] or null
 * @param onHand  the lamps there are; null for every standard one
 * @source {@link lampOption}
 */
export function lampChoice(
  mains: LampSetup['mains'],
  load: LoadToFeed,
  onHand: readonly LampOnHand[] | null,
): LampChoice {
  const worked = candidates(mains.voltageV, onHand)
    .filter((candidate, at, all) => all.findIndex((other) => same(candidate, other)) === at)
    .map((candidate) => {
      const setup = setupOf(mains, candidate)
      const string = lampsOf(setup)
      const found = lampOption(string, mains.voltageV, load, assuredShare.value, bridgeDropV.value)
      return { candidate, setup, string, found }
    })
    .sort((a, b) => a.found.shortA - b.found.shortA)
  const options = worked.map(({ candidate, found }) => asOption(candidate, found, load))
  const order = orderOf(options, load, mains.voltageV)
  const [smallest] = worked
  return {
    options,
    order,
    unsuitable: unsuitableLamps.map(({ kind, reason }) => ({ kind, reason })),
    working: options.map(
      (option) =>
        say`${describeOption(option)}: ${amperes(option.shortA, 3)} into a short; idle ${watts(load.idleW)} leaves ${voltsOrNone(option.idleLoadV)}, rated ${watts(load.ratedW)} leaves ${voltsOrNone(option.ratedLoadV)}`,
    ),
    cautions: [
      ...(options.length === 0 ? [noneFits(mains.voltageV, onHand)] : []),
      ...leftOut(mains.voltageV, onHand ?? [], options),
      ...(onHand ?? []).filter((lamp) => !mayBeTungsten(lamp)).map(askWhatLamp),
      ...(options.length > 0 && order.length === 0
        ? [
            say`Behind none of these lamps can the load be relied on to start at idle: a failed start then proves nothing. Use larger lamps, or another method of limiting the current.`,
          ]
        : []),
      ...(smallest ? lampCautions(smallest.setup, smallest.string) : []),
      ...unsuitableLamps.map(({ kind, reason }) => say`No ${kind}: ${reason}.`),
    ],
    sources: [
      ...new Set([
        ...worked.flatMap(({ string }) => lampSources(string)),
        ...standardWattages.sources,
        assuredShare.source,
        lampMargin.source,
        seriesLampPractice,
        ...unsuitableLamps.flatMap((row) => row.sources),
      ]),
    ],
  }
}

const voltsOrNone = (value: number | null): Phrase => (value === null ? say`no running point` : volts(value, 4, 'down'))

const describeOption = ({ ratedV, ratedW, count, arrangement }: Candidate): Phrase =>
  describeLamps({ lamps: Array.from({ length: count }, () => ({ ratedV, ratedW })), arrangement })

function asOption(candidate: Candidate, found: LampOption, load: LoadToFeed): LampChoiceOption {
  const { idle, rated } = found
  return {
    ratedV: candidate.ratedV,
    ratedW: candidate.ratedW,
    count: candidate.count,
    arrangement: candidate.arrangement,
    shortA: found.shortA,
    idleLoadV: idle.loadV,
    ratedLoadV: rated.loadV,
    suits: idle.judged.starts === true && spares(found.rectifierCeilingW, load.idleW),
    startsIdle: idle.judged.starts,
    startsRated: rated.judged.starts,
    ceilingW: found.rectifierCeilingW,
    glowIdle: idle.lamp && glowOf(idle.lamp.filamentK),
    glowRated: rated.lamp && glowOf(rated.lamp.filamentK),
    glowShorted: glowOf(found.shortK),
    reason: reasonFor(found, load),
  }
}

/** A quarter to spare over what the lamps must carry. */
const spares = (ceilingW: number, powerW: number): boolean => ceilingW >= lampMargin.value * powerW

const seen = (word: GlowWord): string => glowRows.find((row) => row.glow === word)?.seen ?? word

function reasonFor({ idle, rated, rectifierCeilingW, shortK }: LampOption, load: LoadToFeed): Phrase {
  const look = ({ lamp, rectifier }: LoadBehindLamps): Words => {
    if (!lamp) return say`flashes`
    const steady = glowOf(lamp.filamentK)
    const peaky = rectifier && glowOf(rectifier.filamentK)
    return peaky && peaky !== steady
      ? say`${seen(steady)} for a steady draw, ${seen(peaky)} behind a rectifier`
      : seen(steady)
  }
  const sentences = [
    say`Idle: ${startText(idle, load.idleW)}; to see: ${look(idle)}.`,
    say`At its rating: ${startText(rated, load.ratedW)}; to see: ${look(rated)}.`,
    say`A rectifier with a capacitor gets ${watts(rectifierCeilingW, 3, 'down')} at most; a short shows ${seen(glowOf(shortK))}.`,
  ]
  return joined(sentences)
}

function startText({ judged, loadV }: LoadBehindLamps, powerW: number): Phrase {
  switch (judged.reason) {
    case 'holds':
      return say`starts at ${watts(powerW)} with ${voltsOrNone(loadV)} or a little less`
    case 'too-much-power':
      return say`${watts(powerW)} is more than these lamps pass, it tries and drops out`
    case 'below-minimum':
      return say`${voltsOrNone(loadV)} is below its least voltage`
    case 'above-ceiling':
      return say`${watts(powerW)} is more than these lamps pass to a rectifier with a capacitor; it may not start`
    case 'minimum-unknown':
      return say`${voltsOrNone(loadV)} for a steady draw, less behind a rectifier; whether it starts depends on its least voltage, which is not given`
    case 'form-decides':
      return say`${voltsOrNone(loadV)} for a steady draw, below its least voltage behind a rectifier; it may not start`
  }
}

function orderOf(options: readonly LampChoiceOption[], load: LoadToFeed, mainsV: number): LampOrder[] {
  const as = (use: LampOrder['use'], option: LampChoiceOption, reason: Phrase): LampOrder => ({
    use,
    ratedV: option.ratedV,
    ratedW: option.ratedW,
    count: option.count,
    arrangement: option.arrangement,
    reason,
  })
  const first = options.find((option) => option.suits)
  if (!first) return []
  const after = options.slice(options.indexOf(first) + 1)
  const next = [first, ...after].find((option) => option.startsRated === true && spares(option.ceilingW, load.ratedW))
  const last = after[after.length - 1]
  const order = [
    as(
      'first',
      first,
      say`the least current into a short, ${amperes(first.shortA, 3)}, behind which ${watts(load.idleW)} still starts at ${volts(mainsV)}, with a quarter to spare`,
    ),
  ]
  if (next && next !== first)
    order.push(
      as(
        'next',
        next,
        say`the least behind which it also runs at ${watts(load.ratedW)}, with a quarter to spare; only after the first stayed dim`,
      ),
    )
  if (last && last !== first && last !== next)
    order.push(
      as(
        'last',
        last,
        say`the most voltage for the load, ${voltsOrNone(last.ratedLoadV)} at its rating, before it goes on the mains without a lamp`,
      ),
    )
  return order
}

/** A sentence for each kind at hand that serves neither alone nor as a pair. */
const leftOut = (mainsV: number, onHand: readonly LampOnHand[], options: readonly Candidate[]): Phrase[] =>
  onHand
    .filter(mayBeTungsten)
    .filter(({ ratedV, ratedW }) => !options.some((option) => option.ratedV === ratedV && option.ratedW === ratedW))
    .map(
      ({ ratedV, ratedW, count }) =>
        say`Left out: ${watts(ratedW)} ${volts(ratedV)}, ${count} at hand, because ${count > 1 ? say`neither one nor two in series make` : say`one alone does not make`} up ${volts(mainsV)}.`,
    )

function noneFits(mainsV: number, onHand: readonly LampOnHand[] | null): Phrase {
  return onHand
    ? say`None of the lamps at hand serves on ${volts(mainsV)}, alone or as a pair of equal lamps in series: find incandescent or mains-voltage halogen lamps of ${watts(Math.min(...standardWattages.watts))} to ${watts(Math.max(...standardWattages.watts))} rated about ${volts(mainsV)}, or pairs rated about ${volts(mainsV / 2)}.`
    : say`No standard lamp is made for ${volts(mainsV)}, nor a pair in series.`
}
