import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published } from './source.js'
import { table } from './table.js'

const stepped = commonPractice(
  'Steps of a first power-up from a current-limited source',
  'a tenth, a quarter, a half of the plate current, then all of it; held for 10 s, 1, 5 and 15 minutes; the plate current is never exceeded, so a fault is fed no harder than the machine itself',
)

/** Set for a first power-up from a bench supply. */
export const benchRules = frozen({
  steps: frozen([
    { voltageShare: 0.25, currentShare: 0.1, holdS: 10 },
    { voltageShare: 0.5, currentShare: 0.25, holdS: 60 },
    { voltageShare: 1, currentShare: 0.5, holdS: 60 },
    { voltageShare: 1, currentShare: 1, holdS: 300 },
    { voltageShare: 1, currentShare: 1, holdS: 900 },
  ]),
  constantPowerSteps: frozen([
    { voltageShare: 1, currentShare: 1, holdS: 5 },
    { voltageShare: 1, currentShare: 1, holdS: 60 },
    { voltageShare: 1, currentShare: 1, holdS: 300 },
    { voltageShare: 1, currentShare: 1, holdS: 900 },
  ]),
  unknownFirstA: 0.1,
  unknownGrowth: 2,
  overVoltage: 1.1,
  source: stepped,
})

export const holdTimes = published(
  'Notebook of an electronics teaching laboratory, chapter on the first power-up',
  'hold, note current and temperatures; limit at the expected idle draw or lower; a current that creeps up over minutes points to thermal runaway',
)

export const overVoltageSetting = commonPractice(
  'Over-voltage protection 10 to 15 % above nominal',
  'the lower end is used here, 5.5 V for 5 V logic; bipolar logic has an absolute maximum of 7 V',
)

export const unknownCurrent = commonPractice(
  'Current limit where nothing is known: 100 mA, doubled from step to step',
  'a project rule; a doubling shows a steady fault before it is fed hard',
)

/** Ohmmeter readings across an input, power off, capacitors let charge. */
export const resistanceReadings = frozen({
  shortOhm: 1,
  openOhm: 1e6,
  source: commonPractice(
    'Reading a rail with an ohmmeter',
    'under 1 Ω on a 5 V rail is a short until explained; 5 Ω to 50 Ω is usual for a large bipolar logic board, hundreds for CMOS; above about 1 MΩ nothing seems connected (project rule)',
  ),
})

export const latchUp = published(
  'Power-supply maker’s note on current-limit latch-up',
  'a constant-power load on a limited source can settle at a low voltage, worst when the limit is just above the running current',
)

export const latchUpFactor = commonPractice(
  'Limit of 2 to 3 times the running current for a constant-power input',
  'a project rule to keep clear of the latched state; the plate current usually is that much',
)

export const senseLeads = published(
  'Test-equipment maker’s article on remote sensing, September 2009',
  'with loose sense links the output may rise, up to 0.6 V per terminal where diodes protect it',
)

export const railOrder = fromMemory(
  'Data sheets of three-rail dynamic memories of the 4116 class',
  'the negative bias comes first and goes last',
)

export const backFeed = fromMemory(
  'Data sheets of three-terminal regulators',
  'current flows back through the regulator where its output is held above its input; a diode from output to input prevents it',
)

/** D.C. resistance of one metre of class 5 plain copper flexible conductor at 20 °C, largest allowed. */
export const flexibleCores = frozen(
  [
    { areaMm2: 0.5, ohmPerM: 0.039 },
    { areaMm2: 0.75, ohmPerM: 0.026 },
    { areaMm2: 1, ohmPerM: 0.0195 },
    { areaMm2: 1.5, ohmPerM: 0.0133 },
    { areaMm2: 2.5, ohmPerM: 0.00798 },
  ].map((row) => frozen({ ...row, source: fromMemory('IEC 60228', 'class 5 flexible conductors, plain copper') })),
)

const shownSteps = [
  { input: 'Linear or resistive input', steps: benchRules.steps },
  { input: 'Constant-power input', steps: benchRules.constantPowerSteps },
].flatMap(({ input, steps }) =>
  steps.map((step, index) => ({ input, number: index + 1, ...step, source: benchRules.source })),
)

export const benchStepsTable = table<(typeof shownSteps)[number]>({
  name: 'bench-steps',
  title: 'Steps of a current-limited first power-up',
  intro: 'Voltage as a share of the nominal, limit as a share of the plate current, and how long each step is held.',
  rows: shownSteps,
  id: ({ input, number }) => [input, number],
  columns: [
    { key: 'input', title: 'Step', of: ({ input, number }) => `${input}, step ${number}` },
    { key: 'voltageShare', title: 'Voltage', each: '%', above: 0, to: 1 },
    { key: 'currentShare', title: 'Limit', each: '%', above: 0, to: 1 },
    { key: 'holdS', title: 'Held for', each: 'time', above: 0 },
  ],
})

export const flexibleCoresTable = table<(typeof flexibleCores)[number]>({
  name: 'flexible-cores',
  title: 'Resistance of flexible cores',
  intro: 'Direct-current resistance of one metre of one core at 20 °C, the largest that the standard allows.',
  rows: flexibleCores,
  id: ({ areaMm2 }) => [areaMm2, 'mm2'],
  columns: [
    { key: 'areaMm2', title: 'Area', unit: 'mm²', above: 0, rises: true },
    { key: 'ohmPerM', title: 'Resistance', unit: 'Ω/m', above: 0 },
  ],
})
