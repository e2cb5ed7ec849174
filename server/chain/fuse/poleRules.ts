import { bothPoles, likeWithLike } from '../../tables/fuseSelection.js'
import { say } from '../../words/phrase.js'
import { caution, clear } from '../judgement.js'
import type { Rule } from './fuseSituation.js'

/** How many conductors of the mains are fused, and what a single link leaves live. */
export const poles: Rule = ({ fitted, prescription, request }) => {
  if (request.position !== 'mains' || (!prescription && fitted.ratedA === null)) return []
  const links = prescription?.link.links ?? fitted.links ?? 1
  if (links >= 2)
    return [
      caution(() => ({
        title: say`${links} links are named: one in each conductor of the mains`,
        why: say`With one of them open, the other conductor is still joined to the inside.`,
        working: [],
        action: say`With the plug out, look at each of them: all must be as prescribed.`,
        sources: [bothPoles, likeWithLike.replacing],
      })),
    ]
  if (request.live === 'both')
    return [
      caution(() => ({
        title: say`One link in a supply with two live conductors: when it has opened, the other conductor stays live`,
        why: say`A single-pole link or switch interrupts one of two live conductors: the inside stays at line voltage to earth, and a fault from the other conductor to earth is not broken by it.`,
        working: [],
        action: say`Treat the inside as live, whatever the link or the switch says, until the plug is out.`,
        sources: [bothPoles],
      })),
    ]
  if (request.live === 'either')
    return [
      clear(() => ({
        title: say`One link, and a plug that goes in both ways round: the link and the switch may be in either conductor`,
        why: say`Open or switched off, they can leave the whole inside live: only the pulled plug makes it dead.`,
        working: [],
        action: null,
        sources: [bothPoles],
      })),
    ]
  return []
}
