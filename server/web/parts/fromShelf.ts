import { type Case, prepareCase } from '../../chain/case/case.js'
import type { CheckRequest } from '../../chain/case/request.js'
import { mayBeFed } from '../../chain/machineAlone.js'
import { checkValues } from '../../facts/address.js'
import type { Store } from '../../store/store.js'
import { type Phrase, say } from '../../words/phrase.js'
import { type MatchingSupply, shelfMatching } from './shelfMatching.js'

/** What the shelf has for a machine that has no supply. */
export interface FromShelf {
  /** one sentence: how many, or why none */
  says: Phrase
  /** best first; none that a stop stands against */
  offered: MatchingSupply[]
}

/** Whether a check is of a machine, and nothing of a supply was entered. */
export const lacksSupply = ({ arrangement, supply }: CheckRequest): boolean =>
  arrangement === 'machine-only' ||
  ((arrangement ?? 'separate') === 'separate' &&
    Object.values(checkValues({ site: {}, supply, device: {} })).every((value) => value === ''))

/** Judges every supply of the shelf for a machine at a place, as the matrix does. */
export async function fromShelf(store: Store, { site, device, readings }: CheckRequest): Promise<FromShelf> {
  const alone = prepareCase({ arrangement: 'machine-only', site, supply: {}, device, readings })
  if (!mayBeFed(alone.device)) return { says: whyNone(alone.device), offered: [] }
  const all = await shelfMatching(store).supplies(alone.device, alone.site)
  const offered = all.filter(({ verdict }) => verdict !== 'do-not-connect')
  return { says: howMany(all.length, offered.length), offered }
}

const whyNone = ({ rails }: Case['device']): Phrase =>
  rails.length === 0
    ? say`Nothing on the shelf is offered before it is known what the machine takes.`
    : say`Nothing on the shelf is offered: the machine takes the mains, or what is dangerous to touch.`

function howMany(kept: number, offered: number): Phrase {
  if (kept === 0) return say`The shelf holds no supply.`
  if (offered === 0)
    return kept === 1
      ? say`The one supply on the shelf is not offered: a stop stands against it.`
      : say`None of the ${kept} supplies on the shelf is offered: a stop stands against each.`
  return kept === 1
    ? say`The one supply on the shelf; the cord set is left to the check of the pair.`
    : say`${offered} of ${kept} supplies on the shelf, best first; the cord set is left to the check of a pair.`
}
