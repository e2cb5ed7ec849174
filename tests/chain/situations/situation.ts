import type { CheckRequest } from '../../../server/chain/case/request.js'
import type { Outcome, TopicName } from '../../../server/chain/finding.js'
import { changed } from '../cases.js'

type Changes = Parameters<typeof changed>[0]

/** What a restorer meets, and what must come of it by the rules or by the trade: written down before the program was asked. */
export interface Situation {
  name: string
  /** why nothing milder will do, and whose word that is */
  because: string
  request: CheckRequest
  /** the worst finding on each topic is one of these; '-' where the topic has nothing to judge */
  is: Partial<Record<TopicName, readonly (Outcome | '-')[]>>
  /** words that one of the topic's findings has to hold */
  says?: Partial<Record<TopicName, RegExp>>
}

/** The matching case with its supply known by its plate alone, in another place. */
export const plated = (
  site: CheckRequest['site'],
  label: string,
  supply: NonNullable<Changes['supply']> = {},
  rest: Omit<Changes, 'site' | 'supply'> = {},
): CheckRequest =>
  changed({
    site: { country: null, socket: null, ...site },
    supply: {
      label,
      outputs: null,
      regulated: null,
      technology: null,
      protectionClass: null,
      ...supply,
      input: { voltages: null, frequenciesHz: null, currentA: null, ...supply.input },
      plug: { polarity: null, ...supply.plug },
    },
    ...rest,
  })

export const open = ['unknown', 'stop'] as const
export const heedful = ['caution', 'unknown', 'stop'] as const
export const passes = ['clear'] as const
