import { stringAt } from '../../physics/lampString.js'
import { quadratureLampV } from '../../physics/seriesLamp.js'
import { lampShareUnknown, plannedSwitchOn, reservoirPerWatt } from '../../tables/firstPower.js'
import { type GlowWord, glowRows } from '../../tables/glow.js'
import { type Phrase, say } from '../../words/phrase.js'
import { voltAmperes, volts, watts } from '../../words/quantity.js'
import { describeLamps, glowOf, lampsOf } from '../firstPower/lamps.js'
import { type SeriesLampAnswer, seriesLamp } from '../firstPower/seriesLamp.js'
import { type LampTransient, lampTransient } from '../firstPower/transient.js'
import { type LampUse, type PlanFacts, setupOf } from './facts.js'
import { atMost } from './step.js'

/** What the lamp shows and leaves for a supply that takes a given power. */
export interface BehindLamp {
  /** what it takes [W] */
  powerW: number
  answer: SeriesLampAnswer
  /** most across the lamps: what limits rest on; null where the supply would be starved [V rms] */
  lampV: number | null
  /** least across the lamps, by the other view of the loss through the gas; null likewise [V rms] */
  leastLampV: number | null
  /** left for the supply [V rms] */
  loadV: number | null
  glow: GlowWord
  starts: boolean | null
  working: Phrase
}

/**
 * What may stand on the lamp: the figure worked out, rounded up as it is printed; where there is none, half of the mains.
 *
 * @param lampV  worked out [V]; null where it is not
 */
export function lampBand({ reach }: PlanFacts, lampV: number | null): { unit: 'V'; low: number; high: number } {
  if (lampV === null && !reach) throw new RangeError('nothing goes behind a lamp on a mains that is not known')
  return { unit: 'V', low: 0, high: atMost(lampV ?? lampShareUnknown.value * (reach?.voltageV ?? 0)) }
}

export const seenAs = (glow: GlowWord): string => glowRows.find((row) => row.glow === glow)?.seen ?? glow

/** Lamp in words: "a lamp of 60 W 230 V". */
export const lampText = (lamp: LampUse | null): Phrase =>
  lamp
    ? describeLamps(setupOf(lamp, 0, 0))
    : say`a lamp rated for at least the full mains voltage (which one is not worked out yet)`

/**
 * A supply behind the lamps: a transformer as the resistance that takes that power on the full mains, anything else as
 * a rectifier with a capacitor that takes it whatever its voltage.
 *
 * @throws RangeError where the mains is not known or the lamps melt on it
 */
export function behindLamp(facts: PlanFacts, lamp: LampUse, powerW: number): BehindLamp | null {
  const { reach, technology, minimumV } = facts
  if (!reach || !(powerW > 0)) return null
  const setup = setupOf(lamp, reach.voltageV, reach.frequencyHz)
  if (technology === 'transformer') {
    const resistanceOhm = reach.voltageV ** 2 / powerW
    const answer = seriesLamp(setup, { kind: 'resistance', resistanceOhm }, 'upper')
    return {
      powerW,
      answer,
      lampV: answer.lampV,
      leastLampV: answer.lampBandV.low,
      loadV: answer.loadV,
      glow: answer.glow,
      // it has no threshold: it works from the first volt, only lower
      starts: null,
      working: say`${watts(powerW)} at ${volts(reach.voltageV)} as a resistance: ${volts(answer.lampV)} on the lamps, ${volts(answer.loadV)} for the supply`,
    }
  }
  const answer = seriesLamp(setup, { kind: 'constant-power', powerW, minimumV }, 'upper')
  const peaky = answer.rectifierInput
  const runs = answer.starts !== false && peaky !== null
  return {
    powerW,
    answer,
    lampV: runs ? peaky.lampV : null,
    leastLampV: runs ? peaky.lampBandV.low : null,
    loadV: runs ? answer.loadV : null,
    glow: runs ? peaky.glow : answer.glow,
    starts: answer.starts,
    working: say`${watts(powerW)} behind a rectifier: ${
      runs
        ? say`${volts(peaky.lampV)} on the lamps; ${answer.startsBecause}`
        : answer.starts === false
          ? answer.startsBecause
          : say`more than the ${watts(answer.largestRectifierPowerW, 3, 'down')} these lamps pass to it`
    }`,
  }
}

/** Volts on the lamps as a figure: from the least to the most, which limits rest on. */
export const onLamps = ({ lampV, leastLampV }: BehindLamp, starved: Phrase): Phrase => {
  if (lampV === null) return starved
  const most = say`at most ${volts(lampV, 3, 'up')}`
  return leastLampV === null
    ? most
    : say`${most}, ${volts(leastLampV, 3, 'down')} at least: gas-filled lamps differ at low current`
}

/**
 * The supply alone, with nothing connected. A transformer's magnetising current may light the lamp more than the watts it takes: what is
 * larger of the two counts, so that no healthy transformer is taken for a faulty one.
 */
export function idleBehind(facts: PlanFacts, lamp: LampUse): BehindLamp | null {
  const { idle, reach } = facts
  if (!idle) return null
  const found = behindLamp(facts, lamp, idle.powerW)
  if (!found || !reach || idle.reactiveVA === null) return found
  const setup = setupOf(lamp, reach.voltageV, reach.frequencyHz)
  const string = lampsOf(setup, 'upper')
  const lampV = quadratureLampV(string, reach.voltageV, idle.reactiveVA)
  if (found.lampV === null || lampV <= found.lampV) return found
  return {
    ...found,
    lampV,
    leastLampV: quadratureLampV(lampsOf(setup, 'lower'), reach.voltageV, idle.reactiveVA),
    loadV: Math.sqrt(reach.voltageV ** 2 - lampV ** 2),
    glow: glowOf(stringAt(string, lampV).filamentK),
    working: say`${voltAmperes(idle.reactiveVA, 3)} of magnetising current at ${volts(reach.voltageV)}, in quadrature: ${volts(lampV)} on the lamps`,
  }
}

/** The reservoir capacitor that is taken: as read, or estimated from the rating. */
export function reservoirOf(facts: PlanFacts): { bulkF: number; estimated: boolean } | null {
  if (facts.technology === 'transformer') return null
  if (facts.options.bulkF != null) return { bulkF: facts.options.bulkF, estimated: false }
  if (!facts.rated || !facts.reach) return null
  const { lowMainsV, lowFaradPerW, highFaradPerW } = reservoirPerWatt
  const wide = facts.supply.input.windows.some(({ min }) => min < lowMainsV)
  const perW = wide || facts.reach.voltageV < lowMainsV ? lowFaradPerW : highFaradPerW
  return { bulkF: perW * facts.rated.powerW, estimated: true }
}

/** The first seconds of the supply alone; null for a transformer or where too little is known. */
export function firstSeconds(facts: PlanFacts, lamp: LampUse): LampTransient | null {
  const reservoir = reservoirOf(facts)
  if (!facts.reach || !reservoir || !facts.idle) return null
  if (reservoir.bulkF < plannedSwitchOn.leastF || reservoir.bulkF > plannedSwitchOn.mostF) return null
  const { voltageV, frequencyHz } = facts.reach
  return lampTransient(
    setupOf(lamp, voltageV, frequencyHz),
    { bulkF: reservoir.bulkF, loadW: facts.idle.powerW, startV: null },
    'crest',
    plannedSwitchOn.runS,
  )
}
