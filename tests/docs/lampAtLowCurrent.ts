import { along } from '../../server/physics/interpolate.js'
import { stringAt } from '../../server/physics/lampString.js'
import { lampsOf } from '../../server/plan/firstPower/lamps.js'
import { measuredLamp } from '../support/measuredLamp.js'

const lamp = { lamps: [{ ratedV: 120, ratedW: 25 }], arrangement: 'series' as const }

/** The measured lamp beside both views of the loss through the gas, as a lamp of 25 W 120 V. */
export function lampAtLowCurrent() {
  const [lower, upper] = [lampsOf(lamp, 'lower'), lampsOf(lamp, 'upper')]
  return measuredLamp.map(({ volts, amps, resolution }) => ({
    volts,
    amps,
    resolution,
    lowerA: stringAt(lower, volts).currentA,
    upperA: stringAt(upper, volts).currentA,
    lowerV: along(lower.currentA, lower.voltageV, amps) ?? Number.NaN,
    upperV: along(upper.currentA, upper.voltageV, amps) ?? Number.NaN,
  }))
}

/** The section of docs/accuracy.md about it. */
export const lampAtLowCurrentSection = (): string[] => [
  '## The lamp at low current',
  '',
  'Two published views of the loss through the gas part at low current: it goes with T, or with T^1.7. The measured household lamp (13 points, rating',
  'not printed, taken as 25 W 120 V) lies between the two or within a digit of its reading of one of them; it does not decide between them. So the',
  'voltage of a lamp at a current is a band. **Limits at which to stop rest on its upper edge (T^1.7)**, so that no sound supply is called faulty;',
  '**warnings of a dark lamp rest on its lower edge (T)**, by which a dark lamp passes more.',
  '',
  '| read | current read | current by T | current by T^1.7 | voltage at that current by T | by T^1.7 |',
  '|---|---|---|---|---|---|',
  ...lampAtLowCurrent().map(
    ({ volts, amps, lowerA, upperA, lowerV, upperV }) =>
      `| ${volts} V | ${amps} A | ${lowerA.toFixed(4)} A | ${upperA.toFixed(4)} A | ${lowerV.toFixed(1)} V | ${upperV.toFixed(1)} V |`,
  ),
  '',
]
