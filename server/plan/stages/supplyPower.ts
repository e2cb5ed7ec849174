import type { PreparedSupply } from '../../chain/case/situation.js'
import { inputPower, outputPowerW } from '../../chain/inputPower.js'
import { inputFromOutputW } from '../../physics/apparentPower.js'
import { idlePower, idleTransformer, leastFigures } from '../../tables/firstPower.js'
import { assuredShare } from '../../tables/seriesLamp.js'
import type { Source } from '../../tables/source.js'
import { supplyEfficiency, switchModePowerFactor, transformerPowerFactor } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { decimal, voltAmperes, watts } from '../../words/quantity.js'

/** A power with where it comes from. */
export interface PowerFact {
  powerW: number
  working: Phrase
  sources: Source[]
}

/** What a supply takes with nothing connected; a transformer also magnetises, with volt-amperes that are no watts. */
export interface IdleFact extends PowerFact {
  /** what a healthy transformer may magnetise with [VA]; null where it is none */
  reactiveVA: number | null
}

/** What the supply takes at full load; null where its plate does not say, or says next to nothing. */
export function ratedPower(supply: PreparedSupply): PowerFact | null {
  const found = powerOnPlate(supply)
  return found && found.powerW >= leastFigures.powerW ? found : null
}

function powerOnPlate(supply: PreparedSupply): PowerFact | null {
  const outputW = outputPowerW(supply)
  if (outputW !== null) {
    const powerW = inputFromOutputW(outputW, supplyEfficiency.value)
    return {
      powerW,
      working: say`${watts(outputW)} out / ${decimal(supplyEfficiency.value)} = ${watts(powerW)} in`,
      sources: [supplyEfficiency.source],
    }
  }
  if (supply.input.powerW !== null)
    return { powerW: supply.input.powerW, working: say`${watts(supply.input.powerW)} on its plate`, sources: [] }
  const input = inputPower(supply)
  if (!input) return null
  const factor = supply.technology === 'transformer' ? transformerPowerFactor : switchModePowerFactor
  const powerW = input.powerVA * factor.value
  return {
    powerW,
    working: say`${voltAmperes(input.powerVA)} (${input.basis}) × ${decimal(factor.value)} = ${watts(powerW)}`,
    sources: [...input.sources, factor.source],
  }
}

/**
 * What it takes with nothing connected: as measured, else estimated from its rating. A transformer, and a supply of which the kind is
 * not known, may magnetise with 0.4 of its rated VA, or with what the watts that were measured are a quarter of.
 */
export function idlePowerOf(
  measuredW: number | null,
  { technology, input }: PreparedSupply,
  rated: PowerFact | null,
): IdleFact | null {
  const { share: reactiveShare, powerFactor, source } = idleTransformer
  const ratedVA = input.powerVA ?? (rated && rated.powerW / transformerPowerFactor.value)
  const estimatedVA = ratedVA === null ? 0 : reactiveShare * ratedVA
  const measuredVA = measuredW === null ? 0 : measuredW / powerFactor
  const reactiveVA = technology === 'switch-mode' ? null : Math.max(estimatedVA, measuredVA) || null
  const magnetising = (words: Phrase): Phrase =>
    reactiveVA === null
      ? words
      : say`${words}; magnetising current of a transformer: up to ${decimal(reactiveShare)} of its rating, ${voltAmperes(reactiveVA, 3)} in quadrature`
  const sources = reactiveVA === null ? [] : [source]
  if (measuredW !== null)
    return {
      powerW: measuredW,
      reactiveVA,
      working: magnetising(say`${watts(measuredW)} measured with nothing connected`),
      sources,
    }
  if (!rated) return null
  // where the kind is not known, the one that takes more
  const { share, floorW } = idlePower[technology ?? 'transformer']
  const powerW = Math.min(Math.max(share * rated.powerW, floorW), rated.powerW)
  return {
    powerW,
    reactiveVA,
    working: magnetising(
      say`at most ${decimal(share)} × ${watts(rated.powerW)}, or ${watts(floorW)}: ${watts(powerW)} (project estimate; measure it)`,
    ),
    sources: [idlePower.source, ...sources],
  }
}

/** Least mains it must run at [V]: the bottom of the plate's window, less the share any unit must bear. */
export function minimumOf(supply: PreparedSupply, mainsV: number | null): number | null {
  const windows = supply.input.windows.filter(
    ({ min, max }) => mainsV === null || (mainsV >= min * assuredShare.value && mainsV <= max / assuredShare.value),
  )
  const lowest = Math.min(...windows.map(({ min }) => min))
  return Number.isFinite(lowest) ? lowest * assuredShare.value : null
}
