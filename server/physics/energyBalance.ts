/** Where the energy of a run went [J]: `sourceJ` equals the sum of the rest. */
export interface EnergyBalance {
  sourceJ: number
  /** given off by the filaments, and stored in them above cold; or turned to heat in the fixed resistance */
  radiatedJ: number
  filamentJ: number
  resistorJ: number
  bridgeJ: number
  loadJ: number
  capacitorJ: number
  /** the capacitor's own energy when it was shorted */
  shortedJ: number
}
