import type { FirstPowerPlan } from '../firstPowerPlan.js'

/** What a supply is plugged into once the lamp is out: behind a converter never the wall, which it does not bear. */
export const outletOf = (through: FirstPowerPlan['through']): string =>
  through === 'converter' ? 'the converter’s outlet, never into the wall socket' : 'the socket itself'
