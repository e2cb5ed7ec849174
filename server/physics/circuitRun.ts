import { atRest, type BulkLoad, type LoadState, loadState } from './bulkLoad.js'
import { capacitorVoltage, chargingCurrent, shortedVoltage } from './capacitorVoltage.js'
import { bridgeCurrentA, bridgeTangent, type DiodeModel, type Tangent } from './diode.js'
import type { EnergyBalance } from './energyBalance.js'
import {
  crossingS,
  endOf,
  type Fading,
  type FadingCourse,
  fadingOver,
  integral,
  squareIntegral,
  timedIntegral,
} from './fadingCourse.js'
import type { LampString } from './lampString.js'
import { LastCycle } from './lastCycle.js'
import { type SeriesElement, seriesElement } from './seriesElement.js'

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

/** The bridge turns on or off at most so often while the source follows one straight line. */
const mostTurns = 6

/**
 * The circuit as it stands at a moment, and what has passed until then.
 *
 * @source Kirchhoff's laws, the heat balance of the filament, the diode equation
 */
export class CircuitRun {
  readonly series: SeriesElement
  readonly lastCycle: LastCycle
  timeS = 0
  bulkV = 0
  currentA = 0
  load: LoadState = atRest
  meltedAtS: number | null = null
  peakA = 0
  peakAtS = 0
  i2t = 0
  readonly energy: EnergyBalance = {
    sourceJ: 0,
    radiatedJ: 0,
    filamentJ: 0,
    resistorJ: 0,
    bridgeJ: 0,
    loadJ: 0,
    capacitorJ: 0,
    shortedJ: 0,
  }
  private conducting = false
  private shorted = false
  private turnsLeft = mostTurns
  private readonly shortAfterS: number
  private readonly loadS: number
  /** below this the tangent to the diodes is not taken, for it grows without bound [A] */
  private readonly smallA: number
  private readonly blocked: Tangent

  constructor(
    private readonly circuit: SwitchOn,
    private sourceV: number,
  ) {
    const { mainsV, frequencyHz, durationS, diode, load } = circuit
    this.series = seriesElement(circuit.series)
    this.lastCycle = new LastCycle(Math.max(0, durationS - 1 / frequencyHz))
    this.shortAfterS = circuit.shortAfterS ?? Number.POSITIVE_INFINITY
    this.loadS = load.kind === 'resistance' ? 1 / load.resistanceOhm : 0
    this.smallA = (1e-4 * (Math.SQRT2 * mainsV)) / this.series.coldOhm
    this.blocked = bridgeTangent(diode, this.smallA)
    if (sourceV > 0) this.currentA = bridgeCurrentA(diode, sourceV, this.series.ohm, this.smallA)
    this.peakA = this.currentA
  }

  /**
   * Follows the source along a straight line to a voltage at a time.
   *
   * @returns ∫ i² dt on the way [A²s]
   */
  follow(toV: number, untilS: number): number {
    if (!this.shorted && this.timeS >= this.shortAfterS) this.short()
    const startS = this.timeS
    const riseVPerS = (toV - this.sourceV) / (untilS - startS)
    this.turnsLeft = mostTurns
    let square = 0
    while (this.timeS < untilS) square += this.step(riseVPerS, untilS)
    this.sourceV = toV
    this.lastCycle.addSquare(startS, square)
    return square
  }

  /** Counts what is left in the capacitor and the filaments, and a current that still rises. */
  end(): void {
    const { circuit, energy, series } = this
    if (this.conducting) {
      const bridge = this.bridge()
      this.mark((this.sourceV - bridge.dropV - this.bulkV) / (series.ohm + bridge.ohm))
    }
    energy.capacitorJ = (circuit.bulkF * this.bulkV * this.bulkV) / 2
    energy.filamentJ = series.storedJ()
  }

  private short(): void {
    this.energy.shortedJ += (this.circuit.bulkF * this.bulkV * this.bulkV) / 2
    this.shorted = true
    this.bulkV = 0
  }

  private bridge(): Tangent {
    return this.conducting ? bridgeTangent(this.circuit.diode, Math.max(this.currentA, this.smallA)) : this.blocked
  }

  private mark(currentA: number): void {
    if (!(currentA > this.peakA)) return
    this.peakA = currentA
    this.peakAtS = this.timeS
  }

