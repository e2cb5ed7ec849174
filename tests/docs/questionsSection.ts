import { askedQuestions } from '../published/questions.js'
import { deciding } from '../published/questionsDecided.js'

/** The section of docs/accuracy.md about questions that were asked in public. */
export function questionsSection(): string[] {
  const decided = askedQuestions.filter(({ decides }) => decides).map((asked) => ({ asked, ...deciding(asked) }))
  const atOnce = decided.filter(({ place }) => place <= 3)
  const withCord = decided.filter(({ place, placeWithCord }) => place > 3 && placeWithCord <= 3)
  const listed = decided.filter(({ asked }) => asked.listed !== undefined)
  return [
    '## Questions asked in public',
    '',
    `${askedQuestions.length} checks made of questions that were asked in public, each with what an expert answered (\`tests/published/questions.ts\`): none is answered`,
    `otherwise. In ${decided.length} of them a finding that is not clear decides. It is among the first three that are not clear in ${atOnce.length}; in ${withCord.length} more once a cord is`,
    `described, of which the question says nothing; and further down in ${listed.length}:`,
    '',
    ...listed.map(({ asked }) => `- ${asked.question}: ${asked.listed}.`),
    '',
  ]
}
