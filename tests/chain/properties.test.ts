import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CheckRequest, Output } from '../../server/chain/case/request.js'
import { type CheckResponse, outcomes } from '../../server/chain/finding.js'
import { mainsTopics, type TopicName, topicNames as topics } from '../../server/chain/index.js'
import { checkSchema } from '../../server/facts/check.js'
import { mainsOf } from '../../server/tables/mains.js'
import { runs } from '../support/long.js'
import { assess } from '../support/told.js'
import { anyRequest, inputs, outputs, window } from './anyRequest.js'
import { changed, matching } from './cases.js'

const worst = (response: CheckResponse, topic: (typeof topics)[number]): number =>
  Math.min(
    ...response.findings.filter((finding) => finding.topic === topic).map(({ outcome }) => outcomes.indexOf(outcome)),
    outcomes.length,
  )

const goesOn = ({ verdict }: CheckResponse): boolean => verdict === 'take-care' || verdict === 'no-conflict-found'

describe('any check', { timeout: 60_000 }, () => {
  it('is of the shape the call takes', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        expect(checkSchema.safeParse(request).success).toBe(true)
      }),
      { numRuns: runs(200) },
    )
  })

  it('is answered, worst first, each finding with words, and an action unless it is clear', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const { findings, verdict } = assess(request)
        const ranks = findings.map(({ outcome, topic }) => outcomes.indexOf(outcome) * 100 + topics.indexOf(topic))
        expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
        expect(verdict).toBe(
          { stop: 'do-not-connect', unknown: 'find-out-first', caution: 'take-care', clear: 'no-conflict-found' }[
            findings[0]?.outcome ?? 'unknown'
          ],
        )
        for (const finding of findings) {
          expect(finding.title).not.toMatch(/[\n\r]/)
          expect(finding.title.length).toBeGreaterThan(10)
          expect(finding.why.length).toBeGreaterThan(10)
          expect(finding.sources.length).toBeGreaterThan(0)
          if (finding.outcome !== 'clear') expect(finding.action).toMatch(/\w{3}/)
        }
        expect(JSON.stringify(findings)).not.toMatch(/\bsafe(ly)?\b|NaN|Infinity|undefined|\[object/i)
      }),
      { numRuns: runs(400) },
    )
  })

  it('of nothing entered is find-out-first, whatever the place', () => {
    expect(assess({ site: {}, supply: {}, device: {} }).verdict).toBe('find-out-first')
    expect(assess({ site: { country: 'DE', socket: 'F' }, supply: {}, device: {} }).verdict).toBe('find-out-first')
  })

  it('asks for nothing under power while a stop or an open question on the mains side stands, and for no cord set in vain', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const { findings } = assess(request)
        const stands = (among: readonly TopicName[]) =>
          findings.some(({ topic, outcome }) => among.includes(topic) && (outcome === 'stop' || outcome === 'unknown'))
        const actions = findings.flatMap((finding) => finding.actions)
        if (stands(mainsTopics.map(({ name }) => name)))
          expect(actions.filter(({ power }) => power !== 'none').map((action) => action.do)).toEqual([])
        const captive = request.supply.inlet === 'captive' || request.cord?.connector === 'captive'
        if (captive || stands(['mains-voltage', 'mains-frequency', 'converter']))
          expect(
            actions.filter((action) => action.buys || /cord set/i.test(action.do)).map((action) => action.do),
          ).toEqual([])
      }),
      { numRuns: runs(200) },
    )
  })

  it('does not depend on the order of rails', () => {
    const shuffled = anyRequest.chain((request) =>
      fc.tuple(
        fc.constant(request),
        fc.shuffledSubarray(request.supply.outputs ?? [], { minLength: request.supply.outputs?.length ?? 0 }),
        fc.shuffledSubarray(request.device.inputs ?? [], { minLength: request.device.inputs?.length ?? 0 }),
      ),
    )
    fc.assert(
      fc.property(shuffled, ([request, rails, wants]) => {
        const other = {
          ...request,
          supply: { ...request.supply, outputs: request.supply.outputs && rails },
          device: { ...request.device, inputs: request.device.inputs && wants },
        }
        expect(assess(other).findings.map(({ topic, outcome }) => `${topic} ${outcome}`)).toEqual(
          assess(request).findings.map(({ topic, outcome }) => `${topic} ${outcome}`),
        )
      }),
      { numRuns: runs(200) },
    )
  })

  it('never finds output-current worse for a supply of a higher rating', () => {
    fc.assert(
      fc.property(
        anyRequest,
        outputs,
        inputs,
        fc.nat(3),
        fc.double({ min: 1, max: 10, noNaN: true }),
        (request, rails, wants, which, factor) => {
          const index = which % rails.length
          const raised = rails.map((rail, at) =>
            at === index && rail.currentA != null
              ? { ...rail, currentA: rail.currentA * factor, powerW: rail.powerW == null ? null : rail.powerW * factor }
              : rail,
          )
          const on = (list: Output[]) =>
            worst(
              assess({
                ...request,
                supply: { ...request.supply, outputs: list },
                device: { ...request.device, inputs: wants },
              }),
              'output-current',
            )
          expect(on(raised)).toBeGreaterThanOrEqual(on(rails))
        },
      ),
      { numRuns: runs(300) },
    )
  })

  it('never finds mains-voltage worse for a wider window', () => {
    fc.assert(
      fc.property(
        anyRequest,
        window,
        fc.double({ min: 1, max: 2, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (request, { min, max }, down, up) => {
          const on = (voltages: { min: number; max: number }[]) =>
            worst(
              assess({
                ...request,
                supply: {
                  ...request.supply,
                  label: null,
                  input: { ...request.supply.input, selectorV: null, voltages },
                },
              }),
              'mains-voltage',
            )
          expect(on([{ min: min / down, max: max * up }])).toBeGreaterThanOrEqual(on([{ min, max }]))
        },
      ),
      { numRuns: runs(400) },
    )
  })
})

