import { says } from '../plate/sayings.js'
import { type HazardMeaning, hazardMeanings, hazardRule } from '../tables/hazardWords.js'
import { isolationInsulation } from '../tables/safetyTestLimits.js'
import { touchAc, touchDc } from '../tables/thresholds.js'
import { say } from '../words/phrase.js'
import { volts } from '../words/quantity.js'
import type { PairSituation, PreparedSupply, Rail } from './case/situation.js'
import { hazardsOf, hazardTitle, judgeHazard, leaveIt } from './hazardFinding.js'
import { clear, type Judgement, stop, together, unknown } from './judgement.js'
import { railText } from './matching/railText.js'
import { notReadOn } from './openPhrases.js'
import { pairTopic } from './topic.js'

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
      rule: say`A plate says that the plus is joined to earth or case, or supply and machine join different poles to it; it speaks of isolation in words that were not read; the unit is made for mains of either kind, AC or DC, and is no switch-mode one; or its output is dangerous to touch.`,
      example: { device: { label: 'POSITIVE EARTH' } },
    },
    caution: {
      rule: say`The supply is an autotransformer, and the machine takes mains itself.`,
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
      ...polesEntered(situation),
      ...entered(situation),
      ...dangerous(situation),
      ...eitherKind(situation),
      ...notReadOn(situation, 'isolation'),
    ])
  },
})

const printed = (situation: PairSituation): Judgement[] =>
  hazardsOf(situation, isolationMeanings).flatMap((hazard) =>
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
  if (isIsolated)
    return [
      clear(() => ({
        title: say`The supply’s output is isolated from the mains: its insulation was tested`,
        why: say`What a person touches at the machine is then not joined to the mains.`,
        working: [],
        action: null,
        sources: [isolationInsulation.source],
      })),
    ]
  const { why, action } = hazardMeanings[live]
  return [
    stop(() => ({
      title: say`The supply’s output is not isolated from the mains: so it was entered`,
      why,
      working: [],
      action: [action, leaveIt],
      sources: [isolationInsulation.source, hazardRule],
    })),
  ]
}

/** The output that is dangerous to touch: more than the limits of extra-low voltage. */
export const dangerousRail = ({ rails }: Pick<PreparedSupply, 'rails'>): Rail | null =>
  rails.find(
    ({ kind, voltageV, voltageMaxV }) =>
      Math.max(Math.abs(voltageV), Math.abs(voltageMaxV ?? 0)) > (kind === 'ac' ? touchAc : touchDc).value,
  ) ?? null

/** A transformer for a machine that takes mains gives mains, through a mains socket; anything else that high is met by no one here. */
function dangerous({ supply, device }: PairSituation): Judgement[] {
  const rail = dangerousRail(supply)
  const { outerMm, innerMm } = supply.plug
  if (rail === null || (device.takesMains && outerMm === null && innerMm === null)) return []
  return [
    unknown(() => ({
      title: say`${railText(rail)} is dangerous to touch: more than ${volts(touchDc.value)} DC or ${volts(touchAc.value)} AC`,
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

/** The same as it was entered of both sides. */
function polesEntered({ supply, device }: PairSituation): Judgement[] {
  const { outputEarthed } = supply.facts
  const { chassis } = device.facts
  const clash =
    (outputEarthed === 'positive' && chassis === 'negative') || (outputEarthed === 'negative' && chassis === 'positive')
  if (!clash) return []
  const pole = (joined: string): string => (joined === 'positive' ? 'plus' : 'minus')
  return [
    unknown(() => ({
      title: say`The supply joins its ${pole(outputEarthed)} to earth, the machine its ${pole(chassis)} to its case`,
      why: say`Where both meet the same earth, through a cord, a screen or another cable, the supply is short-circuited through the machine.`,
      working: [],
      action: say`Find out, unplugged and apart, whether the machine’s case is joined to any earth: by its own cord, a screen, an aerial or another machine. Use a supply whose output is joined to nothing.`,
      sources: [hazardRule],
    })),
  ]
}

/** A pole of the output joined to earth, and the other of the machine joined to its case. */
function poles(situation: PairSituation): Judgement[] {
  const [plus] = hazardsOf(situation, [positive])
  const minus = hazardsOf(situation, [negative]).find(({ on }) => on !== plus?.on)
  if (!plus || !minus) return []
  return judgeHazard(plus, 'unknown', {
    title: say`${hazardTitle(plus)}; ${hazardTitle(minus)}`,
    why: say`Where both meet the same earth, through a cord, a screen or another cable, the supply is short-circuited through the machine.`,
  })
}
