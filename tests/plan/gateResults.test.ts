import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import { type GateResult, gateState } from '../../server/plan/gateResults.js'
import { changed, matching } from '../chain/cases.js'
import { assess, planFirstPower } from '../support/told.js'

const lamps = { lampsOnHand: [{ ratedV: 230, ratedW: 60, count: 1 }] }
const plan = (gateResults: GateResult[], check = matching) =>
  planFirstPower(prepareCase(check), assess(check), { ...lamps, gateResults })
const stages = (gateResults: GateResult[], check = matching) =>
  Object.fromEntries(plan(gateResults, check).stages.map((one) => [one.name, one]))
const stage = (name: string, gateResults: GateResult[], check = matching) => stages(gateResults, check)[name]

const { gates } = plan([])

/** Every gate with a result within its limits, and who tested. */
const allPassed = (): GateResult[] =>
  gates.map(({ key, low, high, strict }) => ({
    key,
    passed: true,
    // what may have fallen to 34 V, and not stand at it, has fallen to 0 V
    value: strict && low !== null && high !== null ? (low + high) / 2 : (low ?? high),
    testedBy: 'the tester',
  }))

const ofYou = { unit: 'Ω', low: 100, high: null, who: 'you' as const }
const ofOthers = { ...ofYou, who: 'qualified' as const }
const seen = { unit: null, low: null, high: null, who: 'you' as const }

describe('a gate', () => {
  it.each([
    { state: 'open', gate: ofYou, result: undefined, why: 'without a result' },
    { state: 'open', gate: ofYou, result: {}, why: 'with a limit and no reading' },
    { state: 'open', gate: ofYou, result: { passed: true }, why: 'with a limit and a tick alone' },
    { state: 'passed', gate: ofYou, result: { value: 100 }, why: 'at its limit' },
    { state: 'failed', gate: ofYou, result: { value: 99.9 }, why: 'just below it' },
    { state: 'failed', gate: ofYou, result: { value: 99.9, passed: true }, why: 'below it, whatever was said' },
    { state: 'failed', gate: ofYou, result: { value: Number.NaN }, why: 'with no number' },
    { state: 'failed', gate: { ...ofYou, low: null, high: 5 }, result: { value: 5.1 }, why: 'above a highest' },
    { state: 'passed', gate: { ...ofYou, low: null, high: 5 }, result: { value: 5 }, why: 'at a highest' },
    { state: 'open', gate: ofOthers, result: { value: 200 }, why: 'of qualified hands, by nobody' },
    { state: 'open', gate: ofOthers, result: { value: 200, testedBy: ' ' }, why: 'of qualified hands, by a blank' },
    { state: 'open', gate: ofOthers, result: { value: 200, testedBy: '-' }, why: 'of qualified hands, by a dash' },
    {
      state: 'open',
      gate: ofOthers,
      result: { value: 200, testedBy: '??' },
      why: 'of qualified hands, by question marks',
    },
    {
      state: 'open',
      gate: ofOthers,
      result: { value: 200, testedBy: ' n/a ' },
      why: 'of qualified hands, not applicable',
    },
    {
      state: 'open',
      gate: ofOthers,
      result: { value: 200, testedBy: 'Nobody.' },
      why: 'of qualified hands, by nobody',
    },
    { state: 'open', gate: ofOthers, result: { value: 200, testedBy: 'x' }, why: 'of qualified hands, by a letter' },
    { state: 'open', gate: ofOthers, result: { value: 200, testedBy: 'nobody yet' }, why: 'by nobody yet' },
    {
      state: 'passed',
      gate: ofOthers,
      result: { value: 200, testedBy: 'T. Er' },
      why: 'of qualified hands, by someone',
    },
    {
      state: 'passed',
      gate: ofOthers,
      result: { value: 200, testedBy: '李' },
      why: 'of qualified hands, by one sign that is a name',
    },
    {
      state: 'passed',
      gate: ofOthers,
      result: { value: 200, testedBy: 'Nan Nobodeau' },
      why: 'of qualified hands, by a name',
    },
    { state: 'failed', gate: ofOthers, result: { value: 20 }, why: 'of qualified hands, below, by nobody' },
    { state: 'passed', gate: seen, result: { passed: true }, why: 'that is seen' },
    { state: 'open', gate: seen, result: { value: 3 }, why: 'that is seen, with a number no limit judges' },
    { state: 'failed', gate: seen, result: { passed: false }, why: 'that is seen to fail' },
  ])('$why is $state', ({ state, gate, result }) => {
    expect(gateState(gate, result && { key: 'gate.one', ...result })).toBe(state)
  })
})

