import { CircuitRun, type SwitchOn } from './circuitRun.js'
import type { EnergyBalance } from './energyBalance.js'
import { mustBePositive } from './range.js'
import { Sampler } from './sampler.js'

export interface SwitchOnRun {
  /** for drawing: the first at switch-on, equal length */
  timeS: number[]
  /** of the hottest filament; the cold temperature where there is none */
  filamentK: number[]
  bulkV: number[]
  /** rms over the half cycle before [A]; the first is the current at switch-on */
  currentA: number[]
  peakA: number
  peakAtS: number
  /** ∫ i² dt over the run, and over the first half cycle [A²s] */
  i2t: number
  firstHalfCycleI2t: number
  /** from when the filament stays near its last mean; null where it has not settled */
  settlesToS: number | null
  /** over the last mains cycle: mean filament temperature, mean capacitor volts, its ripple and the rms current */
  endFilamentK: number
  endBulkV: number
  endRippleV: number
  endA: number
  /** how often a constant-power load gave up */
  gaveUp: number
  /** when a filament melted; null where none did */
  meltedAtS: number | null
  energy: EnergyBalance
}

/** The sine is taken as straight between two steps, at 100 a half cycle wrong by (π / 100)² / 8 = 1.2 in 10 000 of its crest. */
const usualStepsPerHalfCycle = 100

/**
 * The first seconds after switch-on: {@link SwitchOn} and {@link SwitchOnRun} carry the units, [V], [A], [F], [Ω], [s].
 *
 * Between two points of time the source is a straight line and the resistances are constant, so the capacitor's voltage
 * is solved exactly, whatever its time constant ({@link capacitorStep}). The moments at which the bridge begins and ends
 * to conduct are located within the step. Filaments add up heat: dH/dt = i² R(H) − P(H), with R and P taken in the middle
 * of the step. The diodes' characteristic is replaced by its tangent at the current at the start of the step.
 *
 * @throws RangeError for a voltage, frequency, capacitance, resistance, duration or number of samples not more than 0,
 *   and for an odd number of steps
 * @source Kirchhoff's laws, the heat balance of the filament, the diode equation
 */
export function switchOn(circuit: SwitchOn): SwitchOnRun {
  const { mainsV, frequencyHz, bulkF, durationS, load } = circuit
  mustBePositive({ mainsV, frequencyHz, bulkF, durationS, samples: circuit.samples })
  if (typeof circuit.series === 'number') mustBePositive({ seriesOhm: circuit.series })
  if (load.kind === 'resistance') mustBePositive({ loadOhm: load.resistanceOhm })
  const stepsPerHalfCycle = circuit.stepsPerHalfCycle ?? usualStepsPerHalfCycle
  if (!(stepsPerHalfCycle >= 2 && stepsPerHalfCycle % 2 === 0))
    throw new RangeError(`stepsPerHalfCycle must be even and 2 or more, got ${stepsPerHalfCycle}`)

  const crestV = Math.SQRT2 * mainsV
  const startPhase = circuit.switchAt === 'crest' ? Math.PI / 2 : 0
  const rectifiedV = (timeS: number): number =>
    crestV * Math.abs(Math.sin(startPhase + 2 * Math.PI * frequencyHz * timeS))
  const gridS = 1 / (2 * frequencyHz * stepsPerHalfCycle)
  const gridSteps = Math.max(1, Math.ceil(durationS / gridS - 1e-9))

  const run = new CircuitRun(circuit, rectifiedV(0))
  const { series } = run
  const sampler = new Sampler(gridSteps, circuit.samples, stepsPerHalfCycle)
  sampler.add(0, series.hottestK(), 0, run.currentA)
  let firstHalfCycleI2t = 0
  const halfCycleK: number[] = []
  let halfCycleSum = 0
  for (let step = 0; step < gridSteps; step++) {
    const untilS = Math.min(durationS, (step + 1) * gridS)
    const startS = run.timeS
    const square = run.follow(rectifiedV(untilS), untilS)
    if (step < stepsPerHalfCycle) firstHalfCycleI2t = run.i2t
    const hottestK = series.hottestK()
    halfCycleSum += hottestK
    if ((step + 1) % stepsPerHalfCycle === 0) {
      halfCycleK.push(halfCycleSum / stepsPerHalfCycle)
      halfCycleSum = 0
    }
    sampler.step(step, run.timeS, hottestK, run.bulkV, square, run.timeS - startS)
  }
  run.end()
  const means = run.lastCycle.means()
  return {
    ...sampler.taken,
    peakA: run.peakA,
    peakAtS: run.peakAtS,
    i2t: run.i2t,
    firstHalfCycleI2t,
    settlesToS: settles(halfCycleK, means.endFilamentK, circuit.settledBand, frequencyHz),
    ...means,
    gaveUp: run.load.gaveUp,
    meltedAtS: run.meltedAtS,
    energy: run.energy,
  }
}

/** From when the half-cycle means stay near the last mean; null where only the last tenth of the run does. */
function settles(
  means: readonly number[],
  endK: number,
  band: { kelvin: number; share: number },
  frequencyHz: number,
): number | null {
  const width = Math.max(band.kelvin, band.share * endK)
  const lastOutside = means.findLastIndex((mean) => Math.abs(mean - endK) > width)
  return lastOutside + 1 > 0.9 * means.length ? null : (lastOutside + 1) / (2 * frequencyHz)
}
