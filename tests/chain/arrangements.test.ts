import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answerCheck } from '../../server/chain/answer.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import type { TopicName } from '../../server/chain/index.js'
import { checkSchema } from '../../server/facts/check.js'
import { tell } from '../../server/words/tell.js'
import { assess } from '../support/told.js'
import { changed, matching } from './cases.js'

const { supply, device, cord, site } = matching
const { inlet: _inlet, ...block } = supply

/** A whole case of each arrangement, where nothing is in conflict. */
const whole = {
  'plug-in': { arrangement: 'plug-in', site, supply: block, device, cord: { plug: 'CEE 7/16' } },
  'built-in': {
    arrangement: 'built-in',
    site,
    supply: {},
    device: {
      mains: {
        input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50], currentA: 0.3 },
        technology: 'switch-mode',
        protectionClass: 'II',
        inlet: 'C8',
      },
    },
    cord,
  },
  'supply-only': { arrangement: 'supply-only', site, supply, device: {}, cord },
} satisfies Record<string, CheckRequest>

const maybe = <T>(...values: T[]) => fc.option(fc.constantFrom(...values), { nil: null, freq: 4 })

const topicsOf = (request: CheckRequest): TopicName[] => assess(request).findings.map(({ topic }) => topic)
const lowVoltage: TopicName[] = ['output-kind', 'output-voltage', 'output-current', 'polarity', 'dc-plug', 'lead-drop']

/** Facts without which each case stays as it is, each with the reason. */
const notNeeded: Record<string, string> = {
  'supply.input.frequenciesHz': 'a switch-mode supply does not mind the frequency',
  'supply.technology': 'the frequency is on the plate',
  'supply.regulated': 'a switch-mode supply is regulated',
  'supply.protectionClass': 'the C8 inlet says class II',
  'supply.input.currentA': 'what it draws follows from its outputs, and a block has no cord to carry it',
  'device.regulatedNeeded': 'a regulated supply suits either',
  'device.mains.input.frequenciesHz': 'a switch-mode supply does not mind the frequency',
  'device.mains.technology': 'the frequency is on the plate',
  'device.mains.protectionClass': 'the C8 inlet says class II',
  'site.socket': 'the plug fits every socket of the country',
  'cord.earthed': 'class II needs no earth',
  'cord.plugFitted': 'only a plug known to be fitted by hand is a caution',
}

const pathsOf = (value: unknown, path: string[] = []): string[][] =>
  typeof value !== 'object' || value === null || Array.isArray(value)
    ? [path]
    : Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key]))

const without = (request: CheckRequest, path: readonly string[]): CheckRequest => {
  const copy = structuredClone(request)
  const inner = path
    .slice(0, -1)
    .reduce((from, key) => from[key] as Record<string, unknown>, copy as unknown as Record<string, unknown>)
  inner[path.at(-1) ?? ''] = null
  return copy
}

describe.each(Object.entries(whole))('a whole case of %s', (arrangement, request) => {
  it('is without conflict', () => {
    expect(assess(request).findings.filter(({ outcome }) => outcome !== 'clear')).toEqual([])
    expect(assess(request).verdict).toBe('no-conflict-found')
  })

  const plugInClass = arrangement === 'plug-in' ? ['supply.protectionClass'] : []
  const needed = pathsOf(request)
    .map((path) => path.join('.'))
    .filter((path) => path.includes('.') && (!(path in notNeeded) || plugInClass.includes(path)))

  it.each(needed)('is find-out-first without %s', (path) => {
    expect(assess(without(request, path.split('.'))).verdict).toBe('find-out-first')
  })

  it('asks for nothing that it has not', () => {
    const names = topicsOf(request)
    if (arrangement === 'built-in') expect(names.filter((name) => lowVoltage.includes(name))).toEqual([])
    if (arrangement === 'plug-in') expect(names.filter((name) => name === 'cord' || name === 'inlet')).toEqual([])
  })
})

