import { assess } from '../../../chain/assess.js'
import { exampleCheck } from '../../../chain/example.js'
import { type Finding, type Outcome, outcomes, type TopicName } from '../../../chain/finding.js'
import { topics } from '../../../chain/index.js'
import { topicTag } from '../../../chain/topicTag.js'
import { commonPractice } from '../../../tables/source.js'
import { say, type Words } from '../../../words/phrase.js'
import { outcomeWords } from '../../parts/verdictWords.js'
import { checkAddress } from '../check/checkAddress.js'
import { slug, type Table } from './pageTable.js'

interface Example {
  finding: Finding
  /** the whole check, as a page */
  address: string
}

/** What a topic comes to by one outcome: its rule with a check that was run, or why it does not occur. */
export interface Catalogued {
  id: string
  topic: TopicName
  outcome: Outcome
  rule: Words
  example: Example | null
}

/**
 * Every topic by every outcome, in chain order, worst first. The examples are checks that are run here.
 *
 * @throws Error where an example does not come to its outcome
 */
export const catalogue = (): Catalogued[] =>
  topics.flatMap(({ name: topic, when }) =>
    outcomes.map((outcome): Catalogued => {
      const entry = when[outcome]
      const id = slug(topic, outcome)
      if ('never' in entry) return { id, topic, outcome, rule: say`Does not occur. ${entry.never}`, example: null }
      const check = exampleCheck(entry.example)
      const finding = assess(check).findings.find((one) => one.topic === topic && one.outcome === outcome)
      if (!finding) throw new Error(`the example of ${topic}, ${outcome} does not come to that`)
      return { id, topic, outcome, rule: entry.rule, example: { finding, address: checkAddress(check) } }
    }),
  )

const doesNotOccur = commonPractice('Rule of this project', 'an outcome that a topic has no use for')

export const findingsTable: Table = {
  name: 'findings',
  title: 'Findings',
  intro:
    'Every topic a check judges and every outcome it can come to: the rule, where it comes from, and a made-up check that comes to it. Nothing here says that a thing may be relied upon; the best outcome is that no conflict was found in what was entered.',
  columns: [{ title: 'Topic and outcome' }, { title: 'Rule' }, { title: 'Example' }],
  rows: () =>
    catalogue().map(({ id, topic, outcome, rule, example }) => ({
      id,
      cells: [
        `${topicTag(topic)}: ${outcomeWords[outcome]}`,
        rule,
        example && [{ text: example.finding.title, href: example.address }],
      ],
      sources: example ? example.finding.sources : [doesNotOccur],
    })),
}
