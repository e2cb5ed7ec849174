import { readFuseMarking } from '../plate/fuseMarking.js'
import { plugByName } from '../tables/sockets.js'
import { say } from '../words/phrase.js'
import { actionsOf, nearWiring } from './action.js'
import { windowsInUse } from './case/plateWindow.js'
import type { MainsSituation, PreparedSite } from './case/situation.js'
import type { FuseRequest } from './fuse/fuseRequest.js'
import { judgeFuse } from './fuse/review.js'
import { type Judgement, type Text, together, unknown } from './judgement.js'
import { loadAtReach } from './matching/loadCurrent.js'
import { mainsTopic } from './topic.js'
import { ratingPlate } from './words.js'

/** The mains-side fuse-link: what is fitted against what the plate prescribes, through the fuse review. */
export const fuse = mainsTopic({
  name: 'fuse',
  words: say`the mains fuse-link`,
  links: ['fuse'],
  asks: ['supply.fuse', 'site.country', 'supply.outputs.currentA', 'supply.input.powerVA'],
  when: {
    stop: {
      rule: say`The link’s rated voltage, current, speed or breaking capacity does not suit the circuit or what is prescribed.`,
      example: { supply: { fuse: 'T2A 125V' } },
    },
    unknown: {
      rule: say`The marking leaves out something that decides, or the mains voltage or the current is not known.`,
      example: { supply: { fuse: '2A' } },
    },
    caution: {
      rule: say`The link serves with something to be looked after, such as one that is quicker or smaller than prescribed.`,
      example: { supply: { fuse: 'F500mAH250V', label: 'FUSE T500mAH250V' } },
    },
    clear: {
      rule: say`Every question of the fuse review is answered without conflict.`,
      example: { supply: { fuse: 'T500mAH250V', label: 'FUSE T500mAH250V' } },
    },
  },
  judge(situation) {
    const { fitted, prescribed } = situation.supply.fuse
    if (fitted === null && prescribed === null) return []
    // a thermal cut-off printed on a sealed supply is no link that anyone fits
    if (fitted === null && readFuseMarking(prescribed ?? '').noLink) return []
    const request = fuseRequestOf(situation)
    if (!request) return [unknown(() => voltageNotKnown(fitted ?? prescribed ?? ''))]
    const found = together(judgeFuse(request))
    if (situation.reach.voltageV !== null) return found
    // judged at the plate's own voltage: what it refuses stays refused, what it allows is not known for this mains
    return found.map((judgement) => (judgement.outcome === 'stop' ? judgement : unknown(() => otherVoltage(judgement))))
  },
})

/**
 * The question to the fuse review that a check amounts to, for the link to its page as well.
 * Null where no voltage is known to review it at.
 */
export function fuseRequestOf(
  situation: Pick<MainsSituation, 'supply' | 'reach'> & Partial<Pick<MainsSituation, 'cord' | 'site'>>,
): FuseRequest | null {
  const { supply, reach, cord, site } = situation
  const plug = cord?.plug ? plugByName(cord.plug) : undefined
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
    live: site && twoLive.includes(site.source) ? 'both' : plug && !plug.polarised ? 'either' : null,
  }
}

/** Sources of which both conductors are live. */
const twoLive: readonly PreparedSite['source'][] = ['two-live', 'site-transformer']

const voltageNotKnown = (marking: string): Text => ({
  title: say`A fuse-link “${marking.slice(0, 40)}” cannot be judged: the mains voltage is not known`,
  why: say`A link of too low a voltage rating may burst when it clears a fault.`,
  working: [],
  action: nearWiring(
    say`Enter the place where it will be used, and the input voltage on the plate. The holder is opened with the cord unplugged only.`,
  ),
  sources: [ratingPlate],
})

const otherVoltage = (judgement: Judgement): Text => {
  const text = judgement.say()
  return {
    ...text,
    title: say`${text.title}; at which mains voltage it will work is not known`,
    action: [say`Enter the place where it will be used.`, ...actionsOf(text.action)],
  }
}
