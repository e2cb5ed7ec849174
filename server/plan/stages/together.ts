import type { DeviceRail } from '../../chain/case/situation.js'
import type { TopicName } from '../../chain/finding.js'
import { pairTopics } from '../../chain/index.js'
import { inputFromOutputW } from '../../physics/apparentPower.js'
import { flashOver, settleTimes } from '../../tables/firstPower.js'
import { standardWattages } from '../../tables/lamps.js'
import { lampMargin } from '../../tables/seriesLamp.js'
import { supplyEfficiency, voltageStopBelow } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { duration, volts, watts } from '../../words/quantity.js'
import { acrossCapacitors } from '../acrossCapacitors.js'
import type { Figure, FirstPowerStage, Step } from '../firstPowerPlan.js'
import { type BehindLamp, behindLamp, lampBand, lampText, onLamps, seenAs } from './behindLamp.js'
import { readsShort } from './benchStage.js'
import { noIsolation, oldBatteries, reversed, storedCharge } from './cautions.js'
import { type PlanFacts, standing } from './facts.js'
import { sourceStep } from './fedBy.js'
import { meterOnLamp } from './meterOnLamp.js'
import { markedUnfit, says, unfit } from './noSupply.js'
import { type RailPlan, toleranceOf } from './rails.js'
import { beforeReach, figure, stepOn } from './step.js'
import { because, mainsBlockedToo } from './supplyAlone.js'

const step = stepOn('machine')

/** What must be known before the two are joined; of the rest none may stop. */
const mustFit: readonly TopicName[] = [
  'isolation',
  'charging',
  'hazard-words',
  'output-kind',
  'output-voltage',
  'polarity',
]
/** Every other topic between the supply and the machine. */
const mustNotStop = pairTopics.map(({ name }) => name).filter((name) => !mustFit.includes(name))

/** What the machine makes the supply take from the mains, by its own plate; null where it does not say [W]. */
export function demand(facts: PlanFacts): { powerW: number; working: Phrase } | null {
  const { rails } = facts.device
  if (rails.length === 0 || rails.some(({ currentA }) => currentA === null)) return null
  const outputW = rails.reduce((sum, rail) => sum + Math.abs(rail.voltageV) * (rail.currentA ?? 0), 0)
  if (!(outputW > 0)) return null
  const powerW = inputFromOutputW(outputW, supplyEfficiency.value)
  return {
    powerW,
    working: say`the machine’s ${watts(outputW)} / ${supplyEfficiency.value} = ${watts(powerW)} from the mains`,
  }
}

function whyNot(facts: PlanFacts, found: BehindLamp | null): Phrase | null {
  const blocked = mainsBlockedToo(facts)
  if (blocked !== null) return blocked
  if (says(facts.device, unfit)) return markedUnfit
  const open = [...standing(facts, mustFit, true), ...standing(facts, mustNotStop, false)]
  if (open.length > 0) return say`Supply and machine are not joined as things stand. ${because(open)}`
  if (facts.device.rails.length === 0) return say`What the machine wants is not known: nothing is joined before that.`
  return readsShort(facts) ?? tooMuchForLamp(facts, found)
}

/** Why a machine is not joined behind this lamp: it would be starved, or left with less than it runs on. Says which lamp would do. */
function tooMuchForLamp({ loadLamp, reach, technology }: PlanFacts, found: BehindLamp | null): Phrase | null {
  if (!loadLamp || !reach || !found) return null
  if (technology === 'transformer') {
    if ((found.loadV ?? 0) >= voltageStopBelow.value * reach.voltageV) return null
    return say`The machine is not joined behind ${lampText(loadLamp)}: it would leave the supply ${volts(found.loadV ?? 0, 3, 'down')} of ${volts(reach.voltageV)}, on which motors and relays hang and heat. ${otherWay}`
  }
  if (found.lampV !== null) return null
  const ceilingW = found.answer.largestRectifierPowerW
  const neededW = (found.powerW * lampMargin.value * loadLamp.ratedW * loadLamp.count) / ceilingW
  return say`The machine is not joined behind ${lampText(loadLamp)}: with its supply it takes up to ${watts(found.powerW, 3, 'up')}, and these pass ${watts(ceilingW, 3, 'down')} at most. Lamps of ${watts(neededW, 2, 'up')} together would carry it with a quarter to spare${
    neededW > largestLampsW
      ? say`, more than two lamps of the largest size sold for homes: a lamp is then a first look at the supply alone`
      : say``
  }. ${otherWay}`
}

const largestLampsW = 2 * Math.max(...standardWattages.watts)

const otherWay = say`Or go another way: the supply proved on a dummy load and the machine alone on a current-limited bench supply, and what is left to a qualified person.`

/** Stage 4: supply and machine together behind the lamp. */
export function together(facts: PlanFacts, rails: readonly RailPlan[]): FirstPowerStage {
  const need = demand(facts)
  const lamp = facts.loadLamp
  const found = lamp && need ? behindLamp(facts, lamp, need.powerW) : null
  const leftOut = whyNot(facts, found)
  return {
    name: 'together',
    title: say`Supply and machine together, behind the lamp`,
    leftOut,
    waits: null,
    figures: leftOut === null ? figures(facts, need, found) : [],
    steps: leftOut === null ? steps(facts, found, rails) : [],
    sources:
      leftOut === null
        ? [
            ...new Set([
              ...(found?.answer.sources ?? []),
              supplyEfficiency.source,
              flashOver.source,
              settleTimes.source,
            ]),
          ]
        : [],
  }
}

