import type { Finding, ToldFinding } from '../../chain/finding.js'
import { heldAgainst, type Limits } from '../../plan/limits.js'
import { commonPractice } from '../../tables/source.js'
import { type Phrase, say } from '../../words/phrase.js'
import { quantityRange } from '../../words/quantity.js'
import { tell } from '../../words/tell.js'
import { inUnit, readingText, spelling, takesPrefix } from '../../words/unit.js'
import type { ReadingLimits } from './job.js'
import { topicAt } from './topicAt.js'

const limitsSource = commonPractice(
  'The first-power plan of this job',
  'the limits worked out for this step from the check; the plan shows each with its numbers',
)

/** Limits as they are shown: "0 mA to 120 mA", "10 Ω or more", "below 34 V"; '' where the plan gives none. */
export function limitsText({ low, high, unit, strict, notAbove }: Limits & Pick<ReadingLimits, 'unit'>): Phrase {
  if (unit === null) return say``
  const bounds = boundsText(low, high, unit, strict === true)
  if (notAbove == null) return bounds
  return low === null && high === null ? say`no more than before` : say`${bounds}, and no more than before`
}

function boundsText(low: number | null, high: number | null, unit: string, strict: boolean): Phrase {
  if (strict && high !== null && (low === null || low === -high)) return say`below ${readingText(high, unit)}`
  if (low !== null && high !== null)
    return takesPrefix(unit)
      ? quantityRange(low, high, unit)
      : say`${readingText(low, unit)} to ${readingText(high, unit)}`
  if (low !== null) return strict ? say`above ${readingText(low, unit)}` : say`${readingText(low, unit)} or more`
  return high !== null ? say`${readingText(high, unit)} or less` : say``
}

export interface Given {
  key: string
  /** null: over the range of the meter, "OL" */
  value: number | null
  unit: string
}

/** "Read 350 mA", "Read OL, over the range of the meter". */
export const readText = ({ value, unit }: Pick<Given, 'value' | 'unit'>): Phrase =>
  value === null ? say`OL (over the range of the meter, in ${unit})` : readingText(value, unit)

/** What is done first about a reading that is a stop: by what stands under power at its step. */
export function firstOfAll({ power, unit }: Pick<ReadingLimits, 'power' | 'unit'>): Phrase {
  if (power === 'mains' || power === 'low-voltage' || power == null)
    return say`Switch off, unplug, let it discharge, and find the cause before anything else is tried.`
  return unit === 'V'
    ? say`Touch nothing inside: leave the plug out, wait, discharge it through a resistor, and measure again.`
    : say`Leave the plug out, and find the cause before anything has power.`
}

const broken: Record<'too low' | 'too high' | 'risen', Phrase> = {
  'too low': say`the least expected`,
  'too high': say`the most expected`,
  risen: say`what was read before`,
}

/**
 * What a reading means: within the limits of its step, outside them, or not to be judged.
 *
 * @param given   what was read; its unit must measure the same as the limits' (see {@link inUnit})
 * @param limits  of the step with this key; null where the plan has none
 * @param before  what was read last at the step that this one may not exceed [limits' unit]; null where nothing was
 * @throws RangeError where the units measure different things
 */
export function readingFinding(given: Given, limits: ReadingLimits | null, before: number | null = null): ToldFinding {
  const { key, unit } = given
  const topic = topicAt(limits?.link, spelling(unit))
  const read = readText(given)
  const rest = { topic, actions: [], sources: [limitsSource] }
  if (limits === null)
    return tell({
      ...rest,
      outcome: 'unknown',
      title: say`Read ${read}; this job’s plan has no step named “${key}”.`,
      why: 'Without limits a number tells nothing about what to do next.',
      working: [],
      action: 'Compare it with the machine’s manual, or choose the step of the plan that it belongs to.',
    })
  if (limits.unit === null) return noLimit(given, rest)
  const value = inUnit(given.value ?? overRange(limits), unit, limits.unit)
  if (value === null) throw new RangeError(`a reading in ${unit} cannot be held against limits in ${limits.unit}`)
  const held = heldAgainst(value, limits, before)
  if (held.as === 'no limit') return noLimit(given, rest)
  const expected = limitsText(limits)
  if (held.as === 'nothing before')
    return tell({
      ...rest,
      outcome: 'unknown',
      title: say`Read ${read}; it may be no more than before, and nothing was read before.`,
      why: 'Only the comparison shows that something warms up.',
      working: [limits.text],
      action: 'Read the earlier step first, then this one again.',
    })
  const shown = given.value === null ? read : readingText(value, limits.unit)
  if (held.as === 'within' && limits.sent)
    return tell({
      ...rest,
      outcome: 'unknown',
      title: say`Read ${read}, within the ${expected} of a plan that was sent; the plan of this job has no such step.`,
      why: 'What was sent may stop a job, and clears nothing.',
      working: [limits.text, say`${shown}: ${expected}`],
      action: 'Go on by the steps of the plan.',
    })
  if (held.as === 'within')
    return tell({
      ...rest,
      outcome: 'clear',
      title: say`Read ${read}, within the expected ${expected}.`,
      why: 'It is what the plan works out for a supply and a machine without this fault.',
      working: [limits.text, say`${shown}: ${expected}`],
      action: null,
    })
  const sign = held.as === 'too low' ? (limits.strict ? '≤' : '<') : limits.strict && held.as === 'too high' ? '≥' : '>'
  return tell({
    ...rest,
    outcome: limits.stopIf === null ? 'caution' : 'stop',
    title: say`Read ${read}, outside the expected ${expected}.`,
    why:
      limits.stopIf === null
        ? 'Something differs from what the check says.'
        : say`The plan says to stop here if ${limits.stopIf}.`,
    working: [limits.text, say`${shown} ${sign} ${readingText(held.bound, limits.unit)}, ${broken[held.as]}`],
    action:
      limits.stopIf === null
        ? 'Measure once more; if it stays, find the cause before the next stage.'
        : firstOfAll(limits),
  })
}

/**
 * What a meter over its range stands for: of ohms, more than any; of anything else it may be either sign, so that it lies outside
 * whatever bound there is.
 */
const overRange = ({ unit, high, low }: ReadingLimits): number =>
  high === null && low !== null && unit !== null && !spelling(unit).endsWith('Ω')
    ? Number.NEGATIVE_INFINITY
    : Number.POSITIVE_INFINITY

const noLimit = (given: Given, rest: Pick<Finding, 'topic' | 'actions' | 'sources'>): ToldFinding =>
  tell({
    ...rest,
    outcome: 'unknown',
    title: say`Read ${readText(given)}; no limit is known for this step.`,
    why: 'The check says too little to work a limit out, so the number is kept but not judged.',
    working: [],
    action:
      'A limit takes what the first power-up lists as still missing: add it to the check and judge the job again. Else compare with the machine’s manual.',
  })
