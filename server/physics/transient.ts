import type { EnergyBalance } from './energyBalance.js'
import type { LampString } from './lampString.js'
import { mustBePositive } from './range.js'
import { Sampler } from './sampler.js'
import { seriesElement } from './seriesElement.js'

/** I = Is (exp(U / (n UT)) − 1) in series with a resistance. */
export interface DiodeModel {
  readonly saturationA: number
  readonly emission: number
  readonly seriesOhm: number
  readonly thermalV: number
}

/** What stands behind the capacitor. */
export type BulkLoad =
  | { readonly kind: 'none' }
  | { readonly kind: 'resistance'; readonly resistanceOhm: number }
  | {
      readonly kind: 'constant-power'
      readonly powerW: number
      /** capacitor volts at which it starts [V], and below which it gives up */
      readonly startV: number
      readonly stopV: number
      /** pause after it gave up [s] */
      readonly restartS: number
    }

/** Mains, a series element, a bridge, a capacitor and a load, switched on at a chosen moment. */
export interface SwitchOn {
  /** [V rms] */
  readonly mainsV: number
  readonly frequencyHz: number
  readonly switchAt: 'crest' | 'zero'
  /** lamps, or a fixed resistance [Ω] */
  readonly series: LampString | number
  readonly diode: DiodeModel
  /** [F] */
  readonly bulkF: number
  readonly load: BulkLoad
  /** a short across the capacitor from then on [s] */
  readonly shortAfterS?: number | undefined
  readonly durationS: number
  /** most samples for drawing */
  readonly samples: number
  /** even, so that a zero crossing falls on a step; 100 unless given */
  readonly stepsPerHalfCycle?: number
  /** a filament counts as settled within so many kelvin, or this part, of its last mean */
  readonly settledBand: { readonly kelvin: number; readonly share: number }
}

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
 * Between two points of time the source is a straight line and the resistances are constant, so the capacitor's
 * voltage is solved exactly, whatever its time constant:
 *
 *   C dVc/dt = (|v| − 2 Ud − Vc) / R − Vc / RL − IL    while the bridge conducts, without the first term while not
 *   Vc(t) = a + b t + K exp(−t / τ),  τ = C / (1/R + 1/RL)
 *
 * The moments at which the bridge begins and ends to conduct are located within the step. Filaments add up heat:
 * dH/dt = i² R(H) − P(H), with R and P taken in the middle of the step. The diodes' characteristic is replaced by its
 * tangent at the current at the start of the step.
 *
 * @throws RangeError for a voltage, frequency, capacitance, resistance, duration or number of samples not more than 0,
 *   and for an odd number of steps
 * @source Kirchhoff's laws, the heat balance of the filament, the diode equation
 */
