import { describe, expect, it } from 'vitest'
import { assessCase } from '../../server/chain/assess.js'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { changed } from '../chain/cases.js'
import { planFirstPower } from '../support/told.js'

const plan = (request: CheckRequest) => {
  const of = prepareCase(request)
  return planFirstPower(of, assessCase(of), {})
}
const stagesWithSteps = (request: CheckRequest) =>
  plan(request)
    .stages.filter(({ steps }) => steps.length > 0)
    .map(({ name }) => name)

// wordings written for this list
describe('a plate that says its unit is not to be used', () => {
  it.each(['DEFEKT', 'RECALLED - FIRE HAZARD', 'DO NOT USE'])('%s on the supply: it meets no mains', (words) => {
    expect(stagesWithSteps(changed({ supply: { label: words } }))).toEqual(['bench-supply'])
  })

  it('on the machine: it gets no power, the supply alone does', () => {
    expect(stagesWithSteps(changed({ device: { label: 'DEFEKT' } }))).toEqual(['supply-alone', 'dummy-load'])
  })

  it('holds nothing where no such word stands', () => {
    expect(stagesWithSteps(changed({ supply: { label: 'MODEL AB-12' } }))).toContain('supply-alone')
  })
})

describe('what reaches inside a machine', () => {
  const hands = (request: CheckRequest) =>
    plan(request)
      .gates.filter(({ key }) => key === 'look.discharge' || key === 'look.inside')
      .map(({ who }) => who)

  const builtIn = (change: object): CheckRequest => ({
    site: { country: 'DE', socket: 'F' },
    arrangement: 'built-in',
    supply: {},
    device: {
      label: null,
      mains: { input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50], currentA: 0.5 }, ...change },
    },
  })

  it('is for trained hands where a picture tube is in it, or its chassis is joined to the mains', () => {
    expect(hands(builtIn({ pictureTube: true }))).toEqual(['qualified', 'qualified'])
    expect(hands({ ...builtIn({}), supply: { isolated: false } })).toEqual(['qualified', 'qualified'])
  })

  it('is for the reader elsewhere', () => {
    expect(hands(builtIn({ pictureTube: false }))).toEqual(['you', 'you'])
  })
})
