import type { CheckRequest } from '../../server/chain/case/request.js'
import type { TopicName } from '../../server/chain/index.js'
import { fluxRatio } from '../../server/physics/flux.js'
import { capacitorCurrent, floatingCaseReading } from '../../server/physics/leakage.js'
import { oppositionVA } from '../../server/physics/opposition.js'
import { primaryOhm } from '../../server/physics/primaryResistance.js'
import { motorStart } from '../../server/tables/inside.js'
import { minimumLoadRows } from '../../server/tables/minimumLoad.js'
import { safetyLimits } from '../../server/tables/safetyTestLimits.js'
import { assess } from '../support/told.js'
import type { AccuracyRow } from './accuracyRows.js'

type Figures = [
  what: string,
  source: string,
  unit: string,
  theirs: number,
  ours: number,
  accepted: number,
  note?: string,
]

const found = (request: CheckRequest, topic: TopicName) =>
  assess(request).findings.find((finding) => finding.topic === topic)

/** How many machines that leak so much [A] a check still finds within what is advised on a device of 30 mA. */
function machinesOn30mA(eachA: number): number {
  const within = (count: number): boolean =>
    found(
      {
        arrangement: 'built-in',
        site: { country: 'DE', residualCurrentA: 0.03, othersLeakA: (count - 1) * eachA },
        supply: {},
        device: { label: '230V~ 50Hz 40W', mains: { input: { earthLeakA: eachA } } },
      },
      'leakage',
    )?.outcome === 'clear'
  let count = 0
  while (within(count + 1)) count += 1
  return count
}

/** Times its speed at which a check says that a synchronous motor runs. */
function speedOn50Hz(): number {
  const machine: CheckRequest = {
    arrangement: 'built-in',
    site: { country: 'DE' },
    supply: {},
    device: { label: '230V~ 60Hz 40W', mains: { motor: 'synchronous' } },
  }
  return Number(/runs at ([\d.]+)\s?(?:times|×)/.exec(found(machine, 'speed')?.title ?? '')?.[1])
}

/** The limit of a test by the scheme of 2008 and the class. */
const limitOf = (test: string, ofClass: 'I' | 'II'): number =>
  safetyLimits.find(
    (row) =>
      row.scheme === 'vde-2008' && row.test === test && row.general && row.classes.some((one) => one === ofClass),
  )?.limit ?? Number.NaN

const figures = (): Figures[] => [
  // gates before the first power
  [
    'cold resistance, primary of 230 V 10 VA',
    'by hand: half of 25 % times V² / VA',
    'Ω',
    661,
    primaryOhm(230, 10, 0.25),
    0.001,
  ],
  [
    'cold resistance, primary of 230 V 100 VA',
    'by hand: half of 11 % times V² / VA',
    'Ω',
    29.1,
    primaryOhm(230, 100, 0.11),
    0.001,
  ],
  [
    'cold resistance, primary of 120 V 30 VA',
    'by hand: half of 16 % times V² / VA',
    'Ω',
    38.4,
    primaryOhm(120, 30, 0.16),
    0.001,
  ],
  [
    'insulation, class I',
    'manual of an appliance tester, VDE 0701-0702:2008',
    'MΩ',
    1,
    limitOf('insulation', 'I'),
    1e-9,
    'limit of the table',
  ],
  [
    'insulation, class II',
    'manual of an appliance tester, VDE 0701-0702:2008',
    'MΩ',
    2,
    limitOf('insulation', 'II'),
    1e-9,
    'limit of the table',
  ],
  [
    'touch current, class II',
    'manual of an appliance tester, VDE 0701-0702:2008',
    'mA',
    0.5,
    limitOf('touch-current', 'II'),
    1e-9,
    'limit of the table',
  ],
  // least load, start, speed
  [
    'least load of +12 V, 1 A of 14 A',
    'design guide for computer supplies, version 2.0',
    '',
    1 / 14,
    minimumLoadRows[0]?.share ?? Number.NaN,
    0.03,
    'told to two digits',
  ],
  [
    'start of an induction motor',
    'load types of a maker of switches',
    'times',
    6,
    motorStart.induction,
    1e-9,
    'value of the table',
  ],
  [
    'synchronous motor for 60 Hz on 50 Hz',
    'by hand: 50 / 60',
    'times',
    50 / 60,
    speedOn50Hz(),
    0.001,
    'as a check says it',
  ],
  // sources and converters
  [
    'site transformer of 110 V 50 Hz on a plate of 120 V 60 Hz',
    'by hand: (110 / 50) / (120 / 60)',
    '× flux',
    1.1,
    fluxRatio(110, 50, 120, 60),
    1e-9,
  ],
  [
    'transformer in opposition: 12 V off at 2 A',
    'radio amateurs’ list, 1997: a transformer of 12 V 2 A',
    'VA',
    24,
    oppositionVA(122, 110, 2),
    1e-9,
  ],
  // leakage
  [
    'minicomputer with two of 4.7 nF from line to earth, 240 V 50 Hz',
    'measured, a restorers’ forum',
    'mA',
    0.7,
    2e3 * capacitorCurrent(4.7e-9, 240, 50),
    0.02,
    'read to 0.1 mA',
  ],
  [
    'machines of 1 mA within what is advised on 30 mA',
    'BS 7671 531.3.3 as quoted: 30 % of the rating',
    '',
    9,
    machinesOn30mA(1e-3),
    1e-9,
    'as checks judge',
  ],
  [
    'machines of 3.5 mA within what is advised on 30 mA',
    'the same',
    '',
    2,
    machinesOn30mA(3.5e-3),
    1e-9,
    'as checks judge',
  ],
  [
    'case without earth, two of 2.2 nF, 230 V 50 Hz, meter of 1 MΩ',
    'worked example',
    'V',
    93.2,
    floatingCaseReading(2.2e-9, 230, 50, 1e6),
    0.0006,
  ],
  ['the same with a meter of 10 kΩ', 'worked example', 'V', 1.59, floatingCaseReading(2.2e-9, 230, 50, 1e4), 0.004],
]

/** What is judged of machines with their supply inside, of sources and of what hangs together on one device. */
export const arrangementRows = (): AccuracyRow[] =>
  figures().map(([what, source, unit, theirs, ours, accepted, note = '']) => ({
    part: 'Arrangements',
    what,
    source,
    unit,
    theirs,
    ours,
    accepted,
    note,
  }))
