import { says } from '../plate/sayings.js'
import { type HazardMeaning, hazardMeanings, hazardRule } from '../tables/hazardWords.js'
import { isolationInsulation } from '../tables/safetyTestLimits.js'
import { touchAc, touchDc } from '../tables/thresholds.js'
import { joined, type Phrase, say } from '../words/phrase.js'
import { volts } from '../words/quantity.js'
import type { PairSituation, PreparedSupply, Rail } from './case/situation.js'
import { hazardsOf, hazardTitle, judgeHazard, leaveIt } from './hazardFinding.js'
import { caution, clear, type Judgement, stop, together, unknown } from './judgement.js'
import { ratingEstimate } from './matching/offLoadEstimate.js'
import { railText } from './matching/railText.js'
import { regulatedOf } from './matching/unregulatedOutput.js'
import { notReadOn } from './notRead.js'
import { pairTopic } from './topic.js'
import { ratingPlate } from './words.js'

const live = 'not isolated from the mains, live chassis' satisfies HazardMeaning
const positive: HazardMeaning = 'positive earth (case positive)'
const negative: HazardMeaning = 'negative earth, output joined to earth'

/** What the isolation topic weighs; the topic of hazard words leaves it out. */
export const isolationMeanings = [
  live,
  'autotransformer as a supply',
  positive,
] as const satisfies readonly HazardMeaning[]

/** Whether a plate says that the output is joined to the mains, or a pole to earth. */
export const isolation = pairTopic({
  name: 'isolation',
  words: say`the isolation from mains and earth`,
  links: ['supply'],
  asks: [],
  when: {
    stop: {
      rule: say`A plate or an entry says that the output or the chassis is not isolated from the mains, or the supply is an autotransformer and the machine takes low voltage.`,
      example: { supply: { label: 'NOT ISOLATED FROM MAINS' } },
    },
    unknown: {
      rule: say`A plate or an entry says that the plus is joined to earth or case and nothing is known of the other side, or supply and machine join different poles to it, or a plate and its entry name different poles; a plate speaks of isolation in words that were not read; the unit is made for mains of either kind, AC or DC, and is no switch-mode one; or its output is dangerous to touch, by its plate, a reading, or what it may stand at with nothing connected.`,
      example: { device: { label: 'POSITIVE EARTH' } },
    },
    caution: {
      rule: say`The supply is an autotransformer, and the machine takes mains itself; or one side joins its plus to earth or case, and the other the same or neither.`,
      example: {
        supply: { label: 'AUTOTRANSFORMER', outputs: [{ kind: 'ac', voltageV: 120, currentA: 2 }], plug: null },
        device: { label: 'INPUT 120V~ 60Hz 40W', inputs: null },
      },
    },
    clear: {
      rule: say`The output was tested to be isolated, and no plate says otherwise: no word on a plate proves it.`,
      example: { supply: { isolated: true } },
    },
  },
  judge(situation) {
    return together([
      ...printed(situation),
      ...poles(situation),
      ...entered(situation),
      ...dangerous(situation),
      ...eitherKind(situation),
      ...notReadOn(situation, 'isolation'),
    ])
  },
})

const printed = (situation: PairSituation): Judgement[] =>
  hazardsOf(situation, [live, 'autotransformer as a supply']).flatMap((hazard) =>
    hazard.meaning === 'autotransformer as a supply' && situation.device.takesMains
      ? judgeHazard(hazard, 'caution', {
          why: say`It changes the voltage and does not isolate: what is wrong or live in the machine stays so.`,
          action: say`Check its rating against what the machine draws, and that the machine itself is isolated from its mains.`,
        })
      : judgeHazard(hazard),
  )

/** What was found of the supply in hand; words on its plate stand beside it. */
function entered({ supply }: PairSituation): Judgement[] {
  const isIsolated = supply.facts.isolated
  if (isIsolated == null) return []
  const part = supply.called === 'machine' ? say`machine’s chassis` : say`supply’s output`
  if (isIsolated)
    return [
      clear(() => ({
        title: say`The ${part} is isolated from the mains: its insulation was tested`,
        why: say`What a person touches at the machine is then not joined to the mains.`,
        working: [],
        action: null,
        sources: [isolationInsulation.source],
      })),
    ]
  const { why, action } = hazardMeanings[live]
  return [
    stop(() => ({
      title: say`The ${part} is not isolated from the mains: so it was entered`,
      why,
      working: [],
      action: [action, leaveIt],
      sources: [isolationInsulation.source, hazardRule],
    })),
  ]
}

/** Whether a voltage is more than the limits of extra-low voltage [V]. */
export const isDangerous = ({ kind }: Pick<Rail, 'kind'>, voltageV: number): boolean =>
  Math.abs(voltageV) > (kind === 'ac' ? touchAc : touchDc).value

/**
 * The output that is dangerous to touch, and the greatest it may stand at: of its plate, of a reading of the only one, and of what an
 * unregulated transformer gives with nothing connected, as far as its size is known [V]; what is not known to be regulated may be one.
 */
export function dangerousRail(
  supply: PreparedSupply,
  mainsRatio: number | null = null,
): { rail: Rail; voltageV: number } | null {
  const { rails, measured } = supply
  const read = rails.length === 1 ? [measured.offLoadV ?? 0, measured.loadedV ?? 0] : []
  for (const rail of rails) {
    const mayRise = regulatedOf(supply, rail) !== true && supply.technology !== 'switch-mode'
    const estimate = mayRise ? ratingEstimate({ mainsRatio }, rail) : null
    const voltageV = Math.max(
      ...[rail.voltageV, rail.voltageMaxV ?? 0, ...read, estimate?.highV ?? 0].map((value) => Math.abs(value)),
    )
    if (isDangerous(rail, voltageV)) return { rail, voltageV }
  }
  return null
}

