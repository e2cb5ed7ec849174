import { prepareCase } from '../../../chain/case/case.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import { aroundOf } from '../../../examine/around.js'
import { say, type Words } from '../../../words/phrase.js'
import { volts } from '../../../words/quantity.js'

/** What a reading may be of, with its unit, and how it was read. */
export interface ReadingChoice {
  value: string
  key: string
  unit: string
  state: 'open' | 'loaded' | 'warm' | null
  label: Words
}

const stateWords = { open: say`open`, loaded: say`loaded`, warm: say`warm` }

/** What can be read of a case: its lamp, its outputs in three states, their ripple, the machine. */
export function readingChoices(request: CheckRequest): ReadingChoice[] {
  const { rails } = aroundOf(prepareCase(request), null)
  const choice = (key: string, unit: string, label: Words, state: ReadingChoice['state'] = null): ReadingChoice => ({
    value: [key, unit, ...(state ? [state] : [])].join(':'),
    key,
    unit,
    state,
    label,
  })
  return [
    choice('lamp', 'V', say`Across the lamp`),
    ...rails.flatMap((rail, index) => {
      const name = say`Output ${index + 1}, ${volts(rail.voltageV)}`
      return [
        ...(['open', 'loaded', 'warm'] as const).map((state) =>
          choice(`output-${index + 1}`, 'V', say`${name}, ${stateWords[state]}`, state),
        ),
        choice(`ripple-${index + 1}`, 'V', say`${name}, ripple`),
        choice(`output-${index + 1}`, 'Ω', say`${name}, to ground`),
      ]
    }),
    choice('ripple-frequency', 'Hz', say`Frequency of the ripple`),
    choice('input', 'Ω', say`At the machine’s input`),
    choice('current', 'A', say`What the machine draws`),
    choice('case', 'V', say`From the case to earth, by a qualified person`),
  ]
}
