import { type Phrase, say, type Words } from '../words/phrase.js'
import { amperes, hertz, millimetres, plain, voltAmperes, volts, watts } from '../words/quantity.js'
import type { Choice, Fact } from './fact.js'

const quantities: Record<string, (value: number) => Phrase> = {
  V: volts,
  A: amperes,
  W: watts,
  VA: voltAmperes,
  Hz: hertz,
  mm: millimetres,
  AWG: (value) => say`AWG\u00a0${value}`,
}

/** A value in a unit as text: "500 mA", "AWG 22". */
export const quantityIn = (unit: string, value: number): Phrase => quantities[unit]?.(value) ?? plain(value, unit)

/** A choice within a sentence: "centre positive", "class II". */
const choiceSays = ({ value, says, label }: Choice): string => says ?? (typeof value === 'string' ? value : label)

/** The values of a fact as words of a sentence; several where it has several, as of a choice of voltages. */
export function says(fact: Fact, value: unknown): Words[] {
  switch (fact.kind) {
    case 'number':
      return [quantityIn(fact.unit, value as number)]
    case 'numbers':
      return (value as number[]).map((one) => quantityIn(fact.unit, one))
    case 'windows':
      return (value as { min: number; max: number }[]).map(({ min, max }) =>
        min === max ? volts(min) : say`${volts(min)} to ${volts(max)}`,
      )
    case 'keys':
    case 'phrases':
      return value as string[]
    case 'choice':
      return fact.choices.filter((choice) => choice.value === value).map(choiceSays)
    default:
      return [String(value)]
  }
}
