import type { ToldFinding } from '../../chain/finding.js'
import { alarmIn } from '../../plan/alarm.js'
import { commonPractice } from '../../tables/source.js'
import { say } from '../../words/phrase.js'
import { tell } from '../../words/tell.js'
import type { ReadingLimits, Tick } from './job.js'
import { firstOfAll } from './readingFinding.js'
import { topicAt } from './topicAt.js'

const seenSource = commonPractice(
  'What is seen, heard and smelt at the bench',
  'a word that tells of burning, arcing, bursting, leaking or a shock is a stop until its cause is known; see the table of such words',
)

/**
 * What a step without a number means, once it was done: as it should be, or a stop, by what was answered or by what was written.
 *
 * @param step  null where the plan has no such step
 */
export function seenFinding({ as, words }: Pick<Tick, 'as' | 'words'>, step: ReadingLimits | null): ToldFinding {
  const alarm = words === null ? null : alarmIn(words)
  const rest = {
    topic: topicAt(step?.link, null),
    actions: [],
    sources: [seenSource],
    working: step ? [step.text] : [],
  }
  if (as === 'as-expected' && alarm === null && (step === null || step.sent))
    return tell({
      ...rest,
      outcome: 'unknown',
      title: say`Done; the plan of this job has no such step.`,
      why: 'What the plan does not ask for tells nothing about what to do next.',
      action: 'Go on by the steps of the plan.',
    })
  if (as === 'as-expected' && alarm === null)
    return tell({
      ...rest,
      outcome: 'clear',
      title: say`Done, as it should be.`,
      why: 'Nothing else was seen.',
      action: null,
    })
  return tell({
    ...rest,
    outcome: 'stop',
    title:
      alarm === null
        ? say`Not as it should be${words === null ? '' : say`: “${words}”`}.`
        : say`Written down: “${words ?? ''}”.`,
    why:
      alarm === null
        ? say`The step says to stop if ${step?.stopIf ?? 'it is not as expected'}.`
        : say`“${alarm}” tells of a fault.`,
    action: firstOfAll({ power: step?.power, unit: null }),
  })
}
