import { prepareCase } from '../../chain/case/case.js'
import type { ToldFinding } from '../../chain/finding.js'
import { readPlate } from '../../plate/readPlate.js'
import type { Job, Tick } from './job.js'
import { limitsFor } from './laterLimits.js'
import { seenFinding } from './seenFinding.js'

/** A polarity that words tell of and that is not the one this job wants: of the machine's jack, else of the plug. */
function otherPolarity({ check }: Pick<Job, 'check'>, words: string): boolean {
  const { polarity } = readPlate(words, 'supply')
  if (polarity === null) return false
  const { device, supply } = prepareCase(check)
  const wanted = device.jack.polarity ?? supply.plug.polarity
  return wanted !== null && wanted !== polarity
}

/** What a step without a number means in its job: what was written beside a tick may tell of the wrong polarity. */
export function tickFinding(job: Pick<Job, 'check' | 'limits'>, tick: Pick<Tick, 'key' | 'as' | 'words'>): ToldFinding {
  const { as, words, key } = tick
  const step = limitsFor(job, key)
  if (as === 'wrong' || words === null || !otherPolarity(job, words)) return seenFinding(tick, step)
  return {
    ...seenFinding({ as: 'wrong', words }, step),
    topic: 'polarity',
    why: `“${words}” tells of another polarity than this job wants.`,
  }
}
