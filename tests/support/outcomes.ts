import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Device, Supply } from '../../server/chain/case/request.js'
import { rulesVersion } from '../../server/web/dataVersion.js'
import { judgedAndPlanned } from '../../server/web/judge.js'

/** What the rules made of the fixed cases when they were stepped last: for each case its findings and the limits of its plan. */
export interface Outcomes {
  rulesVersion: number
  cases: Record<string, string[]>
}

export const outcomesFile = join(import.meta.dirname, '../web/outcomes.json')

export const keptOutcomes = (): Outcomes => JSON.parse(readFileSync(outcomesFile, 'utf8')) as Outcomes

const places = ['DE', 'US', 'JP', 'BR', undefined]

const supplies: Record<string, Supply> = {
  'wide switch-mode': {
    label: 'SWITCHING POWER SUPPLY\nINPUT: 100-240V~ 50/60Hz 0.6A\nOUTPUT: 12V ⎓ 2A\nclass II',
    technology: 'switch-mode',
    inlet: 'C8',
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  '120 V transformer': {
    label: 'AC ADAPTER\nINPUT: 120V 60Hz 18W\nOUTPUT: 12VDC 1A',
    technology: 'transformer',
    regulated: false,
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' },
    measured: { offLoadV: 17.2 },
  },
  '240 V class I': {
    input: { voltages: [{ min: 240, max: 240 }], frequenciesHz: [50], currentA: 0.4 },
    outputs: [
      { kind: 'dc', voltageV: 12, currentA: 3 },
      { kind: 'dc', voltageV: 5, currentA: 1 },
    ],
    protectionClass: 'I',
    inlet: 'C14',
  },
  'nothing known': {},
}

const machines: Record<string, Device> = {
  recorder: {
    label: 'RECORDER\nDC IN 12V ⎓ 1.2A',
    jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
    regulatedNeeded: true,
  },
  terminal: {
    inputs: [
      { kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'measured' },
      { kind: 'dc', voltageV: 5, currentA: 0.8, currentIs: 'plate' },
    ],
  },
}

const cord = { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, ratedV: 250, earthed: true }

const atHand = {
  lampsOnHand: [
    { ratedV: 230, ratedW: 60, count: 1 },
    { ratedV: 120, ratedW: 60, count: 2 },
  ],
  yearsUnused: 30,
  bulkF: 68e-6,
}

/** What the rules make of the fixed cases now. */
export function outcomesNow(): Outcomes {
  const cases: Outcomes['cases'] = {}
  for (const country of places)
    for (const [supplyName, supply] of Object.entries(supplies))
      for (const [machineName, device] of Object.entries(machines)) {
        const check = { site: { country }, supply, device, cord: machineName === 'terminal' ? cord : null }
        const { assessment, limits } = judgedAndPlanned(check, null, 0, atHand)
        cases[`${country ?? 'nowhere'}, ${supplyName}, ${machineName}`] = [
          ...assessment.findings.map(({ topic, outcome }) => `${topic} ${outcome}`).sort(),
          ...limits
            .filter(({ low, high }) => low !== null || high !== null)
            .map(({ key, low, high, unit }) => `${key} ${low ?? ''} to ${high ?? ''} ${unit ?? ''}`),
        ]
      }
  return { rulesVersion, cases }
}
