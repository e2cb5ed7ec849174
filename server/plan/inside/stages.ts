import type { TopicName } from '../../chain/finding.js'
import { topicNames } from '../../chain/index.js'
import { loadAtReach } from '../../chain/matching/loadCurrent.js'
import { flashOver, settleTimes } from '../../tables/firstPower.js'
import { insideLamp, loudspeakerV, motorStart, overPlate, soak } from '../../tables/inside.js'
import { lampMargin } from '../../tables/seriesLamp.js'
import { voltageStopBelow } from '../../tables/thresholds.js'
import { variableTransformerRows } from '../../tables/variableTransformer.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { amperes, decimal, duration, volts, watts } from '../../words/quantity.js'
import { acrossCapacitors } from '../acrossCapacitors.js'
import type { Figure, FirstPowerStage, StageName, Step } from '../firstPowerPlan.js'
import { type BehindLamp, behindLamp, idleBehind, lampBand, lampText, onLamps, seenAs } from '../stages/behindLamp.js'
import { noConverter, noIsolation, storedCharge, withoutLamp } from '../stages/cautions.js'
import { type LampUse, type PlanFacts, standing } from '../stages/facts.js'
import { lampCircuit, sourceStep } from '../stages/fedBy.js'
import { meterOnLamp } from '../stages/meterOnLamp.js'
import { outletOf } from '../stages/outlet.js'
import { beforeReach, figure, stepOn } from '../stages/step.js'
import { because, mainsBlocked } from '../stages/supplyAlone.js'
import { variableTransformer } from '../stages/variableTransformer.js'
import { partsOf, shownBy } from './parts.js'

const step = stepOn('machine')

/** What a word on its plate decides is settled before it meets any mains. */
const byWords: readonly TopicName[] = ['isolation', 'charging']

/** A machine with its supply inside: stripped behind the lamp, whole behind a larger one, then on full mains part by part. */
export function insideStages(facts: PlanFacts): FirstPowerStage[] {
  return [stripped(facts), whole(facts), full(facts)]
}

const open = standing

/** Why it meets no mains yet, lamp or not. */
function blocked(facts: PlanFacts): Phrase | null {
  const found = open(facts, byWords, true)
  const mains = mainsBlocked(facts)
  if (mains !== null || found.length === 0) return mains
  return say`The machine does not meet the mains as things stand. ${because(found)}`
}

const stage = (
  name: StageName,
  title: Phrase,
  leftOut: Phrase | null,
  content: () => Pick<FirstPowerStage, 'figures' | 'steps' | 'sources'>,
): FirstPowerStage => ({
  name,
  title,
  leftOut,
  waits: null,
  ...(leftOut === null ? content() : { figures: [], steps: [], sources: [] }),
})

/** The machine at its plate's power behind a lamp; null where one of the two is not known. */
const wholeBehind = (facts: PlanFacts, lamp: LampUse | null): BehindLamp | null =>
  lamp && facts.rated ? behindLamp(facts, lamp, facts.rated.powerW) : null

// ---- stripped, behind the lamp -------------------------------------------------------------------------------------

function stripped(facts: PlanFacts): FirstPowerStage {
  return stage('inside-stripped', say`The machine stripped, behind the lamp`, blocked(facts), () => {
    const lamp = facts.firstLamp
    const idle = lamp ? idleBehind(facts, lamp) : null
    return {
      figures: strippedFigures(facts, lamp, idle),
      steps: strippedSteps(facts, lamp, idle),
      sources: [
        ...new Set([
          ...(idle?.answer.sources ?? facts.choice?.sources ?? []),
          ...(facts.rated?.sources ?? []),
          insideLamp.source,
          flashOver.source,
          ...shownBy(facts).flatMap(({ sources }) => sources),
          ...variableTransformerRows.flatMap(({ sources }) => sources),
        ]),
      ],
    }
  })
}

