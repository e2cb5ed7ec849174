import { describe, expect, it } from 'vitest'
import { assessCase } from '../../server/chain/assess.js'
import { prepareCase } from '../../server/chain/case/case.js'
import { assess, planFirstPower } from '../support/told.js'
import { changed } from './cases.js'

const withOutput = (kind: 'dc' | 'ac', voltageV: number) =>
  changed({
    supply: { label: null, outputs: [{ kind, voltageV, currentA: 0.5 }] },
    device: { label: null, inputs: [{ kind, voltageV, currentA: 0.1 }] },
  })

const outcome = (check: Parameters<typeof assess>[0]) =>
  assess(check).findings.find(({ topic }) => topic === 'isolation')?.outcome

describe('an output that is dangerous to touch', () => {
  // IEC 60950-1 has 60 V d.c. as the end of safety extra-low voltage, IEC 60364-4-41 50 V a.c. as the touch voltage limit
  it.each([
    ['dc', 60, undefined],
    ['dc', 60.5, 'unknown'],
    ['dc', -300, 'unknown'],
    ['ac', 50, undefined],
    ['ac', 51, 'unknown'],
  ] as const)('%s %d V: %s', (kind, voltageV, expected) => {
    expect(outcome(withOutput(kind, voltageV))).toBe(expected)
  })

  it('is planned with no stage that puts it on the mains', () => {
    const of = prepareCase(withOutput('dc', 300))
    const { stages } = planFirstPower(of, assessCase(of), {})
    expect(stages.find(({ name }) => name === 'supply-alone')?.steps).toEqual([])
    expect(stages.flatMap(({ steps }) => steps).filter(({ power }) => power === 'mains')).toEqual([])
  })
})

describe('isolation as it was entered', () => {
  const inside = (isolated: boolean | null) => ({
    arrangement: 'built-in' as const,
    site: { country: 'DE', socket: 'F' },
    supply: { isolated },
    device: { label: '230V~ 50Hz 40W', mains: { inlet: 'C8', protectionClass: 'II' as const } },
    cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false },
  })
  const separate = (isolated: boolean | null) => changed({ supply: { isolated } })

  // a chassis joined to the mains is a stop, printed or entered, whether the supply stands apart or inside
  it.each([
    [false, 'stop'],
    [true, 'clear'],
    [null, undefined],
  ] as const)('isolated: %s is %s', (isolated, expected) => {
    expect(outcome(separate(isolated))).toBe(expected)
    expect(outcome(inside(isolated))).toBe(expected)
  })

  it('of a machine with its supply inside speaks of its chassis, and puts it on no mains', () => {
    const { findings } = assess(inside(false))
    expect(findings[0]).toMatchObject({
      topic: 'isolation',
      title: expect.stringMatching(/machine’s chassis is not isolated/),
    })
    const of = prepareCase(inside(false))
    const { stages } = planFirstPower(of, assessCase(of), {})
    expect(stages.flatMap(({ steps }) => steps)).toEqual([])
    expect(stages[0]?.leftOut).toMatch(/chassis/)
  })
})

describe('a set for mains of either kind', () => {
  const builtIn = (label: string) => ({
    arrangement: 'built-in' as const,
    site: { country: 'DE', socket: 'F' },
    supply: {},
    device: { label, mains: { inlet: 'C8' } },
    cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false },
  })

  it.each(['230V AC/DC 40W', '220V GW/WS 40W', '220V≂ 40W', 'AC-DC 220V 40W', '220V~/= 40W'])(
    '%s: what isolates it is not known',
    (label) => {
      expect(outcome(builtIn(label))).toBe('unknown')
    },
  )

  it.each(['230V~ 50Hz 40W', '230V AC 40W'])('%s is none', (label) => {
    expect(outcome(builtIn(label))).toBeUndefined()
  })

  it('is none where only the name of the thing says AC/DC', () => {
    const label = 'AC/DC ADAPTER INPUT 100-240V~ 50/60Hz 0.5A OUTPUT 12V DC 2A'
    expect(outcome(changed({ supply: { label, input: null, outputs: null, technology: null } }))).toBeUndefined()
  })
})
