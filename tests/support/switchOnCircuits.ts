import type { LampRating } from '../../server/physics/filament.js'
import type { Arrangement } from '../../server/physics/lampString.js'
import type { switchOn } from '../../server/physics/transient.js'
import { lampsOf } from '../../server/plan/firstPower/lamps.js'
import { heatCapacityRows, tungstenRows } from '../../server/tables/filament.js'
import { lampSizeRows } from '../../server/tables/lamps.js'
import { bridgeDiode, settledBand } from '../../server/tables/seriesLamp.js'

/** The room, and every filament that has been off for a while [K]: the first row of the tungsten table. */
const ambientK = 300

type SwitchOn = Parameters<typeof switchOn>[0]
type BulkLoad = SwitchOn['load']

/** Heat capacity integrated by the trapezoid rule from the published coefficients [J/mol above 300 K]. */
function molarHeat(toK: number): number {
  const cp = (kelvin: number): number => {
    const row = heatCapacityRows.find(({ fromK, toK: end }) => kelvin >= fromK && kelvin <= end)
    if (!row) throw new Error(`no heat capacity at ${kelvin} K`)
    const t = kelvin / 1000
    return row.a + row.b * t + row.c * t ** 2 + row.d * t ** 3 + row.e / t ** 2
  }
  const parts = 2000
  const width = (toK - ambientK) / parts
  let sum = 0
  for (let at = 0; at < parts; at++) sum += (width * (cp(ambientK + at * width) + cp(ambientK + (at + 1) * width))) / 2
  return sum
}

/** One lamp for the simulator: three tables over the heat stored, taken straight from the published rows. */
export function lampNetlist(name: string, { ratedV, ratedW }: LampRating, from: string, to: string): string {
  const size = lampSizeRows.find((row) => row.ratedW === ratedW && row.fill === 'gas')
  if (!size) throw new Error(`no size of ${ratedW} W`)
  const interpolate = (kelvin: number, of: (row: (typeof tungstenRows)[number]) => number): number => {
    const at = tungstenRows.findIndex((row) => row.temperatureK > kelvin) - 1
    const [low, high] = [tungstenRows[at], tungstenRows[at + 1]]
    if (!low || !high) throw new Error(`${kelvin} K`)
    return of(low) + ((kelvin - low.temperatureK) / (high.temperatureK - low.temperatureK)) * (of(high) - of(low))
  }
  const { ratedK, gasShare } = size
  const ratedRho = interpolate(ratedK, (row) => row.resistivityMicroOhmCm)
  const ratedRadiated = Math.exp(interpolate(ratedK, (row) => Math.log(row.radiatedWPerCm2)))
  const heatOf = (kelvin: number): number =>
    (size.heatContentJ * (ratedV / 120) ** (-2 / 3) * molarHeat(kelvin)) / molarHeat(ratedK)
  // linear pieces over 50 K: the radiated power between two rows is taken on a log scale
  const knots = Array.from({ length: 67 }, (_, at) => ambientK + 50 * at).filter((kelvin) => kelvin < 3600)
  const table = (of: (kelvin: number) => number): string =>
    knots.map((kelvin) => `${heatOf(kelvin).toPrecision(9)}, ${of(kelvin).toPrecision(9)}`).join(', ')
  const ohm = (kelvin: number): number =>
    ((ratedV ** 2 / ratedW) * interpolate(kelvin, (row) => row.resistivityMicroOhmCm)) / ratedRho
  const loss = (kelvin: number): number =>
    ratedW *
    ((1 - gasShare) * (Math.exp(interpolate(kelvin, (row) => Math.log(row.radiatedWPerCm2))) / ratedRadiated) +
      (gasShare * (kelvin - ambientK)) / (ratedK - ambientK))
  return [
    `B${name}r ${name}r 0 V=pwl(V(${name}h), ${table(ohm)})`,
    `B${name}p ${name}p 0 V=pwl(V(${name}h), ${table((kelvin) => (kelvin === ambientK ? 0 : loss(kelvin)))})`,
    `B${name}k ${name}k 0 V=pwl(V(${name}h), ${table((kelvin) => kelvin)})`,
    `B${name} ${from} ${to} I=V(${from},${to})/max(V(${name}r), 0.1)`,
    `B${name}q 0 ${name}h I=V(${from},${to})*V(${from},${to})/max(V(${name}r), 0.1) - V(${name}p)`,
    `C${name}h ${name}h 0 1 ic=0`,
    `R${name}h ${name}h 0 1e12`,
  ].join('\n')
}

export interface Circuit {
  name: string
  mainsV: number
  frequencyHz: number
  lamps: LampRating[]
  arrangement: Arrangement
  bulkF: number
  load: BulkLoad
  shortAfterS?: number
  switchAt: 'crest' | 'zero'
  durationS: number
}

const steady = (powerW: number, fromV: number): BulkLoad => ({
  kind: 'constant-power',
  powerW,
  startV: fromV,
  stopV: fromV,
  restartS: 0,
})

