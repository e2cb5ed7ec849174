import { type Cause, causes } from '../tables/causes.js'
import { causesSeen, type Likelihood, likelihoods } from '../tables/causesSeen.js'
import { likelihoodCounts, likelihoodStep } from '../tables/examineOrder.js'
import type { Source } from '../tables/source.js'
import { type Seen, whatWasSeen } from '../tables/whatWasSeen.js'
import { type Phrase, say } from '../words/phrase.js'
import { prose } from '../words/prose.js'
import { applies } from './applies.js'
import type { Around } from './around.js'
import { byCase } from './byCase.js'
import type { Read } from './readingSeen.js'

/** A cause that may be behind what was seen. */
export interface Suspect {
  cause: Cause
  likelihood: Likelihood
  /** what it explains of what was seen */
  explains: readonly Seen[]
  /** false: the case does not say whether it is of a kind that has this cause */
  sure: boolean
  because: readonly Phrase[]
  sources: readonly Source[]
}

const seenByKey = new Map(whatWasSeen.map((row) => [row.key, row]))
const causeByKey = new Map(causes.map((row) => [row.key, row]))

/** The row of something seen. @throws RangeError for a key that the table does not have */
export function seenOf(key: string): Seen {
  const row = seenByKey.get(key)
  if (!row) throw new RangeError(`nothing seen is called ${key}`)
  return row
}

export const isCause = (key: string): boolean => causeByKey.has(key)

/** The row of a cause. @throws RangeError for a key that the table does not have */
export function causeOf(key: string): Cause {
  const row = causeByKey.get(key)
  if (!row) throw new RangeError(`no cause is called ${key}`)
  return row
}

const likelier = (one: Likelihood, other: Likelihood): Likelihood =>
  likelihoods.indexOf(one) <= likelihoods.indexOf(other) ? one : other

/**
 * What may be behind what was seen, for this case: what explains more of it first, then what restorers call more common, then what
 * is surely of a kind that has it, then in the order of the table. What the case or a reading rules out is left out; what they speak for counts as common.
 */
export function suspectsOf(seen: readonly string[], reads: readonly Read[], around: Around): Suspect[] {
  const rows = causesSeen.filter((row) => seen.includes(row.seen) && applies(row.kinds, around.of) !== 'no')
  const keys = [...new Set(rows.map(({ cause }) => cause))]
  const ruledOut = new Set(reads.flatMap(({ excludes }) => excludes))
  return keys
    .filter((key) => !ruledOut.has(key))
    .flatMap((key): Suspect[] => {
      const own = rows.filter(({ cause }) => cause === key)
      const cause = causeOf(key)
      const said = byCase(key, around)
      if (said === 'against') return []
      const spoken = reads.filter(({ speaksFor }) => speaksFor.includes(key))
      const favoured = said !== null || spoken.length > 0
      return [
        {
          cause,
          likelihood: favoured ? 'common' : own.map(({ likelihood }) => likelihood).reduce(likelier),
          explains: own.map((row) => seenOf(row.seen)),
          sure: favoured || own.some((row) => applies(row.kinds, around.of) === 'yes'),
          because: [
            ...(said ? [said.because] : []),
            ...spoken.map(({ because }) => because),
            ...own.map(
              (row) =>
                say`${prose(seenOf(row.seen).words)}: ${likelihoodWords[row.likelihood]}${row.doubt ? say`. ${prose(row.doubt)}` : ''}`,
            ),
          ],
          sources: [...new Set([...own.flatMap(({ sources }) => sources), ...cause.sources])],
        },
      ]
    })
    .toSorted(
      (one, other) =>
        favour(other, reads, around) - favour(one, reads, around) ||
        other.explains.length - one.explains.length ||
        countOf(other) - countOf(one) ||
        Number(other.sure) - Number(one.sure),
    )
}

/**
 * How much a cause counts: by its likelihood, once for each thing seen that it explains; one step less where the case does not say
 * whether it is of a kind that has this cause.
 */
export const countOf = ({ likelihood, explains, sure }: Pick<Suspect, 'likelihood' | 'explains' | 'sure'>): number =>
  (likelihoodCounts[likelihood] * explains.length) / (sure ? 1 : likelihoodStep)

/** What the case or a reading speaks for stands before what only the words of restorers do. */
const favour = ({ cause }: Suspect, reads: readonly Read[], around: Around): number =>
  Number(typeof byCase(cause.key, around) === 'object' && byCase(cause.key, around) !== null) +
  reads.filter(({ speaksFor }) => speaksFor.includes(cause.key)).length

export const likelihoodWords: Readonly<Record<Likelihood, Phrase>> = {
  common: say`common`,
  sometimes: say`sometimes`,
  rare: say`rare`,
}
