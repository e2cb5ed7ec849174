import type { ToldFinding, TopicName } from '../../chain/finding.js'
import { commonPractice } from '../../tables/source.js'
import { type Phrase, say } from '../../words/phrase.js'
import { plain, quantity, quantityRange } from '../../words/quantity.js'
import { tell } from '../../words/tell.js'
import type { ReadingLimits } from './job.js'

const prefixes: Record<string, number> = { '': 1, n: 1e-9, µ: 1e-6, μ: 1e-6, u: 1e-6, m: 1e-3, k: 1e3, M: 1e6, G: 1e9 }

/** Spellings of one unit that differ by keyboard only: the Greek letter and the ohm sign, written out, in ASCII. */
const spelling = (unit: string): string =>
  unit
    .trim()
    .normalize('NFKC')
    .replace(/(ohms?|Ohms?)$/, 'Ω')
    .replace(/^deg ?C$/, '°C')

/**
 * A reading in the unit of its limits: 350 mA against limits in A is 0.35.
 *
 * @returns the value [limits' unit]; null where the units measure different things
 */
export function inUnit(value: number, given: string, wanted: string): number | null {
  const from = spelling(given)
  const to = spelling(wanted)
  if (from === to) return value
  for (const [toPrefix, toFactor] of Object.entries(prefixes)) {
    if (!to.startsWith(toPrefix)) continue
    const base = to.slice(toPrefix.length)
    if (!/^(V|A|W|VA|Ω|F|Hz|J|s)$/.test(base)) continue
    const prefix = from.endsWith(base) ? from.slice(0, from.length - base.length) : null
    const factor = prefix === null ? undefined : prefixes[prefix]
    if (factor !== undefined) return (value * factor) / toFactor
  }
  return null
}

/**
 * The link of the power chain that a reading tells about: volts of the mains or the lamp, ohms of an earth, amperes,
 * watts and ohms across the machine's input, else the voltage of a rail.
 */
function topicOf(key: string, unit: string): TopicName {
  const measures = spelling(unit)
  if (measures.endsWith('Ω')) return /earth/.test(key) ? 'earthing' : 'output-current'
  if (/(A|W)$/.test(measures)) return 'output-current'
  return measures.endsWith('V') && /mains|lamp|selector/.test(key) ? 'mains-voltage' : 'output-voltage'
}

const limitsSource = commonPractice(
  'The first-power plan of this job',
  'the limits worked out for this step from the check; the plan shows each with its numbers',
)

/** Units that take a prefix. */
const prefixed = /^(V|A|W|Ω|F|Hz|J|s)$/

/** A reading as it is shown: "350 mA", "−3 °C". */
export const readingText = (value: number, unit: string): Phrase =>
  prefixed.test(unit) ? quantity(value, unit) : plain(value, unit, 15)

/** Limits as they are shown: "0 mA to 120 mA", "10 Ω or more"; '' where the plan gives none. */
export function limitsText({ low, high, unit }: Pick<ReadingLimits, 'low' | 'high' | 'unit'>): Phrase {
  if (unit === null) return say``
  if (low !== null && high !== null)
    return prefixed.test(unit)
      ? quantityRange(low, high, unit)
      : say`${readingText(low, unit)} to ${readingText(high, unit)}`
  if (low !== null) return say`${readingText(low, unit)} or more`
  return high !== null ? say`${readingText(high, unit)} or less` : say``
}

export interface Given {
  key: string
  value: number
  unit: string
}

/**
 * What a reading means: within the limits of its step, outside them, or not to be judged.
 *
 * @param given   what was read; its unit must measure the same as the limits' (see {@link inUnit})
 * @param limits  of the step with this key; null where the plan has none
 * @throws RangeError where the units measure different things
 */
export function readingFinding(given: Given, limits: ReadingLimits | null): ToldFinding {
  const { key, unit } = given
  const topic = topicOf(key, unit)
  const read = readingText(given.value, unit)
  if (limits === null)
    return tell({
      topic,
      actions: [],
      outcome: 'unknown',
      title: say`Read ${read}; this job’s plan has no step named “${key}”.`,
      why: 'Without limits a number tells nothing about what to do next.',
      working: [],
      action: 'Compare it with the machine’s manual, or choose the step of the plan that it belongs to.',
      sources: [limitsSource],
    })
  if (limits.unit === null || (limits.low === null && limits.high === null))
    return tell({
      topic,
      actions: [],
      outcome: 'unknown',
      title: say`Read ${read}; no limit is known for this step.`,
      why: 'The check says too little to work a limit out, so the number is kept but not judged.',
      working: [],
      action:
        'A limit takes what the first power-up lists as still missing: add it to the check and judge the job again. Else compare with the machine’s manual.',
      sources: [limitsSource],
    })
  const value = inUnit(given.value, unit, limits.unit)
  if (value === null) throw new RangeError(`a reading in ${unit} cannot be held against limits in ${limits.unit}`)
  const within = (limits.low === null || value >= limits.low) && (limits.high === null || value <= limits.high)
  const expected = limitsText(limits)
  const shown = readingText(value, limits.unit)
  const working = [
    limits.text,
    ...(limits.low === null
      ? []
      : [say`${shown} ${value >= limits.low ? '≥' : '<'} ${readingText(limits.low, limits.unit)}, the least expected`]),
    ...(limits.high === null
      ? []
      : [
          say`${shown} ${value <= limits.high ? '≤' : '>'} ${readingText(limits.high, limits.unit)}, the most expected`,
        ]),
  ]
  if (within)
    return tell({
      topic,
      actions: [],
      outcome: 'clear',
      title: say`Read ${read}, within the expected ${expected}.`,
      why: 'It is what the plan works out for a supply and a machine without this fault.',
      working,
      action: null,
      sources: [limitsSource],
    })
  const outcome = limits.stopIf === null ? 'caution' : 'stop'
  return tell({
    topic,
    actions: [],
    outcome,
    title: say`Read ${read}, outside the expected ${expected}.`,
    why:
      limits.stopIf === null
        ? 'Something differs from what the check says.'
        : say`The plan says to stop here if ${limits.stopIf}.`,
    working,
    action:
      limits.stopIf === null
        ? 'Measure once more; if it stays, find the cause before the next stage.'
        : 'Switch off, unplug, let it discharge, and find the cause before anything else is tried.',
    sources: [limitsSource],
  })
}
