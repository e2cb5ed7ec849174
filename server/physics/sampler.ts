/** Keeps every so many steps for drawing: whole half cycles where the steps between two samples come to that. */
export class Sampler {
  readonly taken = {
    timeS: [] as number[],
    filamentK: [] as number[],
    bulkV: [] as number[],
    currentA: [] as number[],
  }
  private readonly stride: number
  /** ∫ i² dt and length of the steps of the last half cycle, the oldest overwritten */
  private readonly squares: Float64Array
  private readonly seconds: Float64Array

  constructor(
    private readonly steps: number,
    most: number,
    private readonly stepsPerHalfCycle: number,
  ) {
    const stride = Math.max(1, Math.ceil(steps / most))
    this.stride = stride > stepsPerHalfCycle ? Math.ceil(stride / stepsPerHalfCycle) * stepsPerHalfCycle : stride
    this.squares = new Float64Array(stepsPerHalfCycle)
    this.seconds = new Float64Array(stepsPerHalfCycle)
  }

  add(timeS: number, filamentK: number, bulkV: number, currentA: number): void {
    this.taken.timeS.push(timeS)
    this.taken.filamentK.push(filamentK)
    this.taken.bulkV.push(bulkV)
    this.taken.currentA.push(currentA)
  }

  step(step: number, timeS: number, filamentK: number, bulkV: number, square: number, seconds: number): void {
    const at = step % this.stepsPerHalfCycle
    this.squares[at] = square
    this.seconds[at] = seconds
    if ((step + 1) % this.stride !== 0 && step + 1 !== this.steps) return
    this.add(timeS, filamentK, bulkV, Math.sqrt(sum(this.squares) / sum(this.seconds)))
  }
}

function sum(list: Float64Array): number {
  let total = 0
  for (let at = 0; at < list.length; at++) total += list[at] as number
  return total
}
