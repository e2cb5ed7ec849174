import type { Assessment } from '../../jobs/job.js'
import type { Checklist, ChecklistLine } from '../../plan/checklist.js'
import type { Told } from '../../words/tell.js'
import { head, type PageHead } from '../page.js'
import { verdictWords } from './verdictWords.js'

export interface ChecklistPage {
  page: PageHead
  /** null: a line to write it on */
  caseName: string | null
  /** the day it was printed, "2026-11-25" */
  date: string
  dataVersion: string
  verdict: string
  stages: { number: number; title: string; pause: string | null; lines: Told<ChecklistLine>[] }[]
  /** where the page leads back to */
  back: { href: string; text: string }
}

export function checklistView(
  checklist: Told<Checklist>,
  assessment: Assessment,
  { caseName, now, back }: { caseName: string | null; now: number; back: ChecklistPage['back'] },
): ChecklistPage {
  return {
    page: head(caseName === null ? 'Bench checklist' : `Bench checklist: ${caseName}`, null),
    caseName,
    date: new Date(now).toISOString().slice(0, 10),
    dataVersion: assessment.dataVersion,
    verdict: verdictWords[checklist.verdict].title,
    stages: checklist.stages.map((stage, index) => ({ number: index + 1, ...stage })),
    back,
  }
}