function strippedFigures(facts: PlanFacts, lamp: LampUse | null, idle: BehindLamp | null): Figure[] {
  const { rated, reach, options } = facts
  const { times, leastW } = insideLamp
  return [
    ...(reach ? [figure(say`Mains at the machine`, volts(reach.voltageV), through(facts))] : []),
    ...(rated ? [figure(say`Taken when whole, at most`, watts(rated.powerW, 3, 'up'), rated.working)] : []),
    ...(options.idleW == null
      ? []
      : [
          figure(
            say`Lamp by the rule of ${times} times what is still plugged in`,
            watts(Math.max(leastW, times * options.idleW), 3, 'up'),
            say`${times} × ${watts(options.idleW)}, and no less than ${watts(leastW)}; equal watts would leave about 60\u00a0% of the mains`,
          ),
        ]),
    ...(lamp
      ? [
          figure(
            say`Lamp to use first`,
            lampText(lamp),
            facts.choice?.order[0]?.reason ?? say`of those at hand, the one that passes most`,
          ),
        ]
      : []),
    ...(idle
      ? [
          figure(
            say`Most that flows into a dead short`,
            amperes(idle.answer.shortA, 3),
            say`the whole mains on the lamp, filament hot`,
          ),
          figure(
            say`Across the lamp, everything unplugged inside`,
            onLamps(idle, say`starved: it tries and drops out`),
            idle.working,
          ),
        ]
      : []),
    ...motorFigure(facts, idle),
    ...variableTransformer(facts),
  ]
}

const through = ({ reach }: PlanFacts): Phrase =>
  reach?.through === 'converter'
    ? say`the output of the converter; the lamp stands behind it`
    : say`the mains of the place`

/** What a motor asks for at its start, against what the lamp passes. */
function motorFigure({ rated, reach, device }: PlanFacts, behind: BehindLamp | null): Figure[] {
  const motor = device.motor ?? 'none'
  if (!rated || !reach || !behind || (motor !== 'induction' && motor !== 'synchronous' && motor !== 'universal'))
    return []
  const times: number = motorStart[motor]
  const startA = (times * rated.powerW) / reach.voltageV
  const { shortA } = behind.answer
  return [
    figure(
      say`What a motor may ask for at its start`,
      say`up to ${amperes(startA, 2, 'up')}${startA > shortA ? say`: more than this lamp passes, it may not start behind it` : say``}`,
      say`${times} × ${watts(rated.powerW)} / ${volts(reach.voltageV)}, the whole plate taken as the motor’s; the lamp passes ${amperes(shortA, 3)} at most`,
    ),
  ]
}

function strippedSteps(facts: PlanFacts, lamp: LampUse | null, idle: BehindLamp | null): Step[] {
  const wait = duration(flashOver.atLeastS)
  const shows = shownBy(facts)
  // what could not be unplugged may take all that the plate says: the limit is that of the whole machine
  const limits = lampBand(facts, wholeBehind(facts, lamp)?.lampV ?? null)
  return [
    step(
      'inside-stripped.gates',
      say`Go back through every gate: each has its result, and who found it, written down.`,
      {
        expect: say`all of them, each within its limits`,
        stopIf: say`one is open: have it tested by a qualified person; nothing is plugged in before`,
      },
    ),
    step('inside-stripped.closed', say`What was unplugged inside stays off, its plugs covered; the case is closed.`, {
      expect: say`the list of what is off beside you`,
      stopIf: say`the case does not close: the work is for a qualified person`,
    }),
    step(
      'inside-stripped.voltage-again',
      say`Read the voltage on the plate, and where the selector stands, once more.`,
      {
        expect: facts.reach ? say`for a mains of ${volts(facts.reach.voltageV)}` : null,
        stopIf: say`it is another voltage than the mains`,
        caution: noConverter,
      },
    ),
    lampCircuit('inside-stripped', facts, lamp),
    ...sourceStep('inside-stripped', facts),
    meterOnLamp('inside-stripped', facts),
    step(
      'inside-stripped.switch-on',
      say`Plug in, switch on for ${wait}, hands off, watch the lamp; then switch off at the plug.`,
      {
        expect: say`${joined(
          shows.map(({ part, healthy }) => say`${part}: ${healthy}`),
          say`; `,
        )}. ${joined(shows.map(({ part, misleading }) => say`No fault yet, ${part}: ${misleading}.`))}`,
        stopIf: say`the lamp is still bright after ${wait}, gets brighter, or anything hums, smells or smokes: unplug`,
        power: 'mains',
        caution: noIsolation,
      },
    ),
    step(
      'inside-stripped.lamp-volts',
      say`Switch on again for ${duration(settleTimes.aloneS)} and read the voltage across the lamp: leads untouched.`,
      {
        expect:
          idle?.lampV == null
            ? say`at most ${volts(limits.high, 3, 'up')}, and falling`
            : say`${onLamps(idle, say``)}, where all could be unplugged; ${volts(limits.high, 3, 'up')} is all that the plate allows`,
        ...limits,
        stopIf: say`it is above that, or rises while you watch`,
        power: 'mains',
      },
    ),
    step(
      'inside-stripped.rails',
      say`Have the voltages inside read on test points that were clipped on with the plug out.`,
      {
        expect: say`as the manual says, lower behind the lamp`,
        stopIf: say`one is missing, reversed or too high`,
        who: 'qualified',
        power: 'mains',
      },
    ),
    step(
      'inside-stripped.off',
      say`Switch off, unplug; before each reach inside wait and ${acrossCapacitors}.`,
      beforeReach,
    ),
  ]
}

