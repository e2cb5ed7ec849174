import { describe, expect, it } from 'vitest'
import { assessCase } from '../../server/chain/assess.js'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { changed } from '../chain/cases.js'
import { planFirstPower } from '../support/told.js'

type Technology = 'transformer' | 'switch-mode' | null

const figureOf = (request: CheckRequest) => {
  const of = prepareCase(request)
  const { stages } = planFirstPower(of, assessCase(of), {})
  const all = stages.flatMap(({ figures }) => figures)
  const [found, more] = all.filter(({ label }) => /variable transformer/i.test(label))
  expect(more).toBeUndefined()
  return `${found?.value}: ${found?.working}`.replaceAll('\u00a0', ' ')
}

const separate = (technology: Technology): CheckRequest =>
  changed({ supply: { technology, regulated: true }, site: { country: 'DE', socket: 'F' } })
const inside = (technology: Technology, motor: 'induction' | 'none' | 'dc'): CheckRequest => ({
  arrangement: 'built-in',
  site: { country: 'DE', socket: 'F' },
  supply: {},
  device: {
    label: '230V~ 50Hz 40W FUSE T315mAL250V',
    mains: { inlet: 'C8', protectionClass: 'II', technology, motor, fuse: 'T315mAL250V' },
  },
  cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false, plugFitted: 'moulded' },
})

// the first reading of a plate makes the words of plates ready, which takes a while on a busy machine
describe('a variable transformer beside the lamp', { timeout: 30_000 }, () => {
  it('is raised step by step for a transformer, and never stands in for the lamp', () => {
    for (const request of [separate('transformer'), inside('transformer', 'none')]) {
      expect(figureOf(request)).toMatch(/never in its place: it limits no current and does not isolate/)
      expect(figureOf(request)).toMatch(/5 V to 10 V a step/)
      expect(figureOf(request)).not.toMatch(/switch-mode/)
    }
  })

  // 50 V of 115 V is 0.43, 90 V of 120 V is 0.75: of 230 V 98.9 V and 172.5 V, rounded outwards
  it('does not start a switch-mode input gently: where it starts is a band', () => {
    for (const request of [separate('switch-mode'), inside('switch-mode', 'none')])
      expect(figureOf(request)).toMatch(/lamp’s place never.*starts all at once.*from 98 V to 173 V/)
  })

  it('is told for both where nobody knows which it is', () => {
    expect(figureOf(inside(null, 'none'))).toMatch(/transformer: helps.*switch-mode: helps/)
  })

  it('stalls a motor on the mains, and no other', () => {
    expect(figureOf(inside('transformer', 'induction'))).toMatch(/motor: .*stalls and heats/)
    expect(figureOf(inside('transformer', 'dc'))).not.toMatch(/stalls/)
  })
})
