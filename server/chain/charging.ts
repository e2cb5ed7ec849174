import type { HazardMeaning } from '../tables/hazardWords.js'
import { commonPractice } from '../tables/source.js'
import { type Phrase, say } from '../words/phrase.js'
import type { PairSituation, PreparedSupply } from './case/situation.js'
import { hazardsOf, judgeHazard, type PrintedHazard } from './hazardFinding.js'
import { caution, type Judgement, together, unknown } from './judgement.js'
import { notReadOn } from './notRead.js'
import { pairTopic } from './topic.js'

const constantCurrent: HazardMeaning = 'constant current, LED driver'
const chargers = [
  'charger: for batteries only',
  'charger for one named battery',
] as const satisfies readonly HazardMeaning[]
const forLamps: HazardMeaning = 'supply for LED lamps'

/** What the charging topic weighs; the topic of hazard words leaves it out. */
export const chargingMeanings = [constantCurrent, forLamps, ...chargers, 'battery inside'] as const

/** Whether the supply is one: not a charger, and not a source of constant current. */
export const charging = pairTopic({
  name: 'charging',
  words: say`chargers and constant current`,
  links: ['supply'],
  asks: [],
  when: {
    stop: {
      rule: say`One of the two is for constant current, and the other is not.`,
      example: { supply: { label: 'CONSTANT CURRENT' } },
    },
    unknown: {
      rule: say`The supply is a charger for batteries, or one for LED lamps that does not say whether it holds its voltage; or a battery of a kind that is not known is in the machine; or what is printed on the machine may be for charging alone.`,
      example: { supply: { label: 'BATTERY CHARGER' } },
    },
    caution: {
      rule: say`The machine holds or charges a battery; or both are for constant current.`,
      example: { device: { label: 'INTERNAL BATTERY' } },
    },
    clear: { never: say`Nothing is said where neither plate speaks of it.` },
  },
  judge(situation) {
    return together([
      ...hazardsOf(situation, chargingMeanings).flatMap((hazard) => judgeOne(situation, hazard)),
      ...batteryEntered(situation),
      ...notReadOn(situation, 'charging'),
    ])
  },
})

const batteries = commonPractice(
  'A battery in an old machine',
  'a supply that reaches a jack may charge it; cells that are not made for it, or are old, leak, vent or burst, and a shorted one loads the supply',
)

/** A battery that was found in the machine. */
function batteryEntered({ device }: PairSituation): Judgement[] {
  const { battery } = device.facts
  if (battery == null || battery === 'none') return []
  const kind =
    battery === 'unknown' ? say`a battery of a kind that is not known` : (batteryWords[battery] ?? say`a battery`)
  return [
    (battery === 'unknown' ? unknown : caution)(() => ({
      title: say`In the machine there is ${kind}`,
      why:
        battery === 'primary'
          ? say`Whatever reaches the jack may flow back into cells that must never be charged: they leak or burst.`
          : say`While it is empty the machine takes more than its plate says, and an old one may be shorted, leaking or swollen.`,
      working: [],
      action: [
        ...(battery === 'unknown' ? [say`Read the print on the cell and enter its kind.`] : []),
        say`Take it out, or have it disconnected, before first power; gloves and glasses where it has leaked.`,
      ],
      sources: [batteries],
    })),
  ]
}

const batteryWords: Readonly<Record<string, Phrase>> = {
  primary: say`a set of cells that are not recharged`,
  nicd: say`a nickel-cadmium battery`,
  nimh: say`a nickel-metal hydride battery`,
  lead: say`a lead-acid battery`,
  lithium: say`a lithium battery`,
}

function judgeOne(situation: PairSituation, hazard: PrintedHazard): Judgement[] {
  const { meaning, on } = hazard
  if (meaning === constantCurrent) return currentSource(situation, hazard)
  if (meaning === forLamps) return judgeHazard(hazard, holdsVoltage(situation.supply) ? 'caution' : 'unknown')
  if (on === 'machine' && meaning !== 'battery inside')
    return judgeHazard(hazard, 'caution', {
      why: say`A machine that charges takes more while its battery is empty, and an old battery may be shorted or leaking.`,
      action: say`Take the battery out, or disconnect it, before first power.`,
    })
  return judgeHazard(hazard)
}

function currentSource(situation: PairSituation, hazard: PrintedHazard): Judgement[] {
  const both = hazardsOf(situation, [constantCurrent]).length === 2
  if (both)
    return judgeHazard(hazard, 'caution', {
      action: say`Compare the constant current of both in milliamperes, and the range of voltage.`,
    })
  if (hazard.on === 'machine')
    return judgeHazard(hazard, 'stop', {
      why: say`What is made for constant current has nothing that limits it: on a constant voltage it takes what the supply can give, and burns.`,
      action: say`Use a driver of the printed current.`,
    })
  return judgeHazard(hazard, holdsVoltage(situation.supply) ? 'caution' : 'stop')
}

/** An LED driver that says it holds its voltage, and nowhere that it holds a current. */
export const holdsVoltage = ({ reading }: PreparedSupply): boolean =>
  (reading?.hazards ?? []).some(({ meaning }) => meaning === 'constant voltage') &&
  !(reading?.hazards ?? []).some(({ meaning, words }) => meaning === constantCurrent && !/LED/i.test(words))

/** Why what is printed is no voltage that the supply holds: a charger, or a source of current. */
export const voltageNotHeld = (situation: PairSituation): Judgement[] =>
  hazardsOf(situation, [constantCurrent, ...chargers])
    .filter(({ on }) => on === 'supply')
    .flatMap((hazard) => judgeOne(situation, hazard))
    .filter(({ outcome }) => outcome === 'stop' || outcome === 'unknown')
