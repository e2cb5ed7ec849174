import type { Seen } from '../tables/whatWasSeen.js'
import { type Phrase, say } from '../words/phrase.js'
import { prose } from '../words/prose.js'
import type { Around } from './around.js'
import type { Found } from './examineRequest.js'
import { handsFor, powerAt } from './hands.js'
import { examinationOf } from './order.js'
import type { Suspect } from './suspects.js'

/** What may be put under power while something that holds was seen, the least first. */
export const allowances = ['nothing', 'by a qualified person', 'behind the lamp', 'all'] as const
export type Allowance = (typeof allowances)[number]

export interface Hold {
  allows: Allowance
  /** what stands before power by the reader; null where nothing does */
  waits: Phrase | null
}

/** A result counts before power where it is known who tested, if the test is for a qualified person. */
const counts = (result: Found | undefined, qualified: boolean): boolean =>
  result !== undefined && (!qualified || (result.by ?? '').trim() !== '')

/**
 * How far something seen that holds power was examined. Nothing is put under power before each of its own causes that is examined
 * without has a result; what is left for a qualified person to examine comes before any power by the reader; and where no cause of
 * it was found, there is none but behind the lamp. Without an examination of its own that needs no power it is handed on. What was felt
 * by touch is for a qualified person until its cause is found.
 *
 * @param suspects  every cause that may be behind what was seen, excluded ones too
 */
export function holdOf(
  seen: Seen,
  suspects: readonly Suspect[],
  results: ReadonlyMap<string, Found>,
  around: Around,
): Hold {
  const own = suspects
    .filter(({ explains }) => explains.includes(seen))
    .map(({ cause }) => ({ examination: examinationOf(cause), result: results.get(cause.key) }))
  const words = prose(seen.words)
  const qualified = ({ examination }: (typeof own)[number]): boolean => handsFor(examination, around) === 'qualified'
  const left = own.filter((one) => !counts(one.result, qualified(one)))
  const found = own.some(({ result }) => result?.result === 'confirmed')
  if (seen.place === 'touch')
    return left.length === 0 && found
      ? { allows: 'all', waits: null }
      : {
          allows: 'by a qualified person',
          waits: say`${words}: nothing is put under power, but by a qualified person, before its cause is found`,
        }
  const unpowered = own.filter(({ examination }) => powerAt(examination) === 'none')
  if (unpowered.length === 0)
    return { allows: 'nothing', waits: say`${words}: nothing is known here that can be looked at without power` }
  const first = left.filter((one) => unpowered.includes(one))
  if (first.some((one) => one.result === undefined))
    return { allows: 'nothing', waits: say`${words}: what can be looked at without power comes first` }
  if (first.length > 0)
    return { allows: 'nothing', waits: say`${words}: what a qualified person tests comes first, with who tested it` }
  if (left.some(qualified))
    return { allows: 'by a qualified person', waits: say`${words}: what a qualified person tests comes first` }
  return { allows: found ? 'all' : 'behind the lamp', waits: null }
}

/** The least that several allow. */
export const leastOf = (allowed: readonly Allowance[]): Allowance =>
  allowances.find((one) => allowed.includes(one)) ?? 'all'
