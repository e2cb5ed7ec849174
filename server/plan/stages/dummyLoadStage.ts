import type { DummyLoadPoint } from '../../physics/dummyLoad.js'
import { loadPoints, unregulatedBand } from '../../tables/dummyLoad.js'
import { settleTimes } from '../../tables/firstPower.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { duration, ohms, percent, plain, volts, watts } from '../../words/quantity.js'
import type { Figure, FirstPowerStage, Step } from '../firstPowerPlan.js'
import { type BehindLamp, behindLamp, lampText } from './behindLamp.js'
import { hotLoad, noIsolation, storedCharge, withoutLamp } from './cautions.js'
import type { PlanFacts } from './facts.js'
import { sourceStep } from './fedBy.js'
import { outletOf } from './outlet.js'
import type { RailPlan } from './rails.js'
import { figure, step } from './step.js'
import { mainsBlockedToo } from './supplyAlone.js'

interface Loaded {
  plan: RailPlan
  number: number
  points: DummyLoadPoint[]
}

/** Stage 2: the supply into a dummy load, a tenth, a half, the whole of its current. */
export function dummyLoadStage(facts: PlanFacts, rails: readonly RailPlan[]): FirstPowerStage {
  const loaded = rails.flatMap((plan, index): Loaded[] =>
    plan.load ? [{ plan, number: index + 1, points: plan.load.points }] : [],
  )
  for (const [index, plan] of rails.entries())
    if (!plan.load)
      facts.missing.push(
        say`Rated current of output ${index + 1} (${volts(plan.rail.voltageV)}): its dummy load hangs on it.`,
      )
  if (rails.length === 0)
    facts.missing.push(
      say`Output voltages and currents of the supply: what to read and what to load it with hang on them.`,
    )
  const leftOut =
    mainsBlockedToo(facts) ??
    (loaded.length === 0
      ? say`The supply’s outputs with their currents are not known: read its plate, then a load can be worked out.`
      : null)
  return {
    name: 'dummy-load',
    title: say`The supply into a dummy load`,
    leftOut,
    waits: null,
    figures: leftOut === null ? figures(facts, loaded) : [],
    steps: leftOut === null ? steps(facts, loaded) : [],
    sources:
      leftOut === null
        ? [...new Set([...loaded.flatMap(({ plan }) => plan.load?.sources ?? []), settleTimes.source])]
        : [],
  }
}

/** The supply behind the lamp for a load at a share of its rating; null where that cannot be told. */
function atShare(facts: PlanFacts, share: number): BehindLamp | null {
  if (!facts.loadLamp || !facts.rated || !facts.idle) return null
  return behindLamp(facts, facts.loadLamp, Math.max(share * facts.rated.powerW, facts.idle.powerW))
}

/** A transformer where the lamp leaves it all but half of the band; a converter where it is sure to start. */
const runsBehind = (facts: PlanFacts, found: BehindLamp | null): boolean =>
  found !== null &&
  (facts.technology === 'transformer'
    ? (found.loadV ?? 0) >= (1 - unregulatedBand.tolerance / 2) * (facts.reach?.voltageV ?? 0)
    : found.starts === true)

const resistor = (point: DummyLoadPoint): Phrase =>
  say`${ohms(point.standardOhm)}, ${point.ratedW === null ? say`${watts(2 * point.powerW, 2, 'up')} or more, shared among several` : watts(point.ratedW)}`

function figures(facts: PlanFacts, loaded: readonly Loaded[]): Figure[] {
  return [
    ...loaded.flatMap(({ plan, number, points }) =>
      points.map((point, index) => {
        const lines = plan.load?.working.slice(3 * index, 3 * index + 2) ?? []
        return figure(
          say`Output ${number}, ${volts(plan.rail.voltageV)}, ${percent(point.fraction)} load`,
          resistor(point),
          say`${joined(lines, say`; `)}${point.tooHotAfterS === null ? say`` : say`; too hot to touch after about ${duration(point.tooHotAfterS, 1)} (project estimate)`}`,
        )
      }),
    ),
    ...loadPoints.fractions.flatMap((share) => {
      const found = atShare(facts, share)
      return found
        ? [
            figure(
              say`Behind ${lampText(facts.loadLamp)}, at ${percent(share)}`,
              runsBehind(facts, found)
                ? say`${volts(found.loadV ?? 0, 3, 'down')} for the supply`
                : say`the lamp would starve it`,
              found.working,
            ),
          ]
        : []
    }),
  ]
}