// ---- whole, behind a larger lamp -----------------------------------------------------------------------------------

function whole(facts: PlanFacts): FirstPowerStage {
  const lamp = facts.loadLamp
  const found = wholeBehind(facts, lamp)
  return stage(
    'inside-whole',
    say`The machine part by part, behind a larger lamp`,
    blocked(facts) ?? notCarried(facts, lamp, found),
    () => ({
      figures: [
        figure(say`Lamp to use`, lampText(lamp), say`of those at hand, the one that leaves the machine most`),
        ...(found
          ? [
              figure(say`Across the lamp, the machine at its plate`, onLamps(found, say`it is starved`), found.working),
              ...(found.loadV === null
                ? []
                : [figure(say`Left for the machine`, volts(found.loadV, 3, 'down'), found.working)]),
            ]
          : []),
        ...motorFigure(facts, found),
      ],
      steps: wholeSteps(facts, lamp, found),
      sources: [...new Set([...(found?.answer.sources ?? []), flashOver.source, settleTimes.source])],
    }),
  )
}

/** Why the whole machine is not run behind the lamps at hand. */
function notCarried(
  { reach, technology, rated }: PlanFacts,
  lamp: LampUse | null,
  found: BehindLamp | null,
): Phrase | null {
  if (!lamp || !rated || !reach || !found)
    return say`Whether a lamp carries the whole machine is not known: it needs the ratings of the lamps and of the machine.`
  const starved =
    technology === 'transformer' ? (found.loadV ?? 0) < voltageStopBelow.value * reach.voltageV : found.lampV === null
  if (!starved) return null
  return say`${lampText(lamp)} would starve the whole machine, which takes up to ${watts(rated.powerW, 3, 'up')}: motors hang and heat, supplies hiccup, and the lamp tells nothing. A lamp of ${watts(insideLamp.times * lampMargin.value * rated.powerW, 2, 'up')} or more would carry it.`
}

function wholeSteps(facts: PlanFacts, lamp: LampUse | null, found: BehindLamp | null): Step[] {
  const limits = lampBand(facts, found?.lampV ?? null)
  const wait = duration(flashOver.atLeastS)
  return [
    step(
      'inside-whole.plug-back',
      say`Unplugged, have one part plugged back at a time, the cheapest first: motors alone, then cards, the heater last.${partsOf(facts).includes('picture tube') ? say` The degaussing coil stays off: its start defeats any lamp.` : say``}`,
      {
        expect: say`one change, one look, one line on the list`,
        stopIf: say`two things were changed at once`,
        who: 'qualified',
      },
    ),
    ...sourceStep('inside-whole', facts),
    step('inside-whole.switch-on', say`Behind ${lampText(lamp)}: plug in, switch on, hands off, watch for ${wait}.`, {
      expect: found ? say`${seenAs(found.glow)} at most, once what turns has started` : say`dimming`,
      stopIf: say`bright and still after ${wait}, brighter, or a smell: unplug, and take the last part off again`,
      power: 'mains',
      caution: noIsolation,
    }),
    step('inside-whole.lamp-volts', say`Read the voltage across the lamp: leads untouched.`, {
      expect: say`at most ${volts(limits.high, 3, 'up')}`,
      ...limits,
      stopIf: say`it is above that, or rises while you watch`,
      power: 'mains',
    }),
    step(
      'inside-whole.hold',
      say`After ${duration(settleTimes.togetherS)} read the lamp again, then switch off: low voltage is no rest for a machine.`,
      {
        expect: say`no more than before`,
        ...limits,
        notAbove: 'inside-whole.lamp-volts',
        stopIf: say`it has risen: something warms up`,
        power: 'mains',
      },
    ),
    step('inside-whole.off', say`Unplug. Before each reach inside wait and ${acrossCapacitors}.`, beforeReach),
  ]
}

