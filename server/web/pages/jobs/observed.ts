import { noObservations, type Observations, observationLabels } from '../../../bench/jobs/job.js'
import { figures } from '../../../facts/address.js'
import type { Words } from '../../../words/phrase.js'
import { amperes } from '../../../words/quantity.js'

/** What is written down of a first power-up: each observation with its box in the form, and how it is called. */
const rows = Object.entries(observationLabels).map(([key, label]) => {
  const of = key as keyof Observations
  return { of, box: of === 'drawnA' ? 'drawn' : of, label }
})

/** Every box of the form of name and observations, with how it is called. */
export const detailLabels: Readonly<Record<string, string>> = {
  name: 'Name of the job',
  ...Object.fromEntries(rows.map(({ box, label }) => [box, label])),
}

export const worksChoices = [
  { value: 'yes', label: 'Yes' },
  { value: 'partly', label: 'In part' },
  { value: 'no', label: 'No' },
] as const

/** What is kept, as the boxes hold it: a current with its unit, as a bare number of amperes is asked about. */
export const boxesOf = (kept: Observations): Record<string, string> =>
  Object.fromEntries(
    rows.map(({ of, box }) => {
      const value = kept[of]
      return [box, typeof value === 'number' ? `${figures(value)} A` : (value ?? '')]
    }),
  )

/** What the boxes hold, as it is kept; a current is read by whoever knows its unit. */
export const observedOf = (
  text: (box: string) => string | null,
  read: Pick<Observations, 'drawnA' | 'works'>,
): Observations => ({
  ...noObservations,
  ...Object.fromEntries(rows.map(({ of, box }) => [of, text(box)])),
  ...read,
})

/** What was written down, a line each; of its work also that nobody saw it yet. */
export const observedLines = (kept: Observations): { label: string; value: Words }[] =>
  rows.flatMap(({ of, label }) => {
    const value = kept[of]
    if (of === 'works')
      return { label, value: worksChoices.find((choice) => choice.value === value)?.label ?? 'Not seen yet' }
    return value === null ? [] : { label, value: typeof value === 'number' ? amperes(value) : value }
  })