describe('a machine with its supply inside', () => {
  const builtIn = (label: string, more: Partial<CheckRequest> = {}): CheckRequest => ({
    arrangement: 'built-in',
    site: { country: 'DE', socket: 'F' },
    supply: {},
    device: { label },
    ...more,
  })

  it('meets 230 V with a plate of 120 V: stop, and no other supply is advised', () => {
    const { findings, verdict } = assess(builtIn('120V 60Hz 40W'))
    expect(verdict).toBe('do-not-connect')
    const [voltage] = findings
    expect(voltage).toMatchObject({ topic: 'mains-voltage', outcome: 'stop' })
    expect(voltage?.action).toMatch(/converter with an output of 120\u00a0V/)
    expect(JSON.stringify(findings)).not.toMatch(/use a supply|another supply|made for this mains, which/i)
  })

  it('turns slowly where a synchronous motor for 60 Hz gets 50 Hz: 50 / 60 = 0.833, 3.16 semitones flat', () => {
    const { findings } = assess({
      ...builtIn('230V 60Hz 40W'),
      device: { label: '230V 60Hz 40W', mains: { motor: 'synchronous' } },
    })
    const speed = findings.find(({ topic }) => topic === 'speed')
    expect(speed?.outcome).toBe('caution')
    expect(JSON.stringify(speed)).toMatch(/0\.833.*−3\.16/s)
  })

  it('has something to set where such a motor stands on a plate for 50 and 60 Hz, and nothing where the motor is for DC', () => {
    const speedOf = (motor: 'induction' | 'dc') =>
      assess({ ...builtIn(''), device: { label: '230V 50/60Hz 40W', mains: { motor } } }).findings.filter(
        ({ topic }) => topic === 'speed',
      )
    expect(speedOf('induction')).toMatchObject([{ outcome: 'caution' }])
    expect(speedOf('dc')).toEqual([])
  })

  it('makes no output of the battery line on its plate', () => {
    expect(topicsOf(builtIn('220V~ 50Hz 12W\nDC 9V ⎓ 6xR20')).filter((name) => lowVoltage.includes(name))).toEqual([])
  })

  it('keeps what its plate says in words: a short time of use, phrases that were not read', () => {
    const said = assess(builtIn('230V~ 50Hz 200W KB 5 min')).findings.find(({ topic }) => topic === 'hazard-words')
    expect(said).toMatchObject({ outcome: 'caution' })
    expect(said?.title).toMatch(/^The machine’s plate/)
  })

  it('is judged by the entry where that is against its plate, which is told', () => {
    const entered = assess(
      builtIn('230V 50Hz 40W', {
        device: { label: '120V 60Hz 40W', mains: { input: { voltages: [{ min: 230, max: 230 }] } } },
      }),
    ).findings.find(({ topic }) => topic === 'mains-voltage')
    expect(entered?.title).toMatch(/120\u00a0V, 230\u00a0V was entered/)
  })
})

describe('a supply alone', () => {
  const alone = (change: Parameters<typeof changed>[0]): CheckRequest => changed(change, whole['supply-only'])
  const outcomeOf = (request: CheckRequest, topic: TopicName) =>
    assess(request).findings.find((finding) => finding.topic === topic)?.outcome

  // 12 V ± 5 %: 12.6 V; ± 10 %: 13.2 V
  it.each([
    [12.5, 'clear'],
    [13.1, 'caution'],
    [13.3, 'stop'],
    [10.7, 'stop'],
  ])('regulated at 12 V and measured at %d V is %s', (offLoadV, outcome) => {
    expect(outcomeOf(alone({ supply: { measured: { offLoadV } } }), 'output-voltage')).toBe(outcome)
  })

  it('unregulated is told with what it stands at: care with its current known, unknown without', () => {
    const unregulated = { technology: 'transformer' as const, regulated: false }
    expect(outcomeOf(alone({ supply: unregulated }), 'output-voltage')).toBe('caution')
    const noCurrent = alone({ supply: { ...unregulated, outputs: [{ kind: 'dc', voltageV: 12 }] } })
    expect(outcomeOf(noCurrent, 'output-voltage')).toBe('unknown')
    // no unregulated unit of 12 V stands at 40 V
    expect(outcomeOf(alone({ supply: { ...unregulated, measured: { offLoadV: 40 } } }), 'output-voltage')).toBe('stop')
  })

  it('whose plug measures otherwise than printed is a stop, and unknown where neither is', () => {
    expect(outcomeOf(alone({ supply: { measured: { polarity: 'centre-negative' } } }), 'polarity')).toBe('stop')
    expect(outcomeOf(alone({ supply: { plug: { polarity: null } } }), 'polarity')).toBe('unknown')
  })

  it('says what it could feed', () => {
    const titles = assess(whole['supply-only']).findings.map(({ title }) => title.replaceAll('\u00a0', ' '))
    // 12 / 1.05 = 11.43, up; 12 / 0.95 = 12.63, down
    expect(titles).toContain('By its plate the supply feeds a machine for 11.5 V to 12.6 V DC')
    expect(titles).toContain('The supply’s 12 V DC feeds a machine that takes up to 2 A')
  })
})

