import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import type { FirstPowerOptions } from '../../server/plan/planFirstPower.js'
import { assess, composeChecklist, planFirstPower } from '../support/told.js'

type Mains = NonNullable<CheckRequest['device']['mains']>

/** A recorder of 40 W with its supply inside, on its own mains; `more` is entered of its mains side. */
const machine = (more: Mains = {}, label = '220-240V~ 50Hz 40W'): CheckRequest => ({
  arrangement: 'built-in',
  site: { country: 'DE', socket: 'F' },
  supply: {},
  device: { label, mains: { technology: 'transformer', protectionClass: 'I', inlet: 'C14', ...more } },
  cord: { plug: 'CEE 7/7', connector: 'C13', ratedV: 250, ratedA: 10, earthed: true, plugFitted: 'moulded' },
})

const lamps = [
  { ratedV: 230, ratedW: 60, count: 1 },
  { ratedV: 230, ratedW: 200, count: 1 },
]
const planOf = (check: CheckRequest, options: FirstPowerOptions = { lampsOnHand: lamps }) =>
  planFirstPower(prepareCase(check), assess(check), options)
const gateKeys = (check: CheckRequest) => planOf(check).gates.map(({ key }) => key)
const stage = (plan: ReturnType<typeof planOf>, name: string) => plan.stages.find((one) => one.name === name)

