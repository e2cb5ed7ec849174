import { switchOn } from '../../../server/physics/transient.js'
import { meanFrom, processCpuMs, simulate } from '../../support/simulator.js'
import { circuits, netlist, switchOnOf } from '../../support/switchOnCircuits.js'
import { figure, type Measured, type Part } from './measured.js'
import { targets } from './targets.js'

async function measure(): Promise<Measured[]> {
  let [ours, theirs, worst] = [0, 0, 0]
  for (const circuit of circuits) {
    const simulated = await simulate(netlist(circuit))
    theirs += simulated.tookMs
    let least = Number.POSITIVE_INFINITY
    for (let run = 0; run < 5; run += 1) {
      const before = processCpuMs()
      switchOn(switchOnOf(circuit))
      least = Math.min(least, processCpuMs() - before)
    }
    ours += least
    const run = switchOn(switchOnOf(circuit))
    const peakA = Math.max(...simulated.of('i(vmains)').map(Math.abs))
    const fromS = circuit.durationS - 1 / circuit.frequencyHz
    const hottestK = Math.max(
      ...circuit.lamps.map((_, at) => meanFrom(simulated.timeS, simulated.of(`v(l${at}k)`), fromS)),
    )
    for (const ratio of [run.peakA / peakA, run.endFilamentK / hottestK]) worst = Math.max(worst, Math.abs(ratio - 1))
  }
  const mainsS = circuits.reduce((sum, { durationS }) => sum + durationS, 0)
  return [
    {
      ...targets.transient,
      unit: 'times',
      value: theirs / ours,
      note: `${figure(theirs)} / ${figure(ours)} ms for ${figure(mainsS)} s of mains`,
    },
    {
      ...targets.agreement,
      unit: '%',
      value: 100 * worst,
      note: `${circuits.length} circuits`,
    },
  ]
}

export const transient: Part = {
  name: 'transient',
  title: 'The switch-on against ngspice',
  method:
    'Lamps ahead of a bridge and its capacitor, each circuit by our solver and by ngspice (compiled to WebAssembly) in the same process; processor time, so that other programs do not count. That the two agree is tested further in `tests/published/transient.long.test.ts`.',
  measure,
}
