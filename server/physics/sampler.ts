/** Keeps every so many steps for drawing: whole half cycles where the steps between two samples come to that. */
export class Sampler {
  readonly taken = {
    timeS: [] as number[],
    filamentK: [] as number[],
    bulkV: [] as number[],
    currentA: [] as number[],
  }
  private readonly stride: number
  private square = 0
  private seconds = 0

  constructor(
    private readonly steps: number,
    most: number,
    stepsPerHalfCycle: number,
  ) {
    const stride = Math.max(1, Math.ceil(steps / most))
    this.stride = stride > stepsPerHalfCycle ? Math.ceil(stride / stepsPerHalfCycle) * stepsPerHalfCycle : stride
  }

  add(timeS: number, filamentK: number, bulkV: number, square: number, seconds: number): void {
    this.taken.timeS.push(timeS)
    this.taken.filamentK.push(filamentK)
    this.taken.bulkV.push(bulkV)
    this.taken.currentA.push(Math.sqrt(square / seconds))
  }

  step(step: number, timeS: number, filamentK: number, bulkV: number, square: number, seconds: number): void {
    this.square += square
    this.seconds += seconds
    if ((step + 1) % this.stride !== 0 && step + 1 !== this.steps) return
    this.add(timeS, filamentK, bulkV, this.square, this.seconds)
    this.square = 0
    this.seconds = 0
  }
}
