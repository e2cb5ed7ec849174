import { mustBePositive, mustNotBeZero } from './range.js'

export interface BenchRail {
  /** signed [V] */
  voltageV: number
  /** most the machine takes, from its plate or measured [A]; null where nobody knows */
  currentA: number | null
}

export interface BenchRules {
  /** steps for a load that bears less than its voltage: share of the voltage, share of the current, wait [s] */
  steps: readonly { voltageShare: number; currentShare: number; holdS: number }[]
  /** the same for a load that takes constant power (a converter inside): full voltage from the start */
  constantPowerSteps: readonly { voltageShare: number; currentShare: number; holdS: number }[]
  /** first limit where the current is not known [A], and how it grows from step to step [1] */
  unknownFirstA: number
  unknownGrowth: number
  /** over-voltage setting over nominal [1] */
  overVoltage: number
}

export interface BenchStage {
  /** set on the supply, a magnitude [V] */
  voltageV: number
  limitA: number
  holdS: number
}

/**
 * What to set on a bench supply, step by step.
 *
 *   V_set = share |V|,  I_limit = share I;  current not known: I_limit = I_first × growth^step
 *
 * @param rail           voltage [V], not 0; current [A], more than 0 or null
 * @param constantPower  true where the machine's input is a converter that takes constant power
 * @param rules          tables and thresholds
 * @throws RangeError outside those ranges
 * @source common practice in first power-ups: low limit first, 1, 5 and 15 minutes
 */
export function benchStages(rail: BenchRail, constantPower: boolean, rules: BenchRules): BenchStage[] {
  const size = Math.abs(rail.voltageV)
  mustNotBeZero({ voltageV: rail.voltageV })
  if (rail.currentA !== null) mustBePositive({ currentA: rail.currentA })
  return (constantPower ? rules.constantPowerSteps : rules.steps).map(
    ({ voltageShare, currentShare, holdS }, index) => ({
      voltageV: size * voltageShare,
      limitA:
        rail.currentA === null ? rules.unknownFirstA * rules.unknownGrowth ** index : rail.currentA * currentShare,
      holdS,
    }),
  )
}

/**
 * Where to set over-voltage protection.
 *
 *   V = factor |V_nominal|
 *
 * @param voltageV  nominal [V], not 0
 * @param factor    [1], more than 1
 * @returns magnitude [V]
 * @throws RangeError outside those ranges
 * @source common practice: 10 to 15 % above nominal
 */
export function overVoltage(voltageV: number, factor: number): number {
  mustNotBeZero({ voltageV })
  if (!(factor > 1)) throw new RangeError(`factor must be more than 1, got ${factor}`)
  return Math.abs(voltageV) * factor
}

/**
 * Lowest input resistance at which the machine would not draw more than it is said to.
 *
 *   R = |V| / I
 *
 * @param voltageV  [V], not 0
 * @param currentA  most the machine takes [A], more than 0
 * @returns [Ω]
 * @throws RangeError outside those ranges
 * @source Ohm's law
 */
export function minimumResistance(voltageV: number, currentA: number): number {
  mustNotBeZero({ voltageV })
  mustBePositive({ currentA })
  return Math.abs(voltageV) / currentA
}

/** What an ohmmeter reading of a supply input points to. */
export type ResistanceReading = 'short' | 'low' | 'plausible' | 'open'

/**
 * Reads a resistance measured across a machine's input with the power off.
 *
 * @param measuredOhm  lower of the two readings, meter leads both ways round [Ω], 0 or more
 * @param minimumOhm   |V| / I [Ω], more than 0; null where the current is not known
 * @param shortOhm     at and below this it is taken as a short [Ω]
 * @param openOhm      at and above this nothing seems to be connected [Ω]
 * @throws RangeError outside those ranges
 * @source common practice: under 1 Ω on a 5 V rail is a short until explained
 */
export function readResistance(
  measuredOhm: number,
  minimumOhm: number | null,
  shortOhm: number,
  openOhm: number,
): ResistanceReading {
  if (!(measuredOhm >= 0)) throw new RangeError(`measuredOhm must be 0 Ω or more, got ${measuredOhm}`)
  if (measuredOhm >= openOhm) return 'open'
  if (minimumOhm !== null && measuredOhm >= minimumOhm) return 'plausible'
  if (measuredOhm <= shortOhm) return 'short'
  return minimumOhm === null ? 'plausible' : 'low'
}
