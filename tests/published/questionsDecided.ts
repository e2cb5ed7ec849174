import type { CheckRequest } from '../../server/chain/case/request.js'
import type { ToldFinding } from '../../server/chain/finding.js'
import { changed } from '../chain/cases.js'
import { assess } from '../support/told.js'
import type { AskedQuestion } from './questions.js'

/** A whole cord set for the sockets of a place, which no question says anything of. */
const cords: Record<string, { socket: string; cord: CheckRequest['cord'] }> = {
  DE: { socket: 'F', cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false } },
  other: { socket: 'A', cord: { plug: 'NEMA 1-15', connector: 'C7', ratedV: 125, ratedA: 7, earthed: false } },
}

const open = ({ outcome }: ToldFinding): boolean => outcome !== 'clear'

/** At which place among what is not clear the finding stands that answers a question, and where it would with a cord described. */
export function deciding({ check, decides }: AskedQuestion) {
  const placeIn = (request: CheckRequest): { place: number; before: ToldFinding[] } => {
    const found = assess(request).findings.filter(open)
    const at = found.findIndex(({ topic }) => topic === decides)
    return { place: at + 1, before: found.slice(0, Math.max(0, at)) }
  }
  const described = cords[check.site.country ?? ''] ?? cords.other
  const withCord = changed(
    {
      site: { socket: described?.socket ?? null },
      supply: { protectionClass: 'II', inlet: 'C8' },
      cord: described?.cord ?? null,
    },
    check,
  )
  return { ...placeIn(check), placeWithCord: placeIn(withCord).place }
}