describe('a machine alone', () => {
  const alone: CheckRequest = { arrangement: 'machine-only', site, supply: {}, device }

  it('is never better than find-out-first, says what to look for, and asks nothing of the mains', () => {
    const { verdict, findings } = assess(alone)
    expect(verdict).toBe('find-out-first')
    expect(findings.filter(({ outcome }) => outcome === 'unknown').map(({ topic }) => topic)).toEqual([
      'output-voltage',
    ])
    expect(findings[0]?.action?.replaceAll('\u00a0', ' ')).toMatch(
      /regulated supply of 12 V DC 1 A.*“power supply 12 V DC 1 A”, “5.5 x 2.1 mm”/,
    )
    expect(findings.map(({ topic }) => topic)).not.toContain('mains-voltage')
  })

  it('wants a quarter more than a measured current', () => {
    const measured = changed(
      { device: { inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'measured' }] } },
      alone,
    )
    expect(assess(measured).findings[0]?.action?.replaceAll('\u00a0', ' ')).toMatch(/12 V DC 1\.3 A/)
  })

  it('whose plate names the mains is sent to the arrangement that it is', () => {
    const { findings } = assess({ ...alone, device: { label: '230V~ 50Hz 40W' } })
    expect(findings).toMatchObject([{ topic: 'output-voltage', outcome: 'unknown' }])
    expect(findings[0]?.action).toMatch(/supply inside/)
  })
})

it('a request without an arrangement is a separate supply, or a block by the pins on it', () => {
  const { arrangement: _, ...stated } = whole['plug-in']
  expect(topicsOf({ ...stated, supply: { ...block, inlet: 'plug-in' } })).toEqual(topicsOf(whole['plug-in']))
  expect(topicsOf(matching)).toContain('inlet')
  expect(assess({ ...matching, arrangement: 'separate' })).toEqual(assess(matching))
})

/** Machines with their supply inside, some of whose facts are entered, some printed, some not known. */
const anyBuiltIn: fc.Arbitrary<CheckRequest> = fc.record({
  arrangement: fc.constant('built-in' as const),
  site: fc.record({
    country: maybe('DE', 'US', 'JP', 'GB', 'SA'),
    socket: maybe('F', 'A', 'B', 'G'),
    source: maybe('wall', 'two-live', 'generator', 'inverter-stepped', 'shaver-outlet', 'site-transformer'),
  }),
  supply: fc.constant({}),
  device: fc.record({
    label: maybe(
      '220-240V~ 50Hz 40W',
      '115/230V~ 50/60Hz 6/3A',
      'VOLTS 115 CYCLES 60 AMPS 1.5',
      '230V~ 50Hz 200W KB 5 min',
      'DC 12V 1A',
    ),
    mains: fc.record({
      input: fc.record({
        voltages: maybe([{ min: 230, max: 230 }], [{ min: 120, max: 120 }], [{ min: 100, max: 240 }]),
        frequenciesHz: maybe([50], [60], [50, 60]),
        currentA: maybe(0.3, 4),
        selectorV: maybe(115, 230),
      }),
      technology: maybe('switch-mode' as const, 'transformer' as const),
      protectionClass: maybe('I' as const, 'II' as const),
      inlet: maybe('C14', 'C8', 'captive'),
      fuse: maybe('T2AL250V', 'F2A'),
      motor: maybe('synchronous' as const, 'induction' as const, 'dc' as const),
    }),
  }),
  cord: fc.record({
    plug: maybe('CEE 7/7', 'CEE 7/16', 'NEMA 5-15', 'NEMA 6-15'),
    connector: maybe('C13', 'C7'),
    ratedV: maybe(250, 125),
    ratedA: maybe(10, 2.5),
    earthed: maybe(true, false),
  }),
})

