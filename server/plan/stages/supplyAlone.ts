import type { Finding, TopicName } from '../../chain/finding.js'
import { mainsTopics } from '../../chain/index.js'
import { flashOver, reservoirPerWatt, resultsFromMeter, settleTimes } from '../../tables/firstPower.js'
import { variableTransformerRows } from '../../tables/variableTransformer.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { amperes, farads, volts, watts } from '../../words/quantity.js'
import type { LampTransient } from '../firstPower/transient.js'
import type { Figure, FirstPowerStage } from '../firstPowerPlan.js'
import { type BehindLamp, firstSeconds, idleBehind, lampText, onLamps, reservoirOf } from './behindLamp.js'
import { type LampUse, type PlanFacts, standing } from './facts.js'
import type { RailPlan } from './rails.js'
import { figure } from './step.js'
import { supplyAloneSteps } from './supplyAloneSteps.js'
import { variableTransformer } from './variableTransformer.js'

/** Every topic between the wall and the supply: each must be known, and none may stop. */
const onMainsSide: readonly TopicName[] = mainsTopics.map(({ name }) => name)

/** "Stop: …. What to do. Find out first: …." */
export const because = (findings: readonly Finding[]): Phrase =>
  joined(
    findings.map(
      ({ outcome, title, action }) =>
        say`${outcome === 'stop' ? say`Stop` : say`Find out first`}: ${title}.${action ? say` ${action}` : say``}`,
    ),
  )

/** The findings that keep the supply off the mains: the stops, and what must be known first only where nothing stops. */
function keptOff(facts: PlanFacts): Finding[] {
  const stops = standing(facts, onMainsSide, false)
  return stops.length > 0 ? stops : standing(facts, onMainsSide, true)
}

/** The same reason for a later stage, in short: the first stage says what to do. */
export function mainsBlockedToo(facts: PlanFacts): Phrase | null {
  const whole = mainsBlocked(facts)
  const found = keptOff(facts)
  if (whole === null || found.length === 0) return whole
  return say`Waits for the first stage: ${joined(
    found.map(({ title }) => title),
    say`; `,
  )}.`
}

/** Why the supply must not meet this mains yet, with what must change first; null where it may, behind the lamp. */
export function mainsBlocked(facts: PlanFacts): Phrase | null {
  const { called, input } = facts.supply
  const { windows } = input
  if (facts.fedLow)
    return say`This ${called} is fed with a low DC voltage, not from the mains: the lamp has no place in front of it. Feed it from a current-limited bench supply.`
  const found = keptOff(facts)
  if (found.length > 0) return say`The ${called} does not meet the mains as things stand. ${because(found)}`
  if (facts.noSupply) return facts.noSupply
  if (windows.length === 0)
    return say`The input voltage of the ${called} is not known: read its plate before it meets any mains. A lamp does not make a wrong voltage right.`
  if (!facts.reach) return say`The mains at the place is not known as one voltage and one frequency: have it measured.`
  if (facts.options.lampsOnHand?.length && facts.choice && !facts.firstLamp)
    return say`None of the lamps entered serves on ${volts(facts.reach.voltageV)}: one for a lower voltage burns out or bursts when the ${called} is a short, one for a higher voltage hides what it should show. Get a lamp rated for this mains, or two equal ones in series that make it up.`
  return null
}

/** Stage 1: the supply alone behind the series lamp. */
export function supplyAlone(facts: PlanFacts, rails: readonly RailPlan[]): FirstPowerStage {
  const leftOut = mainsBlocked(facts)
  const lamp = facts.firstLamp
  const idle = lamp ? idleBehind(facts, lamp) : null
  const transient = leftOut === null && lamp ? firstSeconds(facts, lamp) : null
  return {
    name: 'supply-alone',
    title: say`The supply alone, behind the lamp`,
    leftOut,
    waits: null,
    figures: leftOut === null ? lampFigures(facts, lamp, idle, transient) : [],
    steps: leftOut === null ? supplyAloneSteps(facts, rails, lamp, idle, transient?.seen ?? null) : [],
    sources:
      leftOut === null
        ? [
            ...new Set([
              ...(idle?.answer.sources ?? facts.choice?.sources ?? []),
              ...(facts.rated?.sources ?? []),
              ...(facts.idle?.sources ?? []),
              ...(transient && reservoirOf(facts)?.estimated ? [reservoirPerWatt.source] : []),
              flashOver.source,
              resultsFromMeter,
              settleTimes.source,
              ...variableTransformerRows.flatMap(({ sources }) => sources),
            ]),
          ]
        : [],
  }
}

function lampFigures(
  facts: PlanFacts,
  lamp: LampUse | null,
  idle: BehindLamp | null,
  transient: LampTransient | null,
): Figure[] {
  const { rated, reach, choice } = facts
  const figures: Figure[] = []
  if (reach)
    figures.push(
      figure(
        say`Mains at the supply`,
        say`${volts(reach.voltageV)}`,
        reach.through === 'converter'
          ? say`the output of the converter; the lamp stands behind it`
          : say`the mains of the place`,
      ),
    )
  if (rated) figures.push(figure(say`Taken at full load, at most`, watts(rated.powerW, 3, 'up'), rated.working))
  if (facts.idle)
    figures.push(figure(say`Taken with nothing connected`, watts(facts.idle.powerW, 3), facts.idle.working))
  if (!lamp) {
    const [first] = choice?.order ?? []
    if (first) figures.push(figure(say`Lamp to look for`, lampText(first), first.reason))
    return [...figures, ...variableTransformer(facts)]
  }
  figures.push(
    figure(
      say`Lamp to use first`,
      lampText(lamp),
      choice?.order[0]?.reason ??
        say`the one that passes most; whether the supply starts behind it cannot be relied on`,
    ),
  )
  if (!idle) return [...figures, ...variableTransformer(facts)]
  figures.push(
    figure(
      say`Most that flows into a dead short`,
      amperes(idle.answer.shortA, 3),
      say`the whole mains on the lamp, filament hot`,
    ),
  )
  figures.push(
    figure(
      say`Across the lamp, nothing connected to the supply`,
      onLamps(idle, say`starved: it tries and drops out`),
      idle.working,
    ),
  )
  const reservoir = reservoirOf(facts)
  if (transient && reservoir)
    figures.push(
      figure(
        say`The first two seconds`,
        transient.seen,
        say`${farads(reservoir.bulkF, 3)}${reservoir.estimated ? say` (project estimate from its rating)` : say``} charged through the lamp, largest current ${amperes(transient.peakA, 3)}`,
      ),
    )
  return [...figures, ...variableTransformer(facts)]
}