/** Every path to a fact in a request. */
function pathsOf(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value == null ? [] : [path]
  return [
    ...(path.length > 0 ? [path] : []),
    ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key])),
  ]
}

function without(request: CheckRequest, path: readonly string[]): CheckRequest {
  const [key, ...rest] = path
  const change = (value: object, name: string, further: string[]): object => {
    const [next, ...after] = further
    const inner = (value as Record<string, unknown>)[name]
    return { ...value, [name]: next === undefined ? null : change(inner as object, next, after) }
  }
  return key === undefined ? request : (change(request, key, rest) as CheckRequest)
}

describe('taking a fact away', { timeout: 60_000 }, () => {
  /** Facts the matching case is judged without as well, each with the reason. */
  const notNeeded: Record<string, string> = {
    'supply.input.frequenciesHz': 'a switch-mode supply does not mind the frequency',
    'supply.technology': 'the frequency is on the plate',
    'supply.regulated': 'a switch-mode supply is regulated',
    'supply.protectionClass': 'the C8 inlet says class II',
    'supply.input.currentA': 'what it draws follows from its outputs',
    'device.regulatedNeeded': 'a regulated supply suits either',
    'device.inputs': 'see below: the whole list is needed',
    'site.socket': 'the plug fits every socket of the country',
    'site.country': 'see below',
    'cord.earthed': 'class II needs no earth',
    'cord.plugFitted': 'only a plug known to be fitted by hand is a caution',
  }
  const needed = pathsOf(matching).filter(
    (path) =>
      path.length > 1 && (!(path.join('.') in notNeeded) || ['device.inputs', 'site.country'].includes(path.join('.'))),
  )

  it('starts from a case without conflict', () => {
    expect(assess(matching).verdict).toBe('no-conflict-found')
    expect(needed.length).toBeGreaterThan(15)
  })

  it.each(needed.map((path) => ({ fact: path.join('.'), path })))(
    'from the matching case, $fact, is find-out-first',
    ({ path }) => {
      expect(assess(without(matching, path)).verdict).toBe('find-out-first')
    },
  )

  it.each(Object.entries(notNeeded).filter(([fact]) => !['device.inputs', 'site.country'].includes(fact)))(
    'from the matching case, %s, leaves it as it is: %s',
    (fact) => {
      expect(assess(without(matching, fact.split('.'))).verdict).toBe('no-conflict-found')
    },
  )

  /**
   * Facts that may raise a question of their own, so that without them a topic is satisfied:
   * contradictions, and statements that call for more.
   */
  const raises = [
    'supply.label',
    'device.label', // a label fills in what the fields leave open, and may contradict
    'supply.input.selectorV',
    'supply.input.voltages',
    'supply.input', // a position that is none of the plate's; a plate's other windows from the label
    'supply.input.powerVA',
    'supply.input.powerW',
    'supply.input.currentA', // more than any conductor of the tables carries
    'supply.input.frequenciesHz', // without it the home region's frequency is taken
    'supply.technology',
    'supply.regulated', // "transformer" or "unregulated" asks whether the machine minds
    'supply.measured',
    'supply.measured.offLoadV',
    'supply.measured.loadedV',
    'supply.measured.polarity', // measured beats printed
    'supply.protectionClass',
    'supply.inlet', // class I asks for every link of the earth
    'supply.outputs',
    'device.inputs',
    'supply.plug',
    'supply.plug.name',
    'supply.plug.outerMm',
    'supply.plug.innerMm',
    'device.jack',
    'device.jack.name', // fall back on the label, or on the size of the name
    'supply.lead',
    'supply.fuse',
    'converter', // without it there is nothing to judge
    'converter.kind',
    'converter.outputV',
    'converter.ratedVA',
    'cord.connector',
    'cord',
    'cord.adapter',
    'cord.adapter.earthed',
    'cord.areaMm2',
    'cord.plug',
    'cord.awg',
    'site.voltageV',
    'site.frequencyHz',
    'site.socket', // fall back on the country's
  ]

  /** A country of more than one mains raises the question which of them the socket carries. */
  const hasSeveralMains = ({ site }: CheckRequest): boolean =>
    (site?.country ? (mainsOf(site.country)?.systems.length ?? 0) : 0) > 1

  /** Not facts to leave out: a lead without a length is not described. */
  const required = ['supply.lead.lengthM']

  it('never turns a topic from unknown into clear or caution, save where the fact raised the question', () => {
    fc.assert(
      fc.property(anyRequest, fc.nat(), (request, pick) => {
        const asks = [...raises, ...required, ...(hasSeveralMains(request) ? ['site.country'] : [])]
        const paths = pathsOf(request).filter((path) => path.length > 1 && !asks.includes(path.join('.')))
        const path = paths[pick % Math.max(paths.length, 1)]
        if (!path) return
        const before = assess(request)
        const after = assess(without(request, path))
        for (const topic of topics) {
          const [was, is] = [worst(before, topic), worst(after, topic)]
          if (outcomes[was] === 'unknown')
            expect(`${path.join('.')} ${topic} ${outcomes[is]}`).not.toMatch(/clear|caution/)
        }
        if (goesOn(after) && before.verdict === 'find-out-first') throw new Error(`${path.join('.')} let it go on`)
      }),
      { numRuns: runs(600) },
    )
  })

  /**
   * Topics that a fact may clear by being left out, because the fact is itself one side of their conflict: what is left then is what it
   * overruled, or nothing that conflicts. On every other topic, and for every fact that is not named, less known is never better.
   */
  const sideOf: Record<string, readonly TopicName[]> = {
    'supply.label': topics,
    'device.label': topics,
    converter: topics,
    cord: ['socket', 'cord', 'inlet', 'earthing'],
    site: ['mains-voltage', 'mains-frequency', 'converter', 'cord', 'fuse', 'socket', 'earthing', 'output-voltage'],
    // a stated voltage that its list contradicts puts the country itself in doubt: docs/limits.md; an unregulated output follows the
    // mains, and is taken as on its plate's where that is not known, which mains-voltage then says
    'site.country': ['socket', 'earthing', 'output-voltage'],
    'supply.input': ['mains-voltage', 'mains-frequency', 'converter', 'cord', 'fuse', 'earthing', 'output-voltage'],
    'supply.outputs': [
      'output-kind',
      'output-voltage',
      'output-current',
      'lead-drop',
      'converter',
      'cord',
      'dc-plug',
      'polarity',
      // an AC output hands the machine the frequency of the mains; the label's DC output, that is left, does not
      'mains-frequency',
    ],
    'device.inputs': [
      'output-kind',
      'output-voltage',
      'output-current',
      'lead-drop',
      'dc-plug',
      'polarity',
      'mains-frequency',
    ],
    'supply.measured': ['output-voltage', 'polarity', 'lead-drop'],
    // two contacts ask which of several outputs is on them; without a plug, the plug itself is asked for
    'supply.plug': ['polarity', 'dc-plug', 'output-voltage'],
    'device.jack': ['polarity', 'dc-plug'],
    'supply.lead': ['lead-drop'],
    'supply.fuse': ['fuse'],
    'supply.protectionClass': ['earthing', 'cord', 'socket'],
    'supply.inlet': ['earthing', 'cord', 'inlet', 'socket'],
    'supply.regulated': ['output-voltage'],
    'supply.technology': ['output-voltage', 'mains-frequency', 'converter', 'cord', 'fuse'],
  }
  const mayClear = (path: readonly string[]): readonly TopicName[] =>
    sideOf[path.join('.')] ?? sideOf[path.slice(0, 2).join('.')] ?? sideOf[path[0] ?? ''] ?? []

  it('never clears a topic that was stopped or open, save one whose conflict it was part of', () => {
    fc.assert(
      fc.property(anyRequest, fc.nat(), (request, pick) => {
        const paths = pathsOf(request).filter((path) => path.length > 1 && !required.includes(path.join('.')))
        const path = paths[pick % Math.max(paths.length, 1)]
        if (!path) return
        const [before, after] = [assess(request), assess(without(request, path))]
        for (const topic of topics) {
          if (mayClear(path).includes(topic)) continue
          const [was, is] = [outcomes[worst(before, topic)], outcomes[worst(after, topic)]]
          if (was === 'stop' || was === 'unknown') expect(`${path.join('.')} ${topic} ${is}`).not.toMatch(/clear/)
        }
      }),
      { numRuns: runs(300) },
    )
  })

  /** Topics that apply because of the fact itself, and are gone with it: what is left of the case has nothing of the kind to judge. */
  const appliesBy: Record<string, readonly TopicName[]> = {
    // words on a plate are what most topics of hazards apply by, and a fuse that is prescribed
    'supply.label': topics,
    'device.label': topics,
    'supply.fuse': ['fuse'],
    'supply.lead': ['lead-drop'],
    // an output follows the mains, and is taken as on its plate's where that is not known, which mains-voltage then says
    converter: ['converter', 'isolation'],
    // a converter is judged where the mains is known to need one
    site: ['converter', 'isolation'],
    // entered against a plate that was read as one for a car: without it there is no mains side; against a plate of 100 V to 240 V:
    // without it the supply is a switch-mode one, whose output does not rise with nothing connected
    'supply.input': ['converter', 'cord', 'earthing', 'inlet', 'mains-frequency', 'socket', 'isolation'],
    // polarity and plug matter for direct current alone
    'device.inputs': ['polarity', 'dc-plug'],
    // and an output may be what is dangerous to touch
    'supply.outputs': ['polarity', 'dc-plug', 'mains-frequency', 'speed', 'isolation'],
    // a clearing or stop of its own is all there is to it
    'supply.isolated': ['isolation'],
  }
  const mayVanish = (path: readonly string[]): readonly TopicName[] =>
    appliesBy[path.join('.')] ?? appliesBy[path.slice(0, 2).join('.')] ?? appliesBy[path[0] ?? ''] ?? []

  it('never makes a topic vanish that was open, save one that applies by that fact', () => {
    fc.assert(
      fc.property(anyRequest, fc.nat(), (request, pick) => {
        const paths = pathsOf(request).filter((path) => path.length > 1 && !required.includes(path.join('.')))
        const path = paths[pick % Math.max(paths.length, 1)]
        if (!path) return
        const [before, after] = [assess(request), assess(without(request, path))]
        for (const topic of topics)
          if (outcomes[worst(before, topic)] === 'unknown' && !mayVanish(path).includes(topic))
            expect(`${path.join('.')} ${topic} ${outcomes[worst(after, topic)] ?? 'gone'}`).not.toMatch(/gone/)
      }),
      { numRuns: 300 },
    )
  })

  it('of a whole part never lets a check go on', () => {
    fc.assert(
      fc.property(fc.subarray(['supply', 'device', 'cord'] as const, { minLength: 1 }), (parts) => {
        const request = changed(Object.fromEntries(parts.map((part) => [part, part === 'cord' ? null : {}])))
        const emptied = { ...request, ...Object.fromEntries(parts.map((part) => [part, part === 'cord' ? null : {}])) }
        expect(goesOn(assess(emptied))).toBe(false)
      }),
      { numRuns: 20 },
    )
  })
})