/** Lamps ahead of a bridge and its capacitor, as they meet a first power-up. */
export const circuits: Circuit[] = [
  {
    name: '60 W 230 V, 100 µF, nothing drawn, at the crest',
    mainsV: 230,
    frequencyHz: 50,
    lamps: [{ ratedV: 230, ratedW: 60 }],
    arrangement: 'series',
    bulkF: 100e-6,
    load: { kind: 'none' },
    switchAt: 'crest',
    durationS: 1,
  },
  {
    name: '100 W 120 V, 220 µF, 1 kΩ, at zero',
    mainsV: 120,
    frequencyHz: 60,
    lamps: [{ ratedV: 120, ratedW: 100 }],
    arrangement: 'series',
    bulkF: 220e-6,
    load: { kind: 'resistance', resistanceOhm: 1000 },
    switchAt: 'zero',
    durationS: 1,
  },
  {
    name: '60 W 230 V, 100 µF, 15 W constant power, at the crest',
    mainsV: 230,
    frequencyHz: 50,
    lamps: [{ ratedV: 230, ratedW: 60 }],
    arrangement: 'series',
    bulkF: 100e-6,
    load: steady(15, 200),
    switchAt: 'crest',
    durationS: 1.5,
  },
  {
    name: 'two 60 W 120 V in series on 230 V, 150 µF, 3 kΩ, at the crest',
    mainsV: 230,
    frequencyHz: 50,
    lamps: [
      { ratedV: 120, ratedW: 60 },
      { ratedV: 120, ratedW: 60 },
    ],
    arrangement: 'series',
    bulkF: 150e-6,
    load: { kind: 'resistance', resistanceOhm: 3000 },
    switchAt: 'crest',
    durationS: 1,
  },
  {
    name: '60 W 120 V, 100 µF, 2 kΩ, shorted after 0.4 s, at the crest',
    mainsV: 120,
    frequencyHz: 60,
    lamps: [{ ratedV: 120, ratedW: 60 }],
    arrangement: 'series',
    bulkF: 100e-6,
    load: { kind: 'resistance', resistanceOhm: 2000 },
    shortAfterS: 0.4,
    switchAt: 'crest',
    durationS: 1,
  },
  {
    name: '40 W and 60 W 100 V in parallel, 47 µF, 500 Ω, at the crest',
    mainsV: 100,
    frequencyHz: 50,
    lamps: [
      { ratedV: 100, ratedW: 40 },
      { ratedV: 100, ratedW: 60 },
    ],
    arrangement: 'parallel',
    bulkF: 47e-6,
    load: { kind: 'resistance', resistanceOhm: 500 },
    switchAt: 'crest',
    durationS: 1,
  },
]

/** The circuit for ngspice. */
export function netlist(circuit: Circuit): string {
  const { mainsV, frequencyHz, lamps, load } = circuit
  const series = circuit.arrangement === 'series'
  const lampLines = lamps.map((lamp, at) =>
    lampNetlist(
      `l${at}`,
      lamp,
      series ? (at === 0 ? 'line' : `m${at}`) : 'line',
      series ? (at === lamps.length - 1 ? 'ac' : `m${at + 1}`) : 'ac',
    ),
  )
  const loadLine =
    load.kind === 'resistance'
      ? `Rload bus ret ${load.resistanceOhm}`
      : load.kind === 'constant-power'
        ? `Bload bus ret I=V(bus,ret) > ${load.startV} ? ${load.powerW}/max(V(bus,ret), 1) : 0`
        : 'Rload bus ret 1e9'
  return [
    'lamp, bridge and capacitor',
    ...lamps.slice(1).map((_, at) => (series ? `Rm${at + 1} m${at + 1} 0 1e8\nCm${at + 1} m${at + 1} 0 10p` : '')),
    'Rac ac 0 1e8',
    `Vmains line 0 SIN(0 ${Math.SQRT2 * mainsV} ${frequencyHz} 0 0 ${circuit.switchAt === 'crest' ? 90 : 0})`,
    ...lampLines,
    `.model dr D(IS=${bridgeDiode.saturationA} N=${bridgeDiode.emission} RS=${bridgeDiode.seriesOhm} CJO=20p)`,
    'D1 ac bus dr',
    'D2 0 bus dr',
    'D3 ret ac dr',
    'D4 ret 0 dr',
    `Cbulk bus ret ${circuit.bulkF} ic=0`,
    loadLine,
    circuit.shortAfterS === undefined ? '' : `Bshort bus ret I=time > ${circuit.shortAfterS} ? V(bus,ret)/0.01 : 0`,
    'Rfloat ret 0 1e9',
    '.options method=gear reltol=1e-4',
    `.tran 50u ${circuit.durationS} 0 50u uic`,
    '.end',
  ]
    .filter((line) => line !== '')
    .join('\n')
}

/** The circuit for our own solver. */
export const switchOnOf = (circuit: Circuit): SwitchOn => ({
  ...circuit,
  series: lampsOf(circuit),
  diode: bridgeDiode,
  samples: 600,
  settledBand,
})