export function switchOn(circuit: SwitchOn): SwitchOnRun {
  const { mainsV, frequencyHz, bulkF, durationS, load, diode } = circuit
  mustBePositive({ mainsV, frequencyHz, bulkF, durationS, samples: circuit.samples })
  if (typeof circuit.series === 'number') mustBePositive({ seriesOhm: circuit.series })
  if (load.kind === 'resistance') mustBePositive({ loadOhm: load.resistanceOhm })

  const stepsPerHalfCycle = circuit.stepsPerHalfCycle ?? usualStepsPerHalfCycle
  if (!(stepsPerHalfCycle >= 2 && stepsPerHalfCycle % 2 === 0))
    throw new RangeError(`stepsPerHalfCycle must be even and 2 or more, got ${stepsPerHalfCycle}`)

  const crestV = Math.SQRT2 * mainsV
  const omega = 2 * Math.PI * frequencyHz
  const startPhase = circuit.switchAt === 'crest' ? Math.PI / 2 : 0
  const gridS = 1 / (2 * frequencyHz * stepsPerHalfCycle)
  const gridSteps = Math.max(1, Math.ceil(durationS / gridS - 1e-9))
  const cycleS = 1 / frequencyHz
  const windowFromS = Math.max(0, durationS - cycleS)
  const shortAfterS = circuit.shortAfterS ?? Number.POSITIVE_INFINITY
  const emissionV = diode.emission * diode.thermalV

  const series = seriesElement(circuit.series)
  const smallA = (1e-4 * crestV) / series.coldOhm
  const sampler = new Sampler(gridSteps, circuit.samples, stepsPerHalfCycle)

  let time = 0
  let bulkV = 0
  let conducting = false
  let current = 0
  let shorted = false
  let running = false
  let mayStartS = 0
  let gaveUp = 0
  let meltedAtS: number | null = null
  let peakA = 0
  let peakAtS = 0
  let i2t = 0
  let firstHalfCycleI2t = 0
  const energy: EnergyBalance = {
    sourceJ: 0,
    radiatedJ: 0,
    filamentJ: 0,
    resistorJ: 0,
    bridgeJ: 0,
    loadJ: 0,
    capacitorJ: 0,
    shortedJ: 0,
  }
  const end = { seconds: 0, kelvinS: 0, voltS: 0, i2t: 0, lowV: Number.POSITIVE_INFINITY, highV: 0 }
  const halfCycleK: number[] = []
  let halfCycleSum = 0
  let nextV = crestV * Math.abs(Math.sin(startPhase))

  // the tangent to the two diodes at a current: i sees 2 (dropV + dropOhm i)
  let dropV = 0
  let dropOhm = 0
  const tangent = (at: number): void => {
    const through = Math.max(at, smallA)
    dropV = emissionV * (Math.log(through / diode.saturationA + 1) - through / (through + diode.saturationA))
    dropOhm = emissionV / (through + diode.saturationA) + diode.seriesOhm
  }
  tangent(smallA)
  if (nextV > 0)
    for (let round = 0; round < 20; round++) {
      current = Math.max(0, (nextV - 2 * dropV) / (series.ohm + 2 * dropOhm))
      tangent(current)
    }
  peakA = current
  sampler.add(0, series.hottestK(), 0, current)

  for (let step = 0; step < gridSteps; step++) {
    const gridEndS = Math.min(durationS, (step + 1) * gridS)
    let sourceV = nextV
    nextV = crestV * Math.abs(Math.sin(startPhase + omega * gridEndS))
    const slope = (nextV - sourceV) / (gridEndS - time)
    if (!shorted && time >= shortAfterS) {
      energy.shortedJ += (bulkF * bulkV * bulkV) / 2
      shorted = true
      running = false
      bulkV = 0
    }
    let events = 0
    let gridI2t = 0
    const gridStartS = time
    while (time < gridEndS) {
      let h = gridEndS - time
      if (load.kind === 'constant-power' && !shorted) {
        if (running && bulkV < load.stopV) {
          running = false
          gaveUp += 1
          mayStartS = time + load.restartS
        } else if (!running && bulkV >= load.startV && time >= mayStartS) running = true
      }
      const loadA = running && load.kind === 'constant-power' ? load.powerW / bulkV : 0
      const loadS = load.kind === 'resistance' && !shorted ? 1 / load.resistanceOhm : 0
      // a twentieth of its voltage is the most a load may take from the capacitor in one step
      if (loadA > 0) h = Math.min(h, (0.05 * bulkF * bulkV) / loadA)

      if (!conducting && meltedAtS === null) {
        tangent(smallA)
        if (sourceV - 2 * dropV > bulkV && (slope > 0 || time === 0)) conducting = true
      }
      if (conducting) tangent(current)
      const startA = conducting ? Math.max(0, (sourceV - 2 * dropV - bulkV) / (series.ohm + 2 * dropOhm)) : 0
      // the start of a step has the resistance of that moment, its end that of the middle
      if (startA > peakA) {
        peakA = startA
        peakAtS = time
      }
      if (conducting) h = Math.min(h, series.longestStep(startA))
      const ohm = conducting ? series.middleOhm(startA, h) : 0
      const through = ohm + 2 * dropOhm
      const emf = sourceV - 2 * dropV

      // Vc(t) = a + b t + K x(t); i(t) = flatA + rampA t − fadeA x(t)
      const sourceS = conducting ? 1 / through : 0
      const total = sourceS + loadS
      const tau = total > 0 ? bulkF / total : Number.POSITIVE_INFINITY
      let a = bulkV
      let b = 0
      let k = 0
      if (shorted) a = 0
      else if (total > 0) {
        b = (slope * sourceS) / total
        a = (emf * sourceS - loadA - bulkF * b) / total
        k = bulkV - a
      } else b = -loadA / bulkF
      const fadeA = k * sourceS
      // the tangent must follow a current that fades quickly
      if (conducting && Math.abs(fadeA) > 100 * smallA) h = Math.min(h, 0.2 * tau)
      const flatA = conducting ? (emf - a) * sourceS : 0
      const rampA = conducting ? (slope - b) * sourceS : 0
      let halfFade = k === 0 ? 1 : Math.exp(-h / (2 * tau))
      let endFade = halfFade * halfFade

      const turns =
        events < 6 &&
        (conducting
          ? flatA + rampA * h - fadeA * endFade < 0
          : slope > 0 && meltedAtS === null && a - emf + (b - slope) * h + k * endFade < 0)
      if (turns) {
        h = conducting ? crossing(flatA, rampA, -fadeA, tau, h) : crossing(a - emf, b - slope, k, tau, h)
        halfFade = k === 0 ? 1 : Math.exp(-h / (2 * tau))
        endFade = halfFade * halfFade
      }
      const endV = a + b * h + k * endFade
      // over a step longer than half of τ the fading part is integrated exactly; over a shorter one Simpson's rule is
      // as good, and the exact terms would cancel
      const stiff = h > tau / 2
      const fading = stiff ? tau * (1 - endFade) : 0
      const fadingTime = stiff ? tau * (fading - h * endFade) : 0
      const fadingSquare = stiff ? (tau / 2) * (1 - endFade * endFade) : 0
      const middleV = a + (b * h) / 2 + k * halfFade
      const voltSeconds = stiff ? a * h + (b * h * h) / 2 + k * fading : (h / 6) * (bulkV + 4 * middleV + endV)
      const squareVoltSeconds = stiff
        ? a * a * h +
          a * b * h * h +
          (b * b * h ** 3) / 3 +
          2 * k * (a * fading + b * fadingTime) +
          k * k * fadingSquare
        : (h / 6) * (bulkV * bulkV + 4 * middleV * middleV + endV * endV)
      if (conducting) {
        const middleA = Math.max(0, flatA + (rampA * h) / 2 - fadeA * halfFade)
        const endA = Math.max(0, flatA + rampA * h - fadeA * endFade)
        const firstA = Math.max(0, flatA - fadeA)
        const middleSourceV = sourceV + (slope * h) / 2
        const charge = stiff
          ? flatA * h + (rampA * h * h) / 2 - fadeA * fading
          : (h / 6) * (firstA + 4 * middleA + endA)
        const square = stiff
          ? flatA * flatA * h +
            flatA * rampA * h * h +
            (rampA * rampA * h ** 3) / 3 -
            2 * fadeA * (flatA * fading + rampA * fadingTime) +
            fadeA * fadeA * fadingSquare
          : (h / 6) * (firstA * firstA + 4 * middleA * middleA + endA * endA)
        energy.sourceJ += stiff
          ? sourceV * charge + slope * ((flatA * h * h) / 2 + (rampA * h ** 3) / 3 - fadeA * fadingTime)
          : (h / 6) * (sourceV * firstA + 4 * middleSourceV * middleA + (sourceV + slope * h) * endA)
        energy.bridgeJ += 2 * (dropV * charge + dropOhm * square)
        series.pass(square, h, energy)
        i2t += square
        gridI2t += square
        if (step < stepsPerHalfCycle) firstHalfCycleI2t += square
        current = endA
      } else {
        series.pass(0, h, energy)
        current = 0
      }
      energy.loadJ += loadA * voltSeconds + loadS * squareVoltSeconds
      if (time >= windowFromS - 1e-12) {
        end.seconds += h
        end.kelvinS += series.hottestK() * h
        end.voltS += voltSeconds
        end.lowV = Math.min(end.lowV, endV)
        end.highV = Math.max(end.highV, endV)
      }
      bulkV = endV
      time = h >= gridEndS - time ? gridEndS : time + h
      sourceV += slope * h
      if (turns) {
        conducting = !conducting
        events += 1
      }
      if (series.melted() && meltedAtS === null) {
        meltedAtS = time
        conducting = false
      }
    }
    if (gridStartS >= windowFromS - 1e-12) end.i2t += gridI2t
    const hottest = series.hottestK()
    halfCycleSum += hottest
    if ((step + 1) % stepsPerHalfCycle === 0) {
      halfCycleK.push(halfCycleSum / stepsPerHalfCycle)
      halfCycleSum = 0
    }
    sampler.step(step, time, hottest, bulkV, gridI2t, time - gridStartS)
  }
  if (conducting) {
    tangent(current)
    const lastA = (nextV - 2 * dropV - bulkV) / (series.ohm + 2 * dropOhm)
    if (lastA > peakA) {
      peakA = lastA
      peakAtS = time
    }
  }
  energy.capacitorJ = (bulkF * bulkV * bulkV) / 2
  energy.filamentJ = series.storedJ()
  const endFilamentK = end.seconds > 0 ? end.kelvinS / end.seconds : series.hottestK()
  return {
    ...sampler.taken,
    peakA,
    peakAtS,
    i2t,
    firstHalfCycleI2t,
    settlesToS: settles(halfCycleK, endFilamentK, circuit.settledBand, frequencyHz),
    endFilamentK,
    endBulkV: end.seconds > 0 ? end.voltS / end.seconds : bulkV,
    endRippleV: end.highV > end.lowV ? end.highV - end.lowV : 0,
    endA: end.seconds > 0 ? Math.sqrt(end.i2t / end.seconds) : 0,
    gaveUp,
    meltedAtS,
    energy,
  }
}

/** Where flat + ramp t + fade exp(−t / τ), 0 or more at 0 and negative at `to`, crosses zero. */
function crossing(flat: number, ramp: number, fade: number, tau: number, to: number): number {
  let low = 0
  let high = to
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2
    if (flat + ramp * middle + (fade === 0 ? 0 : fade * Math.exp(-middle / tau)) >= 0) low = middle
    else high = middle
  }
  return high
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
