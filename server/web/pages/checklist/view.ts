import type { Checklist, ChecklistLine } from '../../../plan/checklist.js'
import type { Words } from '../../../words/phrase.js'
import { head, type PageHead } from '../../page.js'
import { verdictWords } from '../../parts/verdictWords.js'

export interface ChecklistPage {
  page: PageHead
  /** null: a line to write it on */
  caseName: string | null
  /** the day it was printed, "2026-11-25" */
  date: string
  dataVersion: string
  verdict: string
  stages: { number: number; title: Words; pause: Words | null; lines: readonly ChecklistLine[] }[]
  /** where the page leads back to */
  back: { href: string; text: string }
}

export function checklistView(
  checklist: Checklist,
  { caseName, dataVersion, now, back }: Pick<ChecklistPage, 'caseName' | 'dataVersion' | 'back'> & { now: number },
): ChecklistPage {
  return {
    page: head(caseName === null ? 'Bench checklist' : `Bench checklist: ${caseName}`, null),
    caseName,
    date: new Date(now).toISOString().slice(0, 10),
    dataVersion,
    verdict: verdictWords[checklist.verdict].title,
    stages: checklist.stages.map((stage, index) => ({ number: index + 1, ...stage })),
    back,
  }
}
