import { stringAt } from '../../physics/lampString.js'
import type { GlowWord } from '../../tables/glow.js'
import { say } from '../../words/phrase.js'
import { amperes, plain, voltAmperes, volts } from '../../words/quantity.js'
import { type Explained, glowOf, type LampSetup, lampCautions, lampSources, lampsOf, lampWorking } from './lamps.js'

export interface LampReading extends Explained {
  currentA: number
  /** the same by the two views of what the gas carries off */
  currentBandA: { low: number; high: number }
  /** least there can be: mains less lamp volts */
  loadV: number
  loadVA: number
  filamentK: number
  glow: GlowWord
}

/**
 * From the volts read across the lamps to what the load draws: a filament is an ammeter once its curve is known.
 *
 * @param lampV  read across all lamps with a true-rms meter, steady for some seconds [V rms], 0 to the mains
 * @throws RangeError outside that range, NaN included
 * @source the lamp's curve, which holds from dark to full brightness
 */
export function lampReading(setup: LampSetup, lampV: number): LampReading {
  const mainsV = setup.mains.voltageV
  if (!(lampV >= 0 && lampV <= mainsV)) throw new RangeError(`lampV must be 0 V to ${mainsV} V, got ${lampV}`)
  const string = lampsOf(setup)
  const lamp = stringAt(string, lampV)
  const other = stringAt(lampsOf(setup, 'upper'), lampV)
  const currentBandA = { low: other.currentA, high: lamp.currentA }
  const loadV = mainsV - lampV
  const loadVA = loadV * lamp.currentA
  return {
    currentA: lamp.currentA,
    currentBandA,
    loadV,
    loadVA,
    filamentK: lamp.filamentK,
    glow: glowOf(lamp.filamentK),
    working: [
      ...lampWorking(string),
      say`the lamps pass ${amperes(lamp.currentA)} at ${volts(lampV)} (filament ${plain(lamp.filamentK, 'K', 3)})`,
      say`or ${amperes(other.currentA)}, where the loss through the gas goes with ${'T^1.7'} rather than T: at low current the two published views part, and the larger current is taken`,
      say`load: ${volts(mainsV)} − ${volts(lampV)} = ${volts(loadV)}, ${volts(loadV)} × ${amperes(lamp.currentA)} = ${voltAmperes(loadVA)}`,
    ],
    cautions: [
      say`The difference of the two voltages is the least the load can have: a load that draws in peaks or is inductive has more. Measure across the load as well where that can be done without touching live parts.`,
      say`Enter the mains voltage as measured; on a large lamp a few volts of error in the mains do not matter, in the lamp reading they do.`,
      ...lampCautions(setup, string),
    ],
    sources: lampSources(string),
  }
}
