import { atMost } from '../physics/tolerance.js'
import { commonPractice } from '../tables/source.js'
import { measuredDemandHeadroom, plateDemandHeadroom } from '../tables/thresholds.js'
import { type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, percent, volts, watts } from '../words/quantity.js'
import { underPower } from './action.js'
import type { DeviceRail, Rail, RailPair } from './case/situation.js'
import { wanting } from './example.js'
import type { Outcome } from './finding.js'
import { type Judgement, type Text, together, unknown } from './judgement.js'
import { leastLoads } from './leastLoad.js'
import { drawnA, ratedA } from './matching/matchRails.js'
import { railText } from './matching/railText.js'
import { peakAbove } from './peakCurrent.js'
import { pairTopic } from './topic.js'
import { type TotalPower, totalPower } from './totalPower.js'
import { measuredThere, ratingPlate } from './words.js'

const fedHarder = commonPractice(
  'Spare current',
  'a supply gives what is drawn, so more on its plate is no conflict; but a fault in the machine is then fed harder',
)

/** Whether the supply gives the current each rail draws, and the power all of them draw. */
export const outputCurrent = pairTopic({
  name: 'output-current',
  words: say`the output current`,
  links: ['supply', 'machine'],
  asks: [
    'supply.outputs.currentA',
    'device.inputs.currentA',
    'device.inputs.peakA',
    'supply.outputs.voltageV',
    'device.inputs.voltageV',
  ],
  when: {
    stop: {
      rule: say`The supply gives less than the machine takes.`,
      example: { device: wanting({ currentA: 3 }) },
    },
    unknown: { rule: say`Either current is not known.`, example: { device: wanting({ currentA: null }) } },
    caution: {
      rule: say`The machine’s current was measured and the supply has less than ${decimal(measuredDemandHeadroom.value)} times of it; or less is drawn of an output than it needs, or more for moments than it is rated for.`,
      example: { device: wanting({ currentA: 1.8, currentIs: 'measured' }) },
    },
    clear: {
      rule: say`The supply gives what the machine’s plate says or more, or ${decimal(measuredDemandHeadroom.value)} times what was measured.`,
      example: {},
    },
  },
  judge(situation) {
    const { supply, device, pairs } = situation
    if (pairs.length === 0 || supply.rails.length === 0)
      return [unknown(() => sideMissing(supply.rails.length === 0, device.rails.length === 0))]
    const total = totalPower(situation)
    const rails = [...pairs.map((pair) => judgePair(pair, total)), ...leastLoads(situation), ...peakAbove(situation)]
    if (!total || total.outcome === 'clear') return rails
    return rails.length === 1 ? together([...rails, overTotal(total)]) : [...rails, overTotal(total)]
  },
})

function judgePair(pair: RailPair, total: TotalPower | null): Judgement {
  const { supply, device, sharedWith } = pair
  const available = supply && ratedA(supply)
  const demand = sumOf(sharedWith.map(drawnA))
  if (supply === null || available === null || available === undefined || demand === null || !(demand > 0))
    return unknown(() => missing(pair, available ?? null, demand))
  const measured = sharedWith.some(({ currentIs }) => currentIs === 'measured')
  const ratio = available / demand
  const outcome = outcomeOf(ratio, measured)
  return {
    outcome,
    say: () => words({ supply, device, sharedWith, available, demand, ratio, measured, outcome, total }),
  }
}

function outcomeOf(ratio: number, measured: boolean): Outcome {
  if (!atMost(plateDemandHeadroom.value, ratio)) return 'stop'
  return measured && !atMost(measuredDemandHeadroom.value, ratio) ? 'caution' : 'clear'
}

function sumOf(values: readonly (number | null)[]): number | null {
  let sum = 0
  for (const value of values) {
    if (value === null) return null
    sum += value
  }
  return sum
}

interface Compared {
  supply: Rail
  device: DeviceRail
  sharedWith: readonly DeviceRail[]
  available: number
  demand: number
  ratio: number
  measured: boolean
  outcome: Outcome
  total: TotalPower | null
}

