import { plugPinLimit } from '../../tables/capacitors.js'
import { say, type Words } from '../../words/phrase.js'
import { volts } from '../../words/quantity.js'
import type { Figure, Step } from '../firstPowerPlan.js'
import { storedCharge } from './cautions.js'

/** One line of a stage; what is not given is not read, and done by the reader with nothing under power. */
export const step = (key: string, text: Words, rest: Partial<Step> = {}): Step => {
  const line: Step = {
    key,
    text,
    link: 'supply',
    expect: null,
    unit: null,
    low: null,
    high: null,
    stopIf: null,
    who: 'you',
    power: 'none',
    caution: null,
    ...rest,
  }
  return { ...line, low: asShown(line.low), high: asShown(line.high) }
}

/** The same about another link than the supply. */
export const stepOn =
  (link: Step['link']) =>
  (key: string, text: Words, rest: Partial<Step> = {}): Step =>
    step(key, text, { link, ...rest })

/**
 * What is left on parts that a hand comes near, in size: a sign does not make it less.
 *
 * @source lowest limit of IEC 60335-1, as in the table of touch limits
 */
export const fallenBelow = (limitV: number): Pick<Step, 'unit' | 'low' | 'high' | 'strict'> => ({
  unit: 'V',
  low: -limitV,
  high: limitV,
  strict: true,
})

/** Capacitors before each reach inside. */
export const beforeReach: Partial<Step> = {
  ...fallenBelow(plugPinLimit.limitV),
  expect: say`below ${volts(plugPinLimit.limitV)}, then as near 0\u00a0V as can be`,
  stopIf: say`it does not fall: nothing inside is touched`,
  caution: storedCharge,
}

/** Limits are those that are printed: four digits. */
const asShown = (limit: number | null): number | null => (limit === null ? null : Number(limit.toPrecision(4)))

/** The least number of three digits that is not below: what is printed as "at most". */
export function atMost(value: number): number {
  if (!(value > 0) || !Number.isFinite(value)) return value
  const scale = 10 ** (2 - Math.floor(Math.log10(value)))
  return Math.ceil(value * scale - 1e-9) / scale
}

export const figure = (label: Words, value: Words, working: Words): Figure => ({ label, value, working })
