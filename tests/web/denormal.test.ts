import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { testApp } from './testApp.js'

const { app } = testApp()
const post = (path: string, body: object) => request(app).post(path).send(body)

const check = {
  site: { country: 'DE', voltageV: 230, frequencyHz: 50, socket: 'F' },
  supply: {
    input: {
      voltages: [{ min: 230, max: 230 }],
      frequenciesHz: [60],
      currentA: 0.2,
      powerVA: 46,
      powerW: 30,
      selectorV: 230,
    },
    technology: 'transformer',
    regulated: false,
    protectionClass: 'II',
    inlet: 'C8',
    outputs: [{ kind: 'dc', voltageV: 12, currentA: 2, powerW: 24 }],
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
    lead: { lengthM: 1.5, areaMm2: 0.5 },
    fuse: 'T315mAL250V',
    measured: { offLoadV: 16.5, loadedV: 12.5 },
  },
  device: {
    inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'measured', tolerancePercent: 5 }],
    regulatedNeeded: false,
    jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  cord: { plug: 'BS 1363', connector: 'C7', ratedV: 250, ratedA: 2.5, areaMm2: 0.75 },
  converter: { kind: 'isolating', outputV: 230, ratedVA: 100 },
}

const firstPower = {
  check,
  lampsOnHand: [{ ratedV: 230, ratedW: 60, count: 1 }],
  idleW: 3,
  bulkF: 1e-4,
  bulkRatedV: 400,
  yearsUnused: 26,
  measuredOhm: 20,
}

const fuse = {
  marking: 'T500mAL250V',
  prescribed: 'T500mAL250V',
  fuse: { ratedA: 0.5, ratedV: 250 },
  position: 'mains',
  circuit: {
    voltageV: 230,
    currentA: 0.3,
    powerW: 40,
    powerFactor: 0.6,
    inrushPeakA: 30,
    inrushTimeS: 0.001,
    pulses: 1000,
    ambientC: 25,
    prospectiveFaultA: 30,
  },
  formerVoltageV: 120,
  seriesLampA: 0.26,
}

type Path = (string | number)[]

/** Paths of every number in a body. */
const numbersIn = (value: unknown, path: Path = []): Path[] =>
  typeof value === 'number'
    ? [path]
    : typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, [...path, key]))
      : []

function replaced(body: object, path: Path, value: number): object {
  const copy = structuredClone(body)
  let at = copy as Record<string | number, unknown>
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>
  at[path.at(-1) ?? ''] = value
  return copy
}

const odd = [5e-324, 1e-300, 1e-12, 1e-6, 0.001, 0.1, 1000, 1e300]

describe('numbers nobody meant', { timeout: 120_000 }, () => {
  it.each([
    ['/api/check', check],
    ['/api/first-power', firstPower],
    ['/api/fuse', fuse],
  ] as const)('%s answers or refuses each, and never breaks', async (path, body) => {
    expect((await post(path, body)).status).toBe(200)
    const paths = numbersIn(body)
    expect(paths.length).toBeGreaterThan(10)
    for (const number of paths)
      for (const value of odd) {
        const { status, body: answer } = await post(path, replaced(body, number, value))
        expect([200, 422], `${number.join('.')} = ${value}: ${JSON.stringify(answer).slice(0, 200)}`).toContain(status)
      }
  })

  it.each([
    ['supply.input.currentA', ['supply', 'input', 'currentA'], /0\.000001 or more/],
    ['supply.input.voltages.0.min', ['supply', 'input', 'voltages', 0, 'min'], /0\.1 or more/],
    ['supply.outputs.0.powerW', ['supply', 'outputs', 0, 'powerW'], /0\.001 or more/],
    ['device.inputs.0.voltageV', ['device', 'inputs', 0, 'voltageV'], /0\.1 V or more in size/],
    ['site.frequencyHz', ['site', 'frequencyHz'], /10 or more/],
    ['supply.lead.areaMm2', ['supply', 'lead', 'areaMm2'], /0\.001 or more/],
  ] as const)('a check says of %s what it would take', async (name, path, words) => {
    const { status, body } = await post('/api/check', replaced(check, [...path], 1e-300))
    expect(status).toBe(422)
    expect(body.error.fields).toContainEqual({ path: name, message: expect.stringMatching(words) })
  })
})