  /**
   * One step, no further than `untilS`, over which resistances and load are constant and the bridge does not turn.
   *
   * @returns its ∫ i² dt [A²s]
   */
  private step(riseVPerS: number, untilS: number): number {
    const { circuit, series, sourceV, bulkV, shorted, timeS, smallA } = this
    const { bulkF } = circuit
    if (!shorted) this.load = loadState(circuit.load, this.load, bulkV, timeS)
    const loadA =
      !shorted && this.load.running && circuit.load.kind === 'constant-power' ? circuit.load.powerW / bulkV : 0
    const loadS = shorted ? 0 : this.loadS
    const rising = riseVPerS > 0
    const intact = this.meltedAtS === null
    if (!this.conducting && intact && sourceV - this.blocked.dropV > bulkV && (rising || timeS === 0))
      this.conducting = true
    const { conducting } = this
    const bridge = this.bridge()
    const emfV = sourceV - bridge.dropV
    // the start of a step has the resistance of that moment, its end that of the middle
    const startA = conducting ? Math.max(0, (emfV - bulkV) / (series.ohm + bridge.ohm)) : 0
    this.mark(startA)

    let stepS = untilS - timeS
    // a twentieth of its voltage is the most a load may take from the capacitor in one step
    if (loadA > 0) stepS = Math.min(stepS, (0.05 * bulkF * bulkV) / loadA)
    if (conducting) stepS = Math.min(stepS, series.longestStep(startA))
    const sourceS = conducting ? 1 / (series.middleOhm(startA, stepS) + bridge.ohm) : 0
    const tauS = bulkF / (sourceS + loadS)
    const bulk = shorted ? shortedVoltage : capacitorVoltage(bulkF, bulkV, emfV, riseVPerS, sourceS, loadS, loadA)
    const current = conducting ? chargingCurrent(bulk, emfV, riseVPerS, sourceS) : null
    // the tangent must follow a current that fades quickly
    if (current && Math.abs(current.fade) > 100 * smallA) stepS = Math.min(stepS, 0.2 * tauS)

    let fading = fadingOver(tauS, stepS)
    const turned =
      this.turnsLeft > 0 &&
      (current ? endOf(current, fading) < 0 : rising && intact && endOf(bulk, fading) < emfV + riseVPerS * stepS)
    if (turned) {
      stepS = crossingS(current ?? above(bulk, emfV, riseVPerS), tauS, stepS)
      fading = fadingOver(tauS, stepS)
    }

    const endV = endOf(bulk, fading)
    const voltSeconds = integral(bulk, fading)
    this.energy.loadJ += loadA * voltSeconds + (loadS > 0 ? loadS * squareIntegral(bulk, fading) : 0)
    const square = current ? this.pass(current, fading, bridge, riseVPerS) : this.rest(stepS)
    this.lastCycle.add(timeS, stepS, series.hottestK(), voltSeconds, endV)
    this.bulkV = endV
    this.timeS = stepS >= untilS - timeS ? untilS : timeS + stepS
    this.sourceV += riseVPerS * stepS
    if (turned) {
      this.conducting = !conducting
      this.turnsLeft -= 1
    }
    if (intact && series.melted()) {
      this.meltedAtS = this.timeS
      this.conducting = false
    }
    return square
  }

  /** Lets a current pass; answers with its ∫ i² dt [A²s]. */
  private pass(current: FadingCourse, fading: Fading, bridge: Tangent, riseVPerS: number): number {
    const { energy, series, sourceV } = this
    const charge = integral(current, fading)
    const square = squareIntegral(current, fading)
    energy.sourceJ += sourceV * charge + riseVPerS * timedIntegral(current, fading)
    energy.bridgeJ += bridge.dropV * charge + bridge.ohm * square
    series.pass(square, fading.stepS, energy)
    this.i2t += square
    this.currentA = Math.max(0, endOf(current, fading))
    return square
  }

  private rest(stepS: number): number {
    this.series.pass(0, stepS, this.energy)
    this.currentA = 0
    return 0
  }
}

/** How far a capacitor's voltage stands above a source that rises along a straight line. */
const above = (bulk: FadingCourse, emfV: number, riseVPerS: number): FadingCourse => ({
  flat: bulk.flat - emfV,
  ramp: bulk.ramp - riseVPerS,
  fade: bulk.fade,
})