// ---- full mains ----------------------------------------------------------------------------------------------------

function full(facts: PlanFacts): FirstPowerStage {
  const found = open(facts, topicNames, true)
  const leftOut =
    blocked(facts) ?? (found.length > 0 ? say`Full mains waits until everything is found out. ${because(found)}` : null)
  return stage('inside-full', say`The machine on full mains, part by part`, leftOut, () => {
    const load = facts.reach && loadAtReach({ supply: facts.supply, reach: facts.reach })
    return {
      figures: load
        ? [figure(say`Taken from the mains, at most`, amperes(load.currentA, 3, 'up'), joined(load.working, say`; `))]
        : [],
      steps: fullSteps(facts, load?.currentA ?? null),
      sources: [soak.source, overPlate.source, loudspeakerV.source, ...(load?.sources ?? [])],
    }
  })
}

function fullSteps(facts: PlanFacts, currentA: number | null): Step[] {
  const most = currentA === null ? null : currentA * overPlate.value
  return [
    step(
      'inside-full.unplug',
      say`Unplug. Take the lamp out; what was unplugged inside is off again, and the machine goes into ${outletOf(facts.reach?.through ?? null)}.`,
      {
        expect: say`every line before this within its limits`,
        stopIf: say`one is not`,
        caution: withoutLamp,
        lampOut: true,
      },
    ),
    ...sourceStep('inside-full', facts),
    step(
      'inside-full.on',
      say`Plug in, stand at the plug, and watch for ${duration(settleTimes.aloneS)}; then ${joined(
        soak.stepsS.map((s) => duration(s)),
        say`, `,
      )}, with a look between.`,
      {
        expect: say`as behind the lamp, only quicker`,
        stopIf: say`a new hum, a smell, a part too hot to touch, more than ${volts(loudspeakerV.value)} direct at a loudspeaker’s terminals: off at the plug, not at the switch`,
        power: 'mains',
      },
    ),
    step(
      'inside-full.current',
      say`Read the current from the mains on a plug-in meter, set in with the plug out; never through test leads.`,
      {
        ...(currentA === null || most === null
          ? { expect: say`write it down` }
          : { expect: say`at most ${amperes(currentA, 3, 'up')}, its plate`, unit: 'A', low: 0, high: most }),
        stopIf:
          most === null ? say`it creeps up` : say`it is more than ${decimal(overPlate.value)} times that, or creeps up`,
        power: 'mains',
      },
    ),
    step(
      'inside-full.parts',
      say`Unplug, and have the parts plugged back one at a time, with a run after each${partsOf(facts).includes('picture tube') ? say`; the degaussing coil last` : say``}.`,
      {
        expect: say`the current rises by what that part takes`,
        stopIf: say`anything else changes`,
        who: 'qualified',
      },
    ),
    ...(partsOf(facts).includes('motor')
      ? [
          step('inside-full.speed', say`What turns with the mains: measure its speed.`, {
            expect: say`the speed of its plate, times the frequency here over that of the plate`,
            stopIf: say`it hunts, hangs or hums`,
            power: 'mains',
          }),
        ]
      : []),
    step(
      'inside-full.soak',
      say`Let it run ${duration(soak.inAllS)} in all, never unattended; feel for heat with the plug pulled.`,
      {
        expect: say`warm, no smell, the current as before`,
        stopIf: say`too hot for the hand, or the current has climbed`,
        power: 'mains',
      },
    ),
    step(
      'inside-full.off',
      say`Switch off and unplug. Have earth and insulation tested again after the case is closed.`,
      {
        expect: say`within the limits of the gates`,
        stopIf: say`one has become worse`,
        who: 'qualified',
        caution: storedCharge,
      },
    ),
  ]
}