describe('any machine with its supply inside', { timeout: 60_000 }, () => {
  it('is answered without an output, each finding with words and an action, and never called safe', () => {
    fc.assert(
      fc.property(anyBuiltIn, (request) => {
        expect(checkSchema.safeParse(request).success).toBe(true)
        const { findings } = assess(request)
        for (const { topic, outcome, title, action } of findings) {
          expect(lowVoltage).not.toContain(topic)
          expect(title.length).toBeGreaterThan(10)
          if (outcome !== 'clear') expect(action).toMatch(/\w{3}/)
        }
        expect(JSON.stringify(findings)).not.toMatch(/\bsafe(ly)?\b|NaN|Infinity|undefined|\[object/i)
        // what a hazard word asks for is told as it stands in its table
        const ofMains = findings.filter(({ topic }) => topic !== 'hazard-words' && topic !== 'isolation')
        expect(JSON.stringify(ofMains)).not.toMatch(/use a supply/i)
      }),
      { numRuns: 200 },
    )
  })

  /** Facts that raise a question or a conflict of their own, or that say otherwise than the plate. */
  const raises =
    /^device\.label$|^device\.mains\.(?:input|technology|protectionClass|inlet|fuse|motor)|^site\.(?:socket|source)$|^cord\.(?:connector|plug|earthed)$/

  it('goes on with no fact taken away that was not settled without it', () => {
    fc.assert(
      fc.property(anyBuiltIn, fc.nat(), (request, pick) => {
        const paths = pathsOf(request).filter((path) => path.length > 1 && !raises.test(path.join('.')))
        const path = paths[pick % Math.max(paths.length, 1)]
        if (!path || assess(request).verdict !== 'find-out-first') return
        expect(['find-out-first', 'do-not-connect'], path.join('.')).toContain(assess(without(request, path)).verdict)
      }),
      { numRuns: 300 },
    )
  })
})

describe('the next question of an arrangement', () => {
  const nextOf = (request: CheckRequest) => tell(answerCheck(request))

  it('of a machine with its supply inside is asked at the machine’s own mains side', () => {
    const { next, links } = nextOf({
      arrangement: 'built-in',
      site,
      supply: {},
      device: { label: '230V 50Hz 40W' },
      cord,
    })
    const facts = next.flatMap(({ fact }) => fact ?? [])
    expect(facts).toContain('device.mains.inlet')
    expect(facts.filter((fact) => fact.startsWith('supply.'))).toEqual([])
    expect(links.map(({ link }) => link)).toEqual(['source', 'socket', 'cord', 'inlet', 'fuse', 'machine'])
  })

  it('of a supply alone asks nothing of a machine, of a machine alone nothing of a supply', () => {
    const ofSupply = nextOf({ arrangement: 'supply-only', site: {}, supply: {}, device: {} })
    const ofMachine = nextOf({ arrangement: 'machine-only', site: {}, supply: {}, device: {} })
    expect(ofSupply.next.filter(({ fact }) => fact?.startsWith('device.'))).toEqual([])
    expect(ofMachine.next.filter(({ fact }) => fact && !/^(device|site)\./.test(fact))).toEqual([])
    expect(ofMachine.links.map(({ link }) => link)).toEqual(['jack', 'machine'])
    expect(ofSupply.links.map(({ link }) => link)).not.toContain('machine')
  })
})
