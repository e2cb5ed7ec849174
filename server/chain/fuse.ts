import type { Finding } from './finding.js'
import type { FuseRequest } from './fuseRequest.js'
import { reviewFuse } from './fuseReview.js'
import { type Judgement, judging, type Text, together } from './judgement.js'
import { loadAtReach } from './loadCurrent.js'
import { windowsInUse } from './plateWindow.js'
import type { MainsSituation, MainsTopic } from './situation.js'
import { qualifiedHands, ratingPlate } from './words.js'

const judged = judging('fuse')

/** The mains-side fuse-link: what is fitted against what the plate prescribes, through the fuse review. */
export const fuse: MainsTopic = {
  topic: 'fuse',
  judge(situation) {
    const { fitted, prescribed } = situation.supply.fuse
    if (fitted === null && prescribed === null) return []
    const request = fuseRequestOf(situation)
    if (!request) return [judged.unknown(() => voltageNotKnown(fitted ?? prescribed ?? ''))]
    const found = together(reviewFuse(request).findings.map(asJudgement))
    if (situation.reach.voltageV !== null) return found
    // judged at the plate's own voltage: what it refuses stays refused, what it allows is not known for this mains
    return found.map((judgement) =>
      judgement.outcome === 'stop' ? judgement : judged.unknown(() => otherVoltage(judgement)),
    )
  },
}

const asJudgement = ({ outcome, title, why, working, action, sources }: Finding): Judgement => ({
  topic: 'fuse',
  outcome,
  say: () => ({ title, why, working, action, sources: sources.length > 0 ? sources : [ratingPlate] }),
})

/**
 * The question to the fuse review that a check amounts to, for the link to its page as well.
 * Null where no voltage is known to review it at.
 */
export function fuseRequestOf(situation: Pick<MainsSituation, 'supply' | 'reach'>): FuseRequest | null {
  const { supply, reach } = situation
  const { windows, decidedBy } = windowsInUse(supply.input)
  const [window] = windows
  const voltageV = reach.voltageV ?? window?.max ?? null
  if (voltageV === null) return null
  const single = decidedBy === 'one' && window && window.min === window.max ? window.min : null
  return {
    marking: supply.fuse.fitted,
    prescribed: supply.fuse.prescribed,
    position: 'mains',
    circuit: { voltageV, currentA: loadAtReach({ supply, reach })?.currentA ?? null },
    formerVoltageV: single !== null && single !== voltageV ? single : null,
  }
}

const voltageNotKnown = (marking: string): Text => ({
  title: `A fuse-link “${marking.slice(0, 40)}” cannot be judged: the mains voltage is not known`,
  why: 'A link of too low a voltage rating may burst when it clears a fault.',
  working: [],
  action: `Enter the place where it will be used, and the input voltage on the plate. The holder is opened with the cord unplugged only. ${qualifiedHands}`,
  sources: [ratingPlate],
})

const otherVoltage = (judgement: Judgement): Text => {
  const text = judgement.say()
  return {
    ...text,
    title: `${text.title}; at which mains voltage it will work is not known`,
    action: `Enter the place where it will be used. ${text.action ?? ''}`.trim(),
  }
}
