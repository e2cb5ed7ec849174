import { type Inrush, inrush, inrushLimiter } from '../../physics/inrush.js'
import { bridgeDiode } from '../../tables/seriesLamp.js'
import type { Source } from '../../tables/source.js'
import { commonPractice } from '../../tables/source.js'
import { say } from '../../words/phrase.js'
import { amperes, decimal, farads, joules, ohms, seconds, volts } from '../../words/quantity.js'
import type { Explained } from './lamps.js'

export interface InrushAnswer extends Inrush, Explained {
  /** time for the capacitor to charge through the resistance: the time constant of an exponential pulse [s] */
  timeConstantS: number
  energyJ: number
}

export interface InrushAsked {
  readonly mains: { readonly voltageV: number; readonly frequencyHz: number }
  readonly seriesOhm: number
  readonly bulkF: number
  readonly loadOhm: number | null
  readonly switchAt: 'crest' | 'zero'
  readonly durationS: number
}

/** Long enough for the charging pulse and ten cycles of 50 Hz [s]. */
export const usualInrushRunS = 0.2

const circuitSource: Source = commonPractice(
  'Time-step solution of the rectifier circuit',
  'agrees with a circuit simulator within 0.1 %; the resistance is taken as fixed: an NTC resistor that warms meanwhile passes more',
)

/**
 * Inrush without a lamp, with its working: what a fuse-link and a switch must bear.
 *
 * @source {@link inrush}
 */
export function inrushAnswer({ mains, seriesOhm, bulkF, loadOhm, switchAt, durationS }: InrushAsked): InrushAnswer {
  const found = inrush({
    mainsV: mains.voltageV,
    frequencyHz: mains.frequencyHz,
    seriesOhm,
    bulkF,
    loadOhm,
    switchAt,
    durationS,
    diode: bridgeDiode,
  })
  const crestV = Math.SQRT2 * mains.voltageV
  const { energyJ } = inrushLimiter(crestV, bulkF, found.peakA > 0 ? found.peakA : 1)
  const timeConstantS = seriesOhm * bulkF
  return {
    ...found,
    timeConstantS,
    energyJ,
    working: [
      say`crest √2 × ${volts(mains.voltageV)} = ${volts(crestV)}; at most ${volts(crestV)} / ${ohms(seriesOhm)} = ${amperes(crestV / seriesOhm)}`,
      say`switched at ${switchAt === 'crest' ? say`the crest` : say`the zero crossing`}: ${amperes(found.peakA, 4, 'up')} peak, diodes counted`,
      say`time constant ${ohms(seriesOhm)} × ${farads(bulkF)} = ${seconds(timeConstantS)}; energy ${farads(bulkF)} × ${volts(crestV)}² / 2 = ${joules(energyJ)}`,
      say`∫ i² dt: ${decimal(found.firstHalfCycleI2t, 4, 'up')} A²s in the first half cycle, ${decimal(found.totalI2t, 4, 'up')} A²s in ${seconds(durationS)}; by hand C Vp² / (2 R) = ${decimal((bulkF * crestV ** 2) / (2 * seriesOhm))} A²s`,
      say`last cycle: ${volts(found.meanV)} mean, ${volts(found.rippleV)} ripple, ${amperes(found.rmsA)} rms from the mains`,
    ],
    cautions: [
      say`The worst moment to switch on is the crest; it cannot be chosen by hand, so choose fuse-links for it.`,
      say`An NTC resistor that is still warm limits little: wait a minute or more before switching on again.`,
      say`The capacitor keeps its charge after switch-off: discharge and measure before touching anything.`,
    ],
    sources: [circuitSource, ...bridgeDiode.sources],
  }
}