function steps(facts: PlanFacts, loaded: readonly Loaded[]): Step[] {
  const several = loaded.length > 1
  return [
    step(
      'dummy-load.unplugged',
      say`Supply unplugged and its output fallen to nothing before anything is connected to it.`,
      { caution: storedCharge },
    ),
    step(
      'dummy-load.meter',
      say`Plug out: meter on volts as the output gives them, range above ${volts(Math.max(...loaded.map(({ plan }) => Math.abs(plan.rail.voltageV))))}, leads at the load, to stay.`,
      {
        expect: say`clipped on, touching nothing else`,
        stopIf: say`a lead could slip and bridge two contacts`,
      },
    ),
    ...sourceStep('dummy-load', facts),
    ...loadPoints.fractions.flatMap((share, index) => pointSteps(facts, loaded, share, index, several)),
    step(
      'dummy-load.off',
      say`Switch off, unplug, wait until the output has fallen, then take the load off when it has cooled.`,
    ),
  ]
}

function pointSteps(
  facts: PlanFacts,
  loaded: readonly Loaded[],
  share: number,
  index: number,
  several: boolean,
): Step[] {
  const name = Math.round(share * 100)
  const lamp = runsBehind(facts, atShare(facts, share))
  const last = share === loadPoints.fractions.at(-1)
  const list = loaded
    .map(({ plan, points }) => ({ plan, point: points[index] }))
    .filter((entry): entry is { plan: RailPlan; point: DummyLoadPoint } => entry.point !== undefined)
  const [first] = list
  if (!first) return []
  const direct = !lamp && facts.loadLamp !== null
  const after = index === 0 ? '' : say`Switch off and unplug. `
  const fit = several
    ? say`${after}Put on, all outputs together: ${joined(
        list.map(({ plan, point }) => say`${volts(plan.rail.voltageV)}: ${resistor(point)}`),
        say`; `,
      )}.`
    : say`${after}Across ${first.plan.name}, put ${resistor(first.point)}.`
  return [
    step(`dummy-load.fit-${name}`, fit, {
      expect: say`${percent(share)} load`,
      caution: index === 0 ? hotLoad : null,
      ...(direct ? { lampOut: true } : {}),
    }),
    !direct
      ? step(
          `dummy-load.on-${name}`,
          say`At ${percent(share)} load, hands off: switch on behind ${lampText(facts.loadLamp)}.`,
          {
            expect: say`a flash, then darker; the output comes up`,
            stopIf: say`the lamp stays bright, or flashes again and again`,
            power: 'mains',
            // said once: the next points follow without a change of circuit
            caution: index === 0 ? noIsolation : null,
          },
        )
      : step(
          `dummy-load.on-${name}`,
          say`Take the lamp out of the circuit, plug the supply into ${outletOf(facts.reach?.through ?? null)}, switch on at ${percent(share)} load, hands off.`,
          {
            expect: say`the output comes up; behind the lamp it could not`,
            stopIf: say`hum, smell, smoke, or a protective device opens: unplug`,
            power: 'mains',
            caution: withoutLamp,
          },
        ),
    ...loaded.flatMap(({ plan, number, points }) => {
      const point = points[index]
      return point
        ? [
            step(
              `dummy-load.rail-${number}-at-${name}`,
              say`Read ${plan.name}, across its ${percent(share)} load, after ${duration(last ? settleTimes.loadS : settleTimes.aloneS)}.`,
              {
                expect: say`${volts(point.lowV, 4)} to ${volts(point.highV, 4)}`,
                unit: 'V',
                low: point.lowV,
                high: point.highV,
                stopIf: outsideMeans(plan),
                power: 'mains',
              },
            ),
            ...(last && plan.load?.rippleV != null && !plan.unregulated ? [rippleStep(plan, number)] : []),
          ]
        : []
    }),
  ]
}

function outsideMeans({ unregulated, known }: RailPlan): Phrase {
  if (unregulated) return say`it lies outside, or falls while you watch`
  return known
    ? say`it lies outside: no machine on this supply`
    : say`it lies outside: it is unregulated or has a fault, and no machine that needs a steady voltage goes on it`
}

const rippleStep = (plan: RailPlan, number: number): Step =>
  step(
    `dummy-load.ripple-${number}`,
    say`Read the ripple of ${plan.name}, peak to peak, with an oscilloscope at the connector.`,
    {
      expect: say`at most ${plain((plan.load?.rippleV ?? 0) * 1e3, 'mV')}, in 20\u00a0MHz`,
      unit: 'V',
      low: 0,
      high: plan.load?.rippleV ?? null,
      stopIf: say`it is more: a dry capacitor, or one open diode`,
      power: 'mains',
    },
  )
