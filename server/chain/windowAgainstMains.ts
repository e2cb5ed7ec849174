import { atMost } from '../physics/tolerance.js'
import { plateNominalFor } from '../tables/plateNominals.js'
import { nominalMatch, voltageCautionBelow, voltageStopAbove, voltageStopBelow } from '../tables/thresholds.js'
import type { VoltageWindow } from './case/request.js'
import type { Outcome } from './finding.js'
import { testedTop } from './matching/testedTop.js'

/** How a plate's window stands to the mains. */
export type WindowFit =
  | 'made for it'
  | 'made for it by another name'
  | 'far too high'
  | 'beyond its test'
  | 'far too low'
  | 'may drop out'
  | 'within'
  | 'band not known'

export const outcomeOf: Record<WindowFit, Outcome> = {
  'made for it': 'clear',
  'made for it by another name': 'clear',
  'far too high': 'stop',
  'beyond its test': 'caution',
  'far too low': 'stop',
  'may drop out': 'caution',
  within: 'clear',
  'band not known': 'unknown',
}

/**
 * How a plate's window stands to the mains. A window that holds the nominal voltage, within 2 %, was made for it.
 * A wider window never comes out worse than a narrower one inside it.
 *
 * @param window    plate [V]
 * @param voltageV  nominal voltage that reaches the supply [V], more than 0
 * @param band      lowest and highest it may be [V]; null where not known
 * @param frequencyHz  of the mains [Hz], more than 0; null where not known
 */
export function windowAgainstMains(
  window: VoltageWindow,
  voltageV: number,
  band: { minV: number; maxV: number } | null,
  frequencyHz: number | null = null,
): WindowFit {
  const { min, max } = window
  const margin = nominalMatch.value * voltageV
  if (atMost(min, voltageV + margin) && atMost(voltageV - margin, max)) return 'made for it'
  if (plateNominalFor(window, { voltageV, frequencyHz })) return 'made for it by another name'
  if (!atMost(voltageV, voltageStopAbove.value * max)) return 'far too high'
  if (!atMost(voltageStopBelow.value * min, voltageV)) return 'far too low'
  if (!band) return 'band not known'
  if (!atMost(band.maxV, testedTop(window).testedV)) return 'beyond its test'
  if (!atMost(voltageCautionBelow.value * min, Math.min(voltageV, band.minV))) return 'may drop out'
  return 'within'
}
