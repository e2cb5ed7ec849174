import { type ResultType, Simulation } from 'eecircuit-engine'
import { beforeAll, describe, expect, it } from 'vitest'
import { dischargeTime, voltageAfter } from '../../server/physics/discharge.js'
import { reservoirSupply } from '../../server/physics/reservoirSupply.js'
import { reformingRules } from '../../server/tables/capacitors.js'

// ngspice, through its WebAssembly build, as the independent reference
const simulation = new Simulation()

async function run(netlist: string, names: readonly string[]): Promise<Record<string, number[]>> {
  simulation.setNetList(netlist)
  const result: ResultType = await simulation.runSim()
  const find = (name: string): number[] => {
    const found = result.data.find((column) => column.name === name)
    if (!found) throw new Error(`the simulator gave ${result.variableNames.join(', ')}, not ${name}`)
    return found.values as number[]
  }
  return Object.fromEntries(names.map((name) => [name, find(name)]))
}

/** When a falling voltage passes a level, by straight line between samples [s]. */
function passes(timeS: readonly number[], voltageV: readonly number[], levelV: number): number {
  const index = voltageV.findIndex((v, at) => at > 0 && v <= levelV)
  const [t0, t1, v0, v1] = [timeS[index - 1], timeS[index], voltageV[index - 1], voltageV[index]] as number[] as [
    number,
    number,
    number,
    number,
  ]
  return t0 + ((v0 - levelV) / (v0 - v1)) * (t1 - t0)
}

beforeAll(async () => {
  await simulation.start()
}, 60_000)

describe('circuits on the bench against ngspice', () => {
  it('bleeder: 220 µF from 325.27 V through 47 kΩ falls to each limit at the same time to 0.1 %', async () => {
    const { time, 'v(a)': v } = await run(
      `bleeder
c1 a 0 220u ic=325.269
r1 a 0 47k
.tran 10m 30 0 10m uic
.end`,
      ['time', 'v(a)'],
    )
    for (const limit of [60, 42.4, 34]) {
      const found = passes(time ?? [], v ?? [], limit)
      expect(dischargeTime(47e3, 220e-6, 325.269, limit) / found).toBeCloseTo(1, 3)
    }
  }, 60_000)

  it('reforming stage: 47 µF behind 100 kΩ, leaking as a 3 MΩ resistor, settles within five time constants to 1 %', async () => {
    const { time, 'v(c)': v } = await run(
      `reforming stage
v1 s 0 dc 90
r1 s c 100k
c1 c 0 47u ic=0
r2 c 0 3meg
.tran 50m 30 0 50m uic
.end`,
      ['time', 'v(c)'],
    )
    // by head: the leak divides 90 V by 3.1 / 3, and the capacitor sees both resistors in parallel
    const end = (90 * 3e6) / 3.1e6
    const parallelOhm = (100e3 * 3e6) / 3.1e6
    const settledS = reformingRules.settling * 100e3 * 47e-6
    for (const t of [parallelOhm * 47e-6, settledS]) {
      const at = (time ?? []).findIndex((sample) => sample >= t)
      const missing = voltageAfter(parallelOhm, 47e-6, end, time?.[at] ?? Number.NaN)
      expect((v?.[at] ?? 0) / (end - missing)).toBeCloseTo(1, 3)
    }
    expect((v ?? []).find((_, at) => (time?.[at] ?? 0) >= settledS)).toBeGreaterThan(0.99 * end)
  }, 60_000)

  it.each([
    { name: 'bridge, 50 Hz', hz: 50, ohm: 1.5, farad: 4700e-6, ampere: 0.5, fullWave: true },
    { name: 'bridge, 60 Hz', hz: 60, ohm: 1.5, farad: 4700e-6, ampere: 0.5, fullWave: true },
    { name: 'bridge, small capacitor', hz: 50, ohm: 2, farad: 1000e-6, ampere: 0.4, fullWave: true },
    { name: 'half wave', hz: 50, ohm: 1.5, farad: 4700e-6, ampere: 0.3, fullWave: false },
  ])(
    'transformer rectifier, $name: mean within 1 %, ripple and rms current within 3 %',
    async ({ hz, ohm, farad, ampere, fullWave }) => {
      const crestV = 19.5
      // 10 MΩ to earth and 20 pF across each diode keep the simulator's matrix solvable; neither shows in four digits
      const bridge = fullWave
        ? 'd1 m p dx\nd2 f p dx\nd3 0 m dx\nd4 0 f dx\nrf f 0 10meg\nrm m 0 10meg'
        : 'd1 m p dx\nrf f 0 1m'
      const { time, out, winding } = await run(
        `transformer rectifier
v1 e f sin(0 ${crestV} ${hz})
r1 e m ${ohm}
${bridge}
c1 p 0 ${farad} ic=0
i1 p 0 dc ${ampere} pwl(0 0 0.1 0 0.11 ${ampere})
.model dx d(is=1e-9 n=1.2 rs=1m cjo=20p)
.tran 20u 0.6 0.5 20u uic
.end`,
        ['time', 'v(p)', 'i(v1)'],
      ).then((columns) => ({
        time: columns.time ?? [],
        out: columns['v(p)'] ?? [],
        winding: columns['i(v1)'] ?? [],
      }))
      const integral = (f: (index: number) => number): number =>
        time.reduce((sum, t, index) => (index === 0 ? 0 : sum + f(index) * (t - (time[index - 1] ?? t))), 0)
      const span = (time.at(-1) ?? 0) - (time[0] ?? 0)
      const mean = integral((index) => out[index] ?? 0) / span
      const ripple = Math.max(...out) - Math.min(...out)
      const rms = Math.sqrt(integral((index) => (winding[index] ?? 0) ** 2) / span)
      const peak = Math.max(...winding.map(Math.abs))
      // forward voltage of that diode at the middle of its conduction, half the peak current (Shockley's law)
      const diode = 1.2 * 0.02585 * Math.log(peak / 2 / 1e-9)
      const ours = reservoirSupply({
        crestV,
        sourceOhm: ohm,
        dropV: (fullWave ? 2 : 1) * diode,
        capacitanceF: farad,
        currentA: ampere,
        frequencyHz: hz,
        fullWave,
      })
      expect(ours).not.toBeNull()
      expect(Math.abs((ours?.meanV ?? 0) / mean - 1)).toBeLessThan(0.01)
      expect(Math.abs((ours?.rippleV ?? 0) / ripple - 1)).toBeLessThan(0.03)
      expect(Math.abs(((ours?.rmsFactor ?? 0) * ampere) / rms - 1)).toBeLessThan(0.03)
    },
    60_000,
  )
})
