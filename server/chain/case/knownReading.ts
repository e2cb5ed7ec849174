import type { LabelRail, LabelReading } from '../../plate/labelReading.js'
import { isConfirmed } from './confirmation.js'

/** A plate as it may be judged by, and what of it still wants a person's word. */
export interface KnownReading {
  /** without the figures that nobody confirmed; null where there are no words */
  known: LabelReading | null
  /** sentences that name those figures; none where all is known */
  doubts: string[]
}

/**
 * Leaves out of a reading every figure that was read through damaged print, or is none that a mains has, and that nobody confirmed.
 * Of several rails one of whose voltages is doubted none is known: the others would stand for all there are.
 *
 * @param confirmed  keys of the figures that a person confirmed, "supply.outputs.0.currentA", best with what was read, "=0.5" behind
 */
export function knownReading(
  reading: LabelReading | null,
  of: 'supply' | 'device',
  confirmed: readonly string[] | null | undefined,
): KnownReading {
  const unsure = reading?.unsure.filter((field) => !isConfirmed(confirmed, reading, of, field)) ?? []
  if (!reading || unsure.length === 0) return { known: reading, doubts: [] }
  const is = (field: string): boolean => unsure.includes(field)
  const rails = (name: 'outputs' | 'takes'): LabelRail[] => {
    const list = reading[name]
    if (list.some((_, at) => is(`${name}.${at}.voltageV`) || is(`${name}.${at}.voltageMaxV`))) return []
    return list.map((rail, at) => without(rail, (key) => is(`${name}.${at}.${key}`)))
  }
  const { input } = reading
  return {
    known: {
      ...without(reading, is),
      input: input && {
        ...without(input, (key) => is(`input.${key}`)),
        voltages: is('input.voltages') ? [] : input.voltages,
        frequenciesHz: is('input.frequenciesHz') ? [] : input.frequenciesHz,
      },
      outputs: rails('outputs'),
      takes: rails('takes'),
      plug: reading.plug && without(reading.plug, (key) => is(`plug.${key}`)),
    },
    doubts: doubtsOf(reading, unsure, of),
  }
}

/** The same facts, those doubted being null. */
const without = <Facts extends object>(facts: Facts, isDoubted: (key: string) => boolean): Facts =>
  Object.fromEntries(Object.entries(facts).map(([key, value]) => [key, isDoubted(key) ? null : value])) as Facts

function doubtsOf({ from, proposals }: LabelReading, unsure: readonly string[], of: 'supply' | 'device'): string[] {
  const plate = of === 'supply' ? 'The supply’s plate' : 'The machine’s plate'
  const words = new Set(from.flatMap(({ field, words }) => (unsure.includes(field) ? [words] : [])))
  const told = [...words].map((piece) => {
    const proposal = proposals.find(({ was }) => was === piece || was.endsWith(piece))
    return proposal ? `“${proposal.reads}” where “${proposal.was}” stands` : `“${piece}”`
  })
  return [`${plate} may read ${told.join(', ')}: look at it, and confirm that or enter the figure.`]
}
