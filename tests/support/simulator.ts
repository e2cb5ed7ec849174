import { Simulation } from 'eecircuit-engine'

export interface SimulatedRun {
  timeS: number[]
  /** samples of a node ("v(bus)") or source current ("i(vmains)") */
  of(name: string): number[]
  /** processor time of the run [ms]: unlike the clock it does not count what else the machine does */
  tookMs: number
}

/** Processor time this process has used [ms]. */
export const processCpuMs = (): number => process.cpuUsage().user / 1000

let started: Promise<Simulation> | undefined

/** Runs a transient netlist in ngspice, compiled to WebAssembly: independent of our own equations and solver. */
export async function simulate(netlist: string): Promise<SimulatedRun> {
  started ??= (async () => {
    const simulation = new Simulation()
    await simulation.start()
    return simulation
  })()
  const simulation = await started
  simulation.setNetList(netlist)
  const before = processCpuMs()
  const result = await simulation.runSim()
  const tookMs = processCpuMs() - before
  if (result.dataType !== 'real') throw new Error('expected a transient result')
  const of = (name: string): number[] => {
    const column = result.data.find((entry) => entry.name.toLowerCase() === name.toLowerCase())
    if (!column)
      throw new Error(`no ${name} among ${result.variableNames.join(', ')}; ${simulation.getError().join('; ')}`)
    return column.values
  }
  return { timeS: of('time'), of, tookMs }
}

/** Time-weighted mean of samples from a moment on. */
export function meanFrom(timeS: readonly number[], values: readonly number[], fromS: number): number {
  let area = 0
  let seconds = 0
  for (let at = 1; at < timeS.length; at++) {
    if ((timeS[at - 1] as number) < fromS) continue
    const step = (timeS[at] as number) - (timeS[at - 1] as number)
    area += (step * ((values[at] as number) + (values[at - 1] as number))) / 2
    seconds += step
  }
  return area / seconds
}

/** Time-weighted rms of samples from a moment on. */
export const rmsFrom = (timeS: readonly number[], values: readonly number[], fromS: number): number =>
  Math.sqrt(
    meanFrom(
      timeS,
      values.map((value) => value * value),
      fromS,
    ),
  )