function words({ supply, device, sharedWith, available, demand, ratio, measured, outcome, total }: Compared): Text {
  const shared =
    sharedWith.length > 1 ? ` together with the machine’s ${sharedWith.length - 1} other of this voltage` : ''
  const figures = say`${railText(supply)}: the supply gives ${amperes(available, 4, 'down')}, the machine ${measured ? say`drew` : say`takes`} ${amperes(demand, 4, 'up')}${shared}`
  const working = [
    ...powerLine(supply, available, 'supply'),
    ...powerLine(device, demand, 'machine'),
    say`${amperes(available, 4, 'down')} / ${amperes(demand, 4, 'up')} = ${decimal(ratio, 3, 'down')}`,
    ...(total?.working ?? []),
  ]
  const sources = measured
    ? [ratingPlate, measuredThere, measuredDemandHeadroom.source]
    : [ratingPlate, plateDemandHeadroom.source]
  if (outcome === 'stop')
    return {
      title: say`${figures}: too little`,
      why: say`An overloaded supply sags, hiccups or overheats, and a sagging rail can corrupt what the machine writes.`,
      working,
      action: say`Use a supply that gives ${amperes(demand * (measured ? measuredDemandHeadroom.value : 1), 3, 'up')} or more at ${railText(device)}.`,
      sources,
    }
  if (outcome === 'caution')
    return {
      title: say`${figures} when measured: ${percent(ratio - 1, 3, 'down')} to spare`,
      why: say`What was measured may not be the most it draws: start-up, motors and ageing come on top.`,
      working: [...working, say`wanted for a measured current: ${decimal(measuredDemandHeadroom.value)}`],
      action: [
        say`Prefer ${amperes(demand * measuredDemandHeadroom.value, 3, 'up')} or more.`,
        underPower(say`With this one watch the voltage at start-up.`, 'mains'),
      ],
      sources,
    }
  return {
    title: say`${figures}: ${percent(1 - 1 / ratio, 3, 'down')} of its rating to spare`,
    why: say`The machine draws what it needs. A fault in it is fed with all the supply has, so limit the current at first power-up.`,
    working,
    action:
      ratio > 1
        ? underPower(say`Limit the current at the first power-up: more is available than the machine needs.`, 'mains')
        : null,
    sources: [...sources, fedHarder],
  }
}

/** The line that says a current came from watts, where it did. */
function powerLine(rail: Rail, currentA: number, of: 'supply' | 'machine'): Phrase[] {
  const { powerW, voltageV } = rail
  if (powerW === null || rail.currentA === currentA) return []
  const deciding = rail.currentA === null || Math.abs(powerW / Math.abs(voltageV) - currentA) < 1e-9
  return deciding
    ? [
        say`${of}: ${watts(powerW)} / ${volts(Math.abs(voltageV))} = ${amperes(currentA, 4, of === 'supply' ? 'down' : 'up')}`,
      ]
    : []
}

const overTotal = ({ outcome, givenW, takenW, wantedW, working, sources }: TotalPower): Judgement => ({
  outcome,
  say: () => ({
    title: say`All outputs together: the supply gives ${watts(givenW, 4, 'down')}, the machine takes ${watts(takenW, 4, 'up')}`,
    why: say`Outputs that are each within their own rating can overload the supply together.`,
    working,
    action: say`Use a supply of ${watts(wantedW, 3, 'up')} or more.`,
    sources,
  }),
})

function missing({ supply, device }: RailPair, available: number | null, demand: number | null): Text {
  const supplyText =
    available === null ? 'what the supply gives is not known' : say`the supply gives ${amperes(available, 4, 'down')}`
  const deviceText =
    demand === null || !(demand > 0)
      ? 'what the machine draws is not known'
      : say`the machine draws ${amperes(demand, 4, 'up')}`
  return {
    title: supply
      ? say`${railText(device)}: ${supplyText}, ${deviceText}`
      : say`${railText(device)}: no output to compare with; ${deviceText}`,
    why: say`An overloaded supply sags, hiccups or overheats.`,
    working: [],
    action: [
      ...(supply && available === null
        ? [say`Read the amperes (or watts) on the output line of the supply’s plate.`]
        : []),
      ...(demand === null || !(demand > 0)
        ? [
            say`Read the amperes beside the machine’s power socket or in its manual.`,
            underPower(
              say`Or measure them on a current-limited bench supply, and enter them as measured.`,
              'low-voltage',
            ),
          ]
        : []),
      ...(supply ? [] : [say`Find a supply with this output first.`]),
    ],
    sources: [ratingPlate],
  }
}

const sideMissing = (supply: boolean, device: boolean): Text => ({
  title:
    supply && device
      ? say`Neither the current the supply gives nor the one the machine draws is known`
      : supply
        ? say`The current the supply gives is not known`
        : say`The current the machine draws is not known`,
  why: say`An overloaded supply sags, hiccups or overheats.`,
  working: [],
  action: [
    ...(supply ? [say`Read the output line of the supply’s plate and enter its amperes.`] : []),
    ...(device
      ? [
          say`Read the amperes beside the machine’s power socket or in its manual.`,
          underPower(say`Or measure them on a current-limited bench supply.`, 'low-voltage'),
        ]
      : []),
  ],
  sources: [ratingPlate],
})