/** A transformer for a machine that takes mains gives mains, through a mains socket; anything else that high is met by no one here. */
function dangerous({ supply, device, mainsRatio }: PairSituation): Judgement[] {
  const found = dangerousRail(supply, mainsRatio)
  const { outerMm, innerMm } = supply.plug
  if (found === null || (device.takesMains && outerMm === null && innerMm === null)) return []
  const { rail, voltageV } = found
  return [
    unknown(() => ({
      title: say`${railText(rail)}${isDangerous(rail, rail.voltageMaxV ?? rail.voltageV) ? say`` : say`, which may stand at ${volts(voltageV, 3, 'up')},`} is dangerous to touch: more than ${volts(touchDc.value)} DC or ${volts(touchAc.value)} AC`,
      why: say`Plug, jack and every test lead on it can give a fatal shock, and its capacitors keep it after the mains is off.`,
      working: [],
      action: [say`Do not measure, load or connect it.`, leaveIt],
      sources: [touchDc.source, touchAc.source],
    })),
  ]
}

/** A set for AC and DC mains has no mains transformer: its chassis may be joined to the mains. */
function eitherKind({ supply }: PairSituation): Judgement[] {
  if (!says(supply.facts.label, 'mains of either kind') || supply.technology === 'switch-mode') return []
  if (supply.facts.isolated === true) return []
  return [
    unknown(() => ({
      title: say`The plate takes AC and DC mains: there is no mains transformer in it, and nothing says what isolates it`,
      why: say`In sets for both kinds the chassis is usually joined to one side of the mains: touching it, or anything plugged into it, can kill.`,
      working: [],
      action: [say`Do not plug it in, and touch no metal of it.`, leaveIt],
      sources: [hazardRule],
    })),
  ]
}

type Pole = 'positive' | 'negative' | 'none'
type Side = 'supply' | 'machine'

/** A pole that a side joins to its earth or case, as its plate says or as it was entered. */
interface Joined {
  on: Side
  pole: Pole
  /** how it is known, as the beginning of a sentence */
  says: Phrase
}

const poleWords: Record<Pole, string> = { positive: 'its plus', negative: 'its minus', none: 'neither pole' }

/** What is known of a side's pole on earth or case: its plate's words first, then the entry. */
function joinedOn(situation: PairSituation, on: Side): Joined[] {
  const printed = hazardsOf(situation, [positive, negative]).filter((hazard) => hazard.on === on)
  const entered = on === 'supply' ? situation.supply.facts.outputEarthed : situation.device.facts.chassis
  const to = on === 'supply' ? 'earth' : 'its case'
  return [
    ...printed.map(
      (hazard): Joined => ({
        on,
        pole: hazard.meaning === positive ? 'positive' : 'negative',
        says: hazardTitle(hazard),
      }),
    ),
    ...(entered == null
      ? []
      : [{ on, pole: entered, says: say`The ${on} joins ${poleWords[entered]} to ${to}: so it was entered` }]),
  ]
}

const shortedThrough = say`Where both meet the same earth, through a cord, a screen or another cable, the supply is short-circuited through the machine.`
const findPoles = say`Find out, unplugged and apart, which pole of each is joined to its case or to any earth: by its own cord, a screen, an aerial or another machine. Use a supply whose output is joined to nothing.`

/**
 * Poles on earth and case, whether printed or entered. A side of which two things are said is not known; the plus of one side against the
 * minus of the other shorts the supply, and a plus alone shorts whatever else meets the same earth: known to be harmless only where
 * the other side joins nothing, or the same pole, and then only as long as nothing else is joined to them.
 */
function poles(situation: PairSituation): Judgement[] {
  const sides = [joinedOn(situation, 'supply'), joinedOn(situation, 'machine')] as const
  const all = sides.flat()
  const against = sides.flatMap((said) => {
    const [first] = said
    const other = said.find(({ pole }) => pole !== first?.pole)
    return first && other ? [[first, other] as const] : []
  })
  const [supply, machine] = sides
  const clash = supply.flatMap((one) =>
    machine.flatMap((other) =>
      one.pole !== 'none' && other.pole !== 'none' && one.pole !== other.pole ? [[one, other] as const] : [],
    ),
  )
  const plus = all.find(({ pole }) => pole === 'positive')
  const told = (outcome: typeof unknown, said: readonly Joined[], why: Phrase | string, action: Phrase | string) => [
    outcome(() => ({
      title: joined(
        said.map(({ says }) => says),
        say`; `,
      ),
      why,
      working: [],
      action,
      sources: [ratingPlate, hazardRule],
    })),
  ]
  if (clash[0]) return told(unknown, clash[0], shortedThrough, findPoles)
  if (against[0]) return told(unknown, against[0], say`One of the two is wrong. ${shortedThrough}`, findPoles)
  if (!plus) return []
  const { why, action } = hazardMeanings[positive]
  const counterpart = plus.on === 'supply' ? machine : supply
  if (counterpart.length === 0) return told(unknown, [plus], why, action)
  return told(
    caution,
    [plus, ...counterpart],
    why,
    say`Join nothing else to the two: no screen, aerial or other machine that meets an earth.`,
  )
}
