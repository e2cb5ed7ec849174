import { mendedKey } from '../../examine/examineRequest.js'
import { causes } from '../../tables/causes.js'
import { listed, say } from '../../words/phrase.js'
import { prose } from '../../words/prose.js'
import { tell } from '../../words/tell.js'
import type { Job, Stop } from './job.js'

/** What was confirmed and is not mended holds a job, until it is told that what it may have taken with it was looked at too. */
export function examinedStops({ examined }: Pick<Job, 'examined'>): Stop[] {
  const found = examined?.found ?? []
  const confirmed = new Map(found.filter(({ result }) => result === 'confirmed').map(({ cause, at }) => [cause, at]))
  return causes.flatMap(({ key, cause, mayHaveTaken, part }): Stop[] => {
    const at = confirmed.get(key)
    if (at === undefined || confirmed.has(mendedKey(key)) || (part === null && mayHaveTaken.length === 0)) return []
    const taken =
      mayHaveTaken.length > 0
        ? say` and look, power off, at what it may have taken with it: ${listed(mayHaveTaken.map(prose))}`
        : say``
    return [
      {
        of: `examined-${key}`,
        key: null,
        where: 'What was examined',
        at,
        title: tell(say`Confirmed: ${prose(cause)}.`),
        action: tell(say`Mend it${taken}.`),
      },
    ]
  })
}
