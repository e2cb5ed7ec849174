import { atMost } from '../physics/tolerance.js'
import { mainsSourceRows } from '../tables/mainsSources.js'
import { groundFaultTrip, residualShares } from '../tables/residualCurrent.js'
import { commonPractice, type Source } from '../tables/source.js'
import { listed, type Phrase, say } from '../words/phrase.js'
import { amperes, percent } from '../words/quantity.js'
import type { MainsSituation } from './case/situation.js'
import { caution, clear, stop, type Text, unknown } from './judgement.js'
import { mainsTopic } from './topic.js'

/** Where a device must not trip, where it must, and the most that is advised to stand on it [A]. */
interface TripRange {
  standingA: number
  mayTripA: number
  tripsA: number
  source: Source
}

/** The range of a device by its rating; what is called 5 mA is a ground-fault interrupter, for which nothing less is advised. */
const rangeOf = (ratedA: number): TripRange =>
  ratedA === groundFaultTrip.ratedA
    ? {
        standingA: groundFaultTrip.leastA,
        mayTripA: groundFaultTrip.leastA,
        tripsA: groundFaultTrip.mostA,
        source: groundFaultTrip.source,
      }
    : {
        standingA: residualShares.standing * ratedA,
        mayTripA: residualShares.mayTrip * ratedA,
        tripsA: ratedA,
        source: residualShares.source,
      }

const addUp = commonPractice(
  'Leakage of several machines on one device',
  'that of capacitors on one line conductor adds up as plain numbers; of two live conductors it partly cancels, so the sum is the most',
)

/** What stands on one residual-current device against its trip range. */
export const leakage = mainsTopic({
  name: 'leakage',
  words: say`the leakage on the residual-current device`,
  links: ['source', 'supply'],
  asks: ['site.residualCurrentA', 'site.othersLeakA', 'supply.input.earthLeakA'],
  when: {
    stop: {
      rule: say`What leaks to earth through one residual-current device comes to its rating or more: it must trip.`,
      example: { site: { residualCurrentA: 0.03, othersLeakA: 0.03 }, supply: { input: { earthLeakA: 0.001 } } },
    },
    unknown: {
      rule: say`What else leaks through the device was entered, or its rating and what the unit lets to earth, and one of the three is not known.`,
      example: { site: { othersLeakA: 0.004 } },
    },
    caution: {
      rule: say`The sum is more than ${percent(residualShares.standing)} of the rating, the most that is advised; from ${percent(residualShares.mayTrip)} on it may trip.`,
      example: { site: { residualCurrentA: 0.03, othersLeakA: 0.01 }, supply: { input: { earthLeakA: 0.001 } } },
    },
    clear: {
      rule: say`The sum is no more than ${percent(residualShares.standing)} of the rating.`,
      example: { site: { residualCurrentA: 0.03, othersLeakA: 0.004 }, supply: { input: { earthLeakA: 0.001 } } },
    },
  },
  judge(situation) {
    const { site, supply } = situation
    const [ratedA, others, own] = [site.residualCurrentA, site.othersLeakA, supply.input.earthLeakA]
    // what one unit lets to earth is no question of the device while neither it nor what hangs on it was named
    if ((others === null && (own === null || ratedA === null)) || isBlind(situation)) return []
    const sumA = (others ?? 0) + (own ?? 0)
    const range = ratedA === null ? null : rangeOf(ratedA)
    const stands = range && standing(sumA, range)
    // what is not known can only add to it
    if (!stands || (stands.as !== stop && (others === null || own === null))) return [unknown(() => missing(situation))]
    return [stands.as(() => words(situation, range, stands))]
  },
})

interface Standing {
  as: typeof stop
  words: Phrase
}

/** How a sum of leakages stands in the range of its device. */
function standing(sumA: number, { standingA, mayTripA, tripsA }: TripRange): Standing {
  if (atMost(tripsA, sumA)) return { as: stop, words: say`it trips` }
  if (!atMost(sumA, mayTripA)) return { as: caution, words: say`it may trip at any time` }
  if (!atMost(sumA, standingA)) return { as: caution, words: say`more than is advised` }
  return { as: clear, words: say`within what is advised` }
}

/** A device before windows of their own sees nothing of what leaks behind them. */
const isBlind = ({ site, converter }: MainsSituation): boolean =>
  converter?.kind === 'isolating' ||
  mainsSourceRows.some(({ source, residual }) => source === site.source && residual === 'does not act')

function missing({ site, supply }: MainsSituation): Text {
  const open = [
    ...(site.residualCurrentA === null ? [say`the rating of the residual-current device`] : []),
    ...(site.othersLeakA === null ? [say`what else leaks through it`] : []),
    ...(supply.input.earthLeakA === null ? [say`what the ${supply.called} lets to earth`] : []),
  ]
  return {
    title: say`Whether the residual-current device holds is not known: ${listed(open)} ${open.length === 1 ? say`is` : say`are`} missing`,
    why: say`Healthy leakages of several machines add up until the device opens, and a fault then looks like one more of them.`,
    working: [],
    action: say`Read the device, add up what hangs on it by its tests or its capacitors, and enter it; a leakage is measured by a qualified person.`,
    sources: [residualShares.source, addUp],
  }
}

function words({ site, supply }: MainsSituation, range: TripRange, stands: Standing): Text {
  const [ratedA, others, own] = [site.residualCurrentA ?? 0, site.othersLeakA ?? 0, supply.input.earthLeakA ?? 0]
  const sum = amperes(others + own, 3, 'up')
  return {
    title: say`${sum} leaks through a residual-current device of ${amperes(ratedA)}: ${stands.words}`,
    why: say`It works by the sum of all that hangs on it. Where healthy leakage takes most of its range it opens without a fault, and is then bridged or done without; where it is well below, what still opens it is a fault.`,
    working: [
      say`${amperes(others)} + ${amperes(own)} = ${sum}`,
      say`must not trip up to ${amperes(range.mayTripA)}, must trip at ${amperes(range.tripsA)}; advised as the most ${amperes(range.standingA)}`,
    ],
    action:
      stands.as === clear
        ? null
        : say`Unplug what need not hang on it, or spread the machines over several devices; never bridge it or do without it. What leaks more than its like is examined first.`,
    sources: [range.source, addUp],
  }
}