describe('the stages behind the gates', () => {
  it('wait, and say for which, while one has no result', () => {
    for (const name of ['supply-alone', 'dummy-load', 'bench-supply', 'together'])
      expect(stage(name, [])?.waits).toMatch(/^Waits for gates \d/)
    // as they are numbered on paper, where the gates are the second stage
    const numbers = plan([]).gates.map((_, index) => `2.${index + 1}`)
    expect(stage('together', [])?.waits?.match(/\d+\.\d+/g)).toEqual(numbers)
  })
  it('wait for nothing once each has passed, but for the machine on a supply that was not proved alone', () => {
    for (const { name, waits, leftOut } of plan(allPassed()).stages) {
      expect(leftOut).toBeNull()
      if (name !== 'together') expect(waits).toBeNull()
    }
    expect(stage('together', allPassed())?.waits).toMatch(/^Waits for “The supply alone, behind the lamp”/)
  })
  it('join machine and supply once each line under power of the supply alone has its result', () => {
    const lines = (stage('supply-alone', allPassed())?.steps ?? []).filter(({ power }) => power !== 'none')
    // 12 V, 0 V across the lamp where no more is allowed: within any limits that a sound supply has
    const results = lines.map(({ key, low, high }): GateResult => {
      const value = low !== null && high !== null ? (low + high) / 2 : low !== null ? low + 1 : null
      return { key, passed: true, value }
    })
    expect(stage('together', [...allPassed(), ...results])?.waits).toBeNull()
    for (const [index, { key }] of results.entries()) {
      const others = results.filter((_, at) => at !== index)
      expect(stage('together', [...allPassed(), ...others])?.waits, key).toContain('supply alone')
      expect(stage('together', [...allPassed(), ...others, { key, passed: false }])?.waits).toContain('supply alone')
    }
  })
  it.each(['gate.isolation', 'gate.live-neutral', 'gate.paper-capacitors', 'look.cord'])(
    'on the mains are left out where %s fails; the machine alone is not',
    (key) => {
      const left = stages([...allPassed(), { key, passed: false, value: 1 }])
      for (const name of ['supply-alone', 'dummy-load', 'together']) {
        expect(left[name]?.leftOut).toMatch(/A gate failed/)
        expect(left[name]?.steps).toEqual([])
      }
      expect(left['bench-supply']?.leftOut).toBeNull()
    },
  )
  it.each(['look.batteries', 'look.inside'])(
    'of the machine are left out where %s fails; the supply alone is not',
    (key) => {
      const left = stages([...allPassed(), { key, passed: false }])
      for (const name of ['bench-supply', 'together']) expect(left[name]?.leftOut).toMatch(/A gate failed/)
      for (const name of ['supply-alone', 'dummy-load']) expect(left[name]?.leftOut).toBeNull()
    },
  )
  it('say what was read: an insulation of 0.5 MΩ where 2 MΩ is the least', () => {
    const results = [...allPassed(), { key: 'gate.isolation', value: 5e5, testedBy: 'the tester' }]
    expect(stage('supply-alone', results)?.leftOut?.replaceAll('\u00a0', ' ')).toMatch(/500 kΩ read/)
  })
  it('go by the last result of each: mended and measured anew', () => {
    const failed = { key: 'gate.isolation', value: 5e5, testedBy: 'the tester' }
    expect(stage('supply-alone', [...allPassed(), failed, { ...failed, value: 5e6 }])?.leftOut).toBeNull()
  })
  it('keep the reason they had where they are left out already', () => {
    const check = changed({ supply: { input: { voltages: [{ min: 120, max: 120 }] } } })
    expect(stage('supply-alone', [], check)).toMatchObject({ waits: null })
    expect(stage('supply-alone', [], check)?.leftOut).toMatch(/as things stand/)
  })
})
