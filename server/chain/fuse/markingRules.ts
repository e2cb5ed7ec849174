import { readFuseMarking } from '../../plate/fuseMarking.js'
import { iecBreakingMark, iecColourCode, iecMarking, type NoLink } from '../../tables/fuseMarks.js'
import { bs1362LargestA } from '../../tables/fuseRatings.js'
import { otherThings } from '../../tables/fuseSelection.js'
import { say } from '../../words/phrase.js'
import { amperes } from '../../words/quantity.js'
import { caution, type Judgement, stop, unknown } from '../judgement.js'
import { ratingPlate } from '../words.js'
import { describe, isCounterfeit } from './fuseLink.js'
import { fitThis, type Rule, who } from './fuseSituation.js'

const protects: Readonly<Record<NoLink, string>> = {
  'thermal cut-off': 'It opens at a temperature and breaks no overload: a fault can burn on while it stays cool.',
  'resettable protector':
    'It closes again when it cools or is reset, breaks far less than a fuse-link, and feeds a fault anew.',
  'fusible resistor':
    'It is part of the circuit with its ohms, and has neither the breaking capacity nor the times of a fuse-link.',
}

const noLinkAction = say`This review judges fuse-links only. Find out what its maker prescribes in that place, with temperature, current and type, from the service manual. ${who}`

/** The print names a thermal cut-off or another protector: no fuse-link may stand in for it. */
export const otherThing: Rule = ({ prescription, fitted }) => {
  const noLink = prescription?.link.noLink
  if (!noLink) return []
  const judge = (outcome: typeof stop) =>
    outcome(() => ({
      title:
        fitted.ratedA === null
          ? say`A ${noLink} is prescribed, which is no fuse-link`
          : say`A fuse-link of ${amperes(fitted.ratedA)} is fitted where a ${noLink} is prescribed`,
      why: say`The two protect against different things: neither may stand in for the other.`,
      working: [],
      action: noLinkAction,
      sources: [otherThings],
    }))
  return [judge(fitted.ratedA === null ? unknown : stop)]
}

/** The marking itself: what could not be read and what cannot be true. */
export const marking: Rule = ({ request, fitted, fittedEntered, prescription }) => {
  if (!fittedEntered)
    return [
      unknown(() => ({
        title: say`Nothing is known of the link that is fitted`,
        why: say`Without its rating and speed nothing can be compared.`,
        working: [],
        action: say`Unplug the supply and read the cap of the link with a lens: letter, current, letter, voltage.`,
        sources: [ratingPlate],
      })),
    ]
  const { noLink } = fitted
  if (noLink)
    return [
      stop(() => ({
        title: say`What is fitted is a ${noLink}, not a fuse-link`,
        why: protects[noLink],
        working: [],
        action: prescription && prescription.link.ratedA !== null ? fitThis(prescription.link) : noLinkAction,
        sources: [otherThings],
      })),
    ]
  const found: Judgement[] = []
  const about = request.marking?.trim().slice(0, 60) ?? ''
  if (isCounterfeit(fitted))
    found.push(
      stop(() => ({
        title: about
          ? say`“${about}” cannot be a true BS 1362 link`
          : say`A link with this rating cannot be a true BS 1362 link`,
        why: say`A counterfeit link may not open on a short circuit, or may burst.`,
        working: [say`BS 1362 stops at ${amperes(bs1362LargestA.value)}`],
        action: say`Take it out of use. ${fitted.notes.join(' ')}`,
        sources: [bs1362LargestA.source],
      })),
    )
  else if (fitted.ratedA === null)
    found.push(
      unknown(() => ({
        title: about
          ? say`No rated current could be read from “${about}”`
          : say`The rated current of the fitted link is not known`,
        why: say`Without its rated current the link protects nothing that can be worked out.`,
        working:
          fitted.unread.length > 0
            ? [say`Not understood: “${fitted.unread.slice(0, 12).join(' ').slice(0, 120)}”`]
            : [],
        action: [say`Read the cap again with a lens.`, ...fitted.notes],
        sources: [iecMarking, iecBreakingMark],
      })),
    )
  else if (fitted.notes.length > 0 && request.marking)
    found.push(
      caution(() => ({
        title: say`The marking asks for a second look`,
        why: fitted.notes.join(' '),
        working: [],
        action: say`Compare the cap with what was read here.`,
        sources: [iecMarking, iecColourCode],
      })),
    )
  return found
}

const facts = ['ratedA', 'ratedV', 'characteristic', 'breaking', 'scheme'] as const

/** What was entered by hand against what the marking reads: one of them is wrong, and nobody here can say which. */
export const entered: Rule = ({ request: { marking, fuse } }) => {
  if (!marking?.trim() || !fuse) return []
  const read = readFuseMarking(marking)
  const differs = facts.filter((fact) => fuse[fact] != null && read[fact] !== null && fuse[fact] !== read[fact])
  if (differs.length === 0) return []
  const own = { ...read, ...Object.fromEntries(differs.map((fact) => [fact, fuse[fact]])) }
  return [
    unknown(() => ({
      title: say`The marking reads ${describe(read)}, ${describe(own)} was entered`,
      why: say`What follows goes by what was entered; if it is the entry that is wrong, so is all of it.`,
      working: [],
      action: say`Read the cap again with a lens, and put the marking right, or the entry.`,
      sources: [ratingPlate],
    })),
  ]
}