describe('the first power-up of a machine with its supply inside', () => {
  it('has three stages, behind gates of its mains side, and asks nothing of an output', () => {
    const plan = planOf(machine())
    expect(plan.stages.map(({ name, leftOut }) => [name, leftOut])).toEqual([
      ['inside-stripped', null],
      ['inside-whole', null],
      ['inside-full', null],
    ])
    expect(gateKeys(machine())).toEqual(
      expect.arrayContaining([
        'gate.unplug-inside',
        'gate.live-neutral',
        'gate.to-earth',
        'gate.insulation',
        'before.earth',
      ]),
    )
    expect(gateKeys(machine())).not.toContain('gate.isolation')
    // every gate is on the machine's mains side: none may be open
    expect(plan.stages.every(({ waits }) => waits !== null)).toBe(true)
  })

  it('looks for the winding of 40 VA at 230 V between those of 30 VA and of 60 VA', () => {
    // the rows of 30 VA (70.5 Ω to 282 Ω) and 60 VA (28.5 Ω to 114 Ω) of the table of cold resistances, worked out from regulation
    const step = planOf(machine({}, '230V 50Hz 40VA')).gates.find(({ key }) => key === 'gate.live-neutral')
    expect(step?.low).toBeGreaterThan(28)
    expect(step?.low).toBeLessThan(71)
    expect(step?.high).toBeGreaterThan(114)
    expect(step?.high).toBeLessThan(283)
  })

  it('adds what a motor and a picture tube ask for, and only where there is one', () => {
    expect(gateKeys(machine({ motor: 'induction' }))).toEqual(
      expect.arrayContaining(['gate.shafts', 'gate.motor-ohms']),
    )
    expect(gateKeys(machine({ motor: 'dc' }))).not.toContain('gate.shafts')
    expect(gateKeys(machine({ pictureTube: true }))).toContain('gate.picture-tube')
    expect(gateKeys(machine({ pictureTube: false }))).not.toContain('gate.picture-tube')
    const shown = JSON.stringify(planOf(machine({ pictureTube: true, motor: 'induction' })))
    expect(shown).toMatch(/degaussing coil stays off/)
    expect(shown).toMatch(/motor: bright while it starts, then dim/)
  })

  it('leaves fuse-links, mains motors, valves and the picture tube to a qualified person', () => {
    const { gates } = planOf(machine({ motor: 'induction', pictureTube: true }))
    const inside = ['gate.motor-ohms', 'gate.valves', 'gate.picture-tube']
    expect(gates.filter(({ key }) => inside.includes(key)).map(({ key, who }) => [key, who])).toEqual(
      expect.arrayContaining(inside.map((key) => [key, 'qualified'])),
    )
  })

  it('works out what a motor may ask for at its start: 6 × 40 W / 230 V = 1.04 A, 1.1 A up', () => {
    const figures = stage(planOf(machine({ motor: 'induction' })), 'inside-stripped')?.figures ?? []
    expect(figures.find(({ label }) => /start/.test(label))?.value).toMatch(/1\.1\u00a0A: more than this lamp passes/)
  })

  it('names a lamp of three times what is still plugged in: 3 × 20 W = 60 W, and never less than 25 W', () => {
    const lampBy = (idleW: number) =>
      stage(planOf(machine(), { lampsOnHand: lamps, idleW }), 'inside-stripped')?.figures.find(({ label }) =>
        /rule of 3/.test(label),
      )?.value
    expect(lampBy(20)).toBe('60\u00a0W')
    expect(lampBy(5)).toBe('25\u00a0W')
  })

  it('stops above one and a half times the plate: 50 VA / 230 V × 1.5 = 0.326 A', () => {
    const current = stage(planOf(machine()), 'inside-full')?.steps.find(({ key }) => key === 'inside-full.current')
    // 40 W / 0.8 = 50 VA
    expect(current?.high).toBeCloseTo(0.326, 3)
  })

  it('does not run a machine behind a lamp that starves it, and says which would do', () => {
    const heavy = planOf(machine({ technology: 'switch-mode' }, '220-240V~ 50Hz 300W'))
    expect(stage(heavy, 'inside-whole')?.leftOut).toMatch(/starve/)
    expect(stage(heavy, 'inside-stripped')?.leftOut).toBeNull()
  })

  it('meets no mains on a plate for another, with words of a live chassis, or with anything unknown on the mains side', () => {
    for (const check of [
      machine({}, '120V 60Hz 40W'),
      machine({}, '230V 50Hz 40W LIVE CHASSIS'),
      machine({ inlet: null }),
    ])
      for (const { leftOut } of planOf(check).stages) expect(leftOut).not.toBeNull()
  })

  it('has a checklist from the unplugged machine to full mains, each reading with a limit or room to write', () => {
    const check = machine({ motor: 'induction' })
    const assessment = assess(check)
    const of = prepareCase(check)
    const { stages } = composeChecklist({
      ...of,
      assessment,
      plan: planFirstPower(of, assessment, { lampsOnHand: lamps }),
    })
    expect(stages.map(({ title }) => title)).toEqual([
      'Before the plug is touched',
      'Look, take out and test',
      'The machine stripped, behind the lamp',
      'The machine part by part, behind a larger lamp',
      'The machine on full mains, part by part, without the lamp',
      'Done for today',
    ])
    expect(stages[0]?.lines[0]?.text).toBe('Machine out of the socket, nothing else connected.')
    const keys = stages.flatMap(({ lines }) => lines.map(({ key }) => key))
    expect(new Set(keys).size).toBe(keys.length)
    expect(JSON.stringify(stages)).not.toMatch(/supply apart|the supply’s case/)
  })
})

describe('the first power-up of one side alone', () => {
  const supply: CheckRequest = {
    arrangement: 'supply-only',
    site: { country: 'DE', socket: 'F' },
    supply: { label: 'INPUT 100-240V~ 50/60Hz 0.5A OUTPUT 12V⎓ 2A ⧈', technology: 'switch-mode', inlet: 'C8' },
    device: {},
  }

  it('of a supply ends at the dummy load; of a machine it is the bench supply, without a gate on any mains side', () => {
    expect(planOf(supply).stages.map(({ name }) => name)).toEqual(['supply-alone', 'dummy-load'])
    const machineAlone = planOf({ arrangement: 'machine-only', site: {}, supply: {}, device: { label: 'DC 12V 1A' } })
    expect(machineAlone.stages.map(({ name, leftOut }) => [name, leftOut])).toEqual([['bench-supply', null]])
    expect(machineAlone.gates.filter(({ link }) => link !== 'machine')).toEqual([])
  })
})
