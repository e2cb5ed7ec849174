import { mustBePositive, mustNotBeNegative } from './range.js'

export interface ReservoirSupply {
  /** crest of the winding's open-circuit voltage [V] */
  crestV: number
  /** resistance of the windings, seen from the secondary [Ω] */
  sourceOhm: number
  /** forward voltage of all diodes in the path [V] */
  dropV: number
  capacitanceF: number
  /** drawn from the capacitor, taken as constant [A] */
  currentA: number
  frequencyHz: number
  fullWave: boolean
}

export interface ReservoirState {
  /** mean, highest and lowest voltage of the capacitor over a cycle [V] */
  meanV: number
  highV: number
  lowV: number
  /** peak to peak [V] */
  rippleV: number
  /** rms current of the rectifier's a.c. side over the load current [1]; of both half-windings together in a centre-tap */
  rmsFactor: number
}

const stepsPerCycle = 2000
const mostCycles = 4000

/**
 * Settled state of a transformer, rectifier and reservoir capacitor that feeds a constant current.
 * Winding resistance and diode drop are kept; leakage inductance and core losses are not.
 *
 *   C dv/dt = max(0, |e(t)| − V_d − v) / R − I, stepped implicitly until one cycle repeats to 1 part in 10⁶
 *
 * @param supply  crestV [V], sourceOhm [Ω], capacitanceF [F], frequencyHz [Hz] more than 0; dropV [V] and currentA [A] 0 or more
 * @returns null where the supply cannot hold the load (the capacitor would run empty), or has not settled in 4000 cycles
 * @throws RangeError outside those ranges
 * @source circuit equations; checked against an independent circuit simulator
 */
export function reservoirSupply(supply: ReservoirSupply): ReservoirState | null {
  const { crestV, sourceOhm, dropV, capacitanceF, currentA, frequencyHz, fullWave } = supply
  mustBePositive({ crestV, sourceOhm, capacitanceF, frequencyHz })
  mustNotBeNegative({ dropV, currentA })
  const step = 1 / (frequencyHz * stepsPerCycle)
  const ease = 1 + step / (sourceOhm * capacitanceF)
  const crests = Array.from({ length: stepsPerCycle }, (_, index) => {
    const e = crestV * Math.sin((2 * Math.PI * (index + 1)) / stepsPerCycle)
    return (fullWave ? Math.abs(e) : e) - dropV
  })
  let v = Math.max(crestV - dropV, 0)
  for (let cycle = 0; cycle < mostCycles; cycle++) {
    const start = v
    let [sum, high, low, charge, squares] = [0, v, v, 0, 0]
    for (const e of crests) {
      const idle = v - (step * currentA) / capacitanceF
      const driven = (v + (step / capacitanceF) * (e / sourceOhm - currentA)) / ease
      const conducts = e > driven
      v = conducts ? driven : idle
      if (!(v >= 0)) return null
      const i = conducts ? (e - v) / sourceOhm : 0
      sum += v
      charge += i
      squares += i * i
      high = Math.max(high, v)
      low = Math.min(low, v)
    }
    if (Math.abs(v - start) <= 1e-6 * Math.max(start, 1e-9)) {
      const meanV = sum / stepsPerCycle
      const rmsA = Math.sqrt(squares / stepsPerCycle)
      return {
        meanV,
        highV: high,
        lowV: low,
        rippleV: high - low,
        rmsFactor: charge > 0 ? rmsA / (charge / stepsPerCycle) : 0,
      }
    }
  }
  return null
}