function figures(facts: PlanFacts, need: ReturnType<typeof demand>, found: BehindLamp | null): Figure[] {
  const reason = facts.choice?.order.find(({ use }) => use === 'next')?.reason
  return [
    ...(facts.loadLamp
      ? [
          figure(
            say`Lamp to use`,
            lampText(facts.loadLamp),
            reason ?? say`of those at hand, the one that leaves the load most`,
          ),
        ]
      : []),
    ...(need ? [figure(say`Taken from the mains, at most`, watts(need.powerW, 3, 'up'), need.working)] : []),
    ...(found
      ? [
          figure(
            say`Across the lamp, the machine at its plate current`,
            onLamps(found, say`it is starved`),
            found.working,
          ),
          ...(found.loadV === null
            ? []
            : [figure(say`Left for the supply`, volts(found.loadV, 3, 'down'), found.working)]),
        ]
      : []),
  ]
}

/**
 * What is read at the machine: within its tolerance. An unregulated output lies anywhere below what it reads with nothing connected,
 * lower behind the lamp, so only that bound holds; where nobody knows whether it is regulated, the upper edge of the tolerance.
 */
function atMachine(
  wanted: DeviceRail,
  regulated: boolean | null,
  rails: readonly RailPlan[],
): Pick<Step, 'expect' | 'unit' | 'low' | 'high' | 'stopIf'> {
  const { voltageV } = wanted
  const tolerance = toleranceOf(voltageV, wanted)
  const sign = Math.sign(voltageV)
  const [nearest] = rails.toSorted(
    (one, other) => Math.abs(one.rail.voltageV - voltageV) - Math.abs(other.rail.voltageV - voltageV),
  )
  const least = Math.abs(voltageV) * (1 - tolerance)
  const edge = Math.abs(voltageV) * (1 + tolerance)
  if (nearest ? nearest.known && !nearest.unregulated : regulated === true) {
    const [low, high] = sign < 0 ? [-edge, -least] : [least, edge]
    return { expect: say`${volts(low, 4)} to ${volts(high, 4)}`, unit: 'V', low, high, stopIf: say`it lies outside` }
  }
  const offLoad = wanted.tolerance === null && nearest?.unregulated ? nearest.offLoad : null
  const most = offLoad ? Math.max(edge, Math.abs(offLoad.low), Math.abs(offLoad.high)) : edge
  const because = offLoad
    ? 'no more than with nothing connected; near the plate only at full load, and lower behind the lamp'
    : 'an unregulated output is lower behind the lamp, by as much as the lamp takes'
  return {
    expect: say`at most ${volts(sign * most, 4)}: ${because}`,
    unit: 'V',
    low: sign < 0 ? -most : null,
    high: sign < 0 ? null : most,
    stopIf: say`it is more, or falls while you watch`,
  }
}

function steps(facts: PlanFacts, found: BehindLamp | null, rails: readonly RailPlan[]): Step[] {
  const { device } = facts
  const wait = duration(flashOver.atLeastS)
  const dc = device.rails.some(({ kind }) => kind !== 'ac')
  const lampLimits = lampBand(facts, found?.lampV ?? null)
  const lampMost = say`at most ${volts(lampLimits.high, 3, 'up')}`
  return [
    step(
      'together.batteries',
      say`Batteries still out; everything the machine does not need to start is disconnected, but never its picture tube.`,
      {
        caution: oldBatteries,
      },
    ),
    step('together.join', say`All unplugged: put the supply’s plug into the machine.`, {
      expect: dc
        ? say`the polarity measured on this supply is the one the machine wants`
        : say`an AC output to an AC input`,
      stopIf: dc ? say`either is not written down` : say`either is not certain`,
      link: 'plug',
      caution: dc ? reversed : null,
    }),
    meterOnLamp('together', facts),
    ...sourceStep('together', facts),
    step(
      'together.switch-on',
      say`Plug in, switch on, hands off, watch lamp and machine for ${wait}: behind ${lampText(facts.loadLamp)}.`,
      {
        expect: found ? say`a flash, then at most ${seenAs(found.glow)}` : say`a flash, then darker`,
        stopIf: say`the lamp is still bright after ${wait}, gets brighter, or anything smells or smokes: switch off and unplug`,
        power: 'mains',
        caution: noIsolation,
      },
    ),
    step('together.lamp-volts', say`Read the voltage across the lamp, leads untouched.`, {
      expect: lampMost,
      ...lampLimits,
      stopIf: say`it is above that, or rises while you watch`,
      power: 'mains',
    }),
    step(
      'together.hold',
      say`Leave it on for ${duration(settleTimes.togetherS)}, then read the lamp again. Keep this stage short: low voltage is no rest for a machine.`,
      {
        expect: say`${lampMost}, and no more than before`,
        ...lampLimits,
        notAbove: 'together.lamp-volts',
        stopIf: say`it has risen: something warms up`,
        power: 'mains',
      },
    ),
    step(
      'together.meter-machine',
      say`Switch off, unplug; move the leads from lamp to the machine’s own terminals: volts as the machine takes them.`,
      {
        expect: say`clipped on, touching nothing else`,
        stopIf: say`a lead could slip and bridge two points`,
        caution: storedCharge,
      },
    ),
    step('together.on-again', say`Plug in and switch on again, hands off; watch lamp and machine.`, {
      expect: say`the same as the first time`,
      stopIf: say`the lamp is brighter than the first time, or anything smells or smokes: switch off and unplug`,
      power: 'mains',
    }),
    ...device.rails.map((rail, index) =>
      step(
        `together.rail-${index + 1}`,
        say`Read the ${volts(rail.voltageV)}${rail.kind === 'ac' ? say` AC` : say``} at the machine.`,
        { power: 'mains', ...atMachine(rail, facts.regulated, rails) },
      ),
    ),
    step('together.off', say`Switch off, unplug. Before you reach inside, wait and ${acrossCapacitors}.`, beforeReach),
  ]
}
