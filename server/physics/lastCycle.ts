/** Means over the last cycle of a run, added up step by step. */
export class LastCycle {
  private seconds = 0
  private kelvinS = 0
  private voltS = 0
  private square = 0
  private lowV = Number.POSITIVE_INFINITY
  private highV = 0

  /** @param fromS  when the last cycle begins [s] */
  constructor(private readonly fromS: number) {}

  private holds(startS: number): boolean {
    return startS >= this.fromS - 1e-12
  }

  add(startS: number, stepS: number, filamentK: number, voltSeconds: number, endV: number): void {
    if (!this.holds(startS)) return
    this.seconds += stepS
    this.kelvinS += filamentK * stepS
    this.voltS += voltSeconds
    this.lowV = Math.min(this.lowV, endV)
    this.highV = Math.max(this.highV, endV)
  }

  /** ∫ i² dt of a step [A²s] */
  addSquare(startS: number, square: number): void {
    if (this.holds(startS)) this.square += square
  }

  /** Mean filament temperature, mean and ripple of the capacitor's voltage, rms current. */
  means(): { endFilamentK: number; endBulkV: number; endRippleV: number; endA: number } {
    return {
      endFilamentK: this.kelvinS / this.seconds,
      endBulkV: this.voltS / this.seconds,
      endRippleV: this.highV > this.lowV ? this.highV - this.lowV : 0,
      endA: Math.sqrt(this.square / this.seconds),
    }
  }
}
