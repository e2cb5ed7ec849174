import { expect } from 'vitest'
import { switchOn } from '../../server/physics/transient.js'
import { meanFrom, processCpuMs, type SimulatedRun, simulate } from './simulator.js'
import { type Circuit, netlist, switchOnOf } from './switchOnCircuits.js'

export const within = (mine: number, theirs: number): number => Math.abs(mine / theirs - 1)

/** Least processor time of a few runs [ms]: the first ones still compile. */
function leastMs(run: () => unknown, times = 5): number {
  let least = Number.POSITIVE_INFINITY
  for (let round = 0; round < times; round++) {
    const before = processCpuMs()
    run()
    least = Math.min(least, processCpuMs() - before)
  }
  return least
}

/** Expects a switch-on to agree with ngspice within 1 %, and answers with the time of both. */
export async function switchOnAgrees(
  circuit: Circuit,
): Promise<{ durationS: number; mineMs: number; theirsMs: number }> {
  const simulated: SimulatedRun = await simulate(netlist(circuit))
  const run = switchOn(switchOnOf(circuit))
  const mineMs = leastMs(() => switchOn(switchOnOf(circuit)))
  const fromS = circuit.durationS - 1 / circuit.frequencyHz
  const bus = simulated.of('v(bus)').map((volt, at) => volt - (simulated.of('v(ret)')[at] as number))
  const theirs = {
    filamentK: Math.max(...circuit.lamps.map((_, at) => meanFrom(simulated.timeS, simulated.of(`v(l${at}k)`), fromS))),
    bulkV: meanFrom(simulated.timeS, bus, fromS),
    peakA: Math.max(...simulated.of('i(vmains)').map(Math.abs)),
  }
  console.log(
    `${circuit.name}: ${run.endFilamentK.toFixed(1)} K against ${theirs.filamentK.toFixed(1)} K, ` +
      `${run.endBulkV.toFixed(2)} V against ${theirs.bulkV.toFixed(2)} V, ${run.peakA.toFixed(3)} A against ${theirs.peakA.toFixed(3)} A, ` +
      `${mineMs.toFixed(1)} ms against ${simulated.tookMs.toFixed(0)} ms`,
  )
  expect(within(run.endFilamentK, theirs.filamentK)).toBeLessThan(0.01)
  if (circuit.shortAfterS === undefined) expect(within(run.endBulkV, theirs.bulkV)).toBeLessThan(0.01)
  else expect(Math.abs(theirs.bulkV - run.endBulkV)).toBeLessThan(0.01 * circuit.mainsV)
  expect(within(run.peakA, theirs.peakA)).toBeLessThan(0.01)
  return { durationS: circuit.durationS, mineMs, theirsMs: simulated.tookMs }
}
