import type { Words } from '../../../words/phrase.js'
import { head, type PageHead } from '../../page.js'
import { type FactField, factFields } from '../../parts/factFields.js'
import type { Choice, FormFault, FormState } from '../../parts/formState.js'
import { shownRows } from '../../parts/shownRows.js'
import { choicesOf, groups, rowName, single } from './form.js'

interface Box {
  name: string
  label: string
  unit?: string
  choices: Choice[] | null
}

export interface AtHandModel {
  page: PageHead
  form: FormState
  place: FactField[]
  groups: { legend: string; hint: string; rows: Box[][] }[]
  single: Box[]
  /** said once after it was kept */
  kept: boolean
}

export const atHandView = (form: FormState, faults: readonly FormFault[], kept: boolean): AtHandModel => ({
  page: head('At hand' satisfies Words, 'at-hand', [...faults]),
  form,
  place: factFields(['country', 'socket']),
  groups: Object.entries(groups).map(([name, { legend, hint, boxes, choices }]) => ({
    legend,
    hint,
    rows: Array.from({ length: shownRows(name, 2, form) }, (_, index): Box[] => [
      ...Object.entries(choices).map(([part, { label, of }]) => ({
        name: rowName(name, index + 1, part),
        label,
        choices: choicesOf(of),
      })),
      ...Object.entries(boxes).map(([part, { label, asked }]) => ({
        name: rowName(name, index + 1, part),
        label,
        unit: asked.unit,
        choices: null,
      })),
    ]),
  })),
  single: Object.entries(single).map(([name, { label, asked }]) => ({ name, label, unit: asked.unit, choices: null })),
  kept,
})
