/** I = Is (exp(U / (n UT)) − 1) in series with a resistance. */
export interface DiodeModel {
  readonly saturationA: number
  readonly emission: number
  readonly seriesOhm: number
  readonly thermalV: number
}

/** A straight line in place of a characteristic: U = dropV + ohm × I. */
export interface Tangent {
  readonly dropV: number
  readonly ohm: number
}

/**
 * The tangent, at a current, to the two diodes of a bridge that conduct one after the other.
 *
 *   U = 2 (n UT ln(I / Is + 1) + Rs I),  dU/dI = 2 (n UT / (I + Is) + Rs)
 *
 * @param currentA  [A], 0 or more
 * @returns what the line drops at no current [V], and its slope [Ω]
 * @source Shockley's diode equation
 */
export function bridgeTangent(diode: DiodeModel, currentA: number): Tangent {
  const emissionV = diode.emission * diode.thermalV
  const throughA = currentA + diode.saturationA
  return {
    dropV: 2 * emissionV * (Math.log(currentA / diode.saturationA + 1) - currentA / throughA),
    ohm: 2 * (emissionV / throughA + diode.seriesOhm),
  }
}

/**
 * Current that a voltage drives through a bridge and a resistance, 0 where it is less than the bridge drops.
 *
 * @param forwardV  [V]
 * @param seriesOhm [Ω], more than 0
 * @param leastA    current below which the tangent is not taken [A], more than 0
 * @returns [A]
 * @source Newton's method on the diode equation and Ohm's law
 */
export function bridgeCurrentA(diode: DiodeModel, forwardV: number, seriesOhm: number, leastA: number): number {
  let currentA = 0
  for (let round = 0; round < 20; round++) {
    const tangent = bridgeTangent(diode, Math.max(currentA, leastA))
    currentA = Math.max(0, (forwardV - tangent.dropV) / (seriesOhm + tangent.ohm))
  }
  return currentA
}
