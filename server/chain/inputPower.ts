import { apparentFromActiveVA, apparentPowerVA, inputFromOutputW } from '../physics/apparentPower.js'
import { atMost } from '../physics/tolerance.js'
import type { Source } from '../tables/source.js'
import { supplyEfficiency, switchModePowerFactor, transformerPowerFactor } from '../tables/thresholds.js'
import { type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, voltAmperes, volts, watts } from '../words/quantity.js'
import type { PreparedSupply, Rail } from './case/situation.js'
import { ratingPlate } from './words.js'

/** What a supply takes from the mains at most. */
export interface InputPower {
  powerVA: number
  /** how it was found, as the last words of a sentence */
  basis: Phrase
  /** put into words when it is asked for */
  readonly working: Phrase[]
  sources: Source[]
}

/**
 * What a supply takes from the mains at most, from the best fact there is: VA printed; amperes times the lowest voltage of the plate,
 * where they are drawn; watts over a power factor; output watts over an efficiency and a power factor.
 * An input below what an only output gives cannot be right, and the output is taken. Null where the plate says none of them.
 */
export function inputPower(supply: PreparedSupply): InputPower | null {
  const stated = statedInput(supply)
  if (stated && supply.rails.length > 1) return stated
  const outputW = outputPowerW(supply)
  if (outputW === null || (stated && atMost(outputW, stated.powerVA))) return stated
  const taken = fromOutputs(supply, outputW)
  return stated
    ? {
        ...taken,
        basis: say`${taken.basis}, as ${stated.basis} is less than the output gives`,
        working: [
          ...stated.working,
          say`less than the output’s ${watts(outputW)}: one of the two was misread`,
          ...taken.working,
        ],
      }
    : taken
}

function statedInput({ input, technology }: PreparedSupply): InputPower | null {
  const { powerVA, currentA, powerW, windows } = input
  if (powerVA !== null && powerVA > 0)
    return {
      powerVA,
      basis: say`the VA on the plate`,
      get working() {
        return [say`plate: ${voltAmperes(powerVA)}`]
      },
      sources: [ratingPlate],
    }
  const lowestV = Math.min(...windows.map(({ min }) => min))
  if (currentA !== null && currentA > 0 && lowestV > 0 && Number.isFinite(lowestV)) {
    const product = apparentPowerVA(lowestV, currentA)
    return {
      powerVA: product,
      basis: say`the amperes on the plate, which belong to its lowest voltage`,
      get working() {
        return [say`${volts(lowestV)} × ${amperes(currentA)} = ${voltAmperes(product)}`]
      },
      sources: [ratingPlate],
    }
  }
  if (powerW === null || !(powerW > 0)) return null
  const { factor, factorText } = powerFactorOf(technology)
  const apparent = apparentFromActiveVA(powerW, factor.value)
  return {
    powerVA: apparent,
    basis: say`the watts on the plate and a ${factorText}`,
    get working() {
      return [say`${watts(powerW)} / ${decimal(factor.value)} = ${voltAmperes(apparent, 4, 'up')} (${factorText})`]
    },
    sources: [ratingPlate, factor.source],
  }
}

function powerFactorOf(technology: PreparedSupply['technology']) {
  const factor = technology === 'transformer' ? transformerPowerFactor : switchModePowerFactor
  const open = technology === null ? ', taken low as it is not known whether it is a switch-mode supply' : ''
  return { factor, factorText: say`power factor ${decimal(factor.value)}${open}` }
}

function fromOutputs({ technology }: PreparedSupply, outputW: number): InputPower {
  const { factor, factorText } = powerFactorOf(technology)
  const apparent = apparentFromActiveVA(inputFromOutputW(outputW, supplyEfficiency.value), factor.value)
  return {
    powerVA: apparent,
    basis: say`its outputs, an efficiency of ${decimal(supplyEfficiency.value)} and a ${factorText}`,
    get working() {
      return [
        say`${watts(outputW)} / ${decimal(supplyEfficiency.value)} / ${decimal(factor.value)} = ${voltAmperes(apparent, 4, 'up')} (${factorText})`,
      ]
    },
    sources: [ratingPlate, supplyEfficiency.source, factor.source],
  }
}

/** What one rail gives at most [W], the lower of printed watts and volts times amperes; null where neither is known. */
export function railPowerW({ voltageV, currentA, powerW }: Rail): number | null {
  const product = currentA === null ? null : Math.abs(voltageV) * currentA
  if (product === null || powerW === null) return product ?? powerW
  return Math.min(product, powerW)
}

/** All outputs together [W], no more than the plate names for them; null where one is not known, or there is none. */
export function outputPowerW({ rails, outputsTotalW }: Pick<PreparedSupply, 'rails' | 'outputsTotalW'>): number | null {
  let sum = 0
  for (const rail of rails) {
    const power = railPowerW(rail)
    if (power === null) return outputsTotalW
    sum += power
  }
  return sum > 0 ? Math.min(sum, outputsTotalW ?? sum) : outputsTotalW
}
