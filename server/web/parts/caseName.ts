import type { CheckRequest } from '../../chain/case/request.js'
import type { LabelReading } from '../../plate/labelReading.js'
import { readPlate } from '../../plate/readPlate.js'

/**
 * What a plate says that is no rating, before the first of them or on a line of its own: "TAPE RECORDER 12V DC" → "Tape recorder";
 * null where it says nothing such.
 */
function thingOn(label: string, { unread, from }: LabelReading): string | null {
  const ratings = Math.min(...from.map(({ words }) => label.indexOf(words)).filter((at) => at >= 0))
  const lines = label.split(/\r?\n/).map((line) => line.trim())
  const thing = unread
    .find((piece) => /\p{L}{2}/u.test(piece) && (label.indexOf(piece) < ratings || lines.includes(piece)))
    ?.replace(/\s+/g, ' ')
  if (thing === undefined) return null
  // a plate shouts; a word with a figure in it is a type name and stays as it is
  if (thing !== thing.toUpperCase() || /\d/.test(thing)) return thing
  return (thing.charAt(0) + thing.slice(1).toLowerCase()).replace(/\b(?:ac|dc|crt|led)\b/gi, (word) =>
    word.toUpperCase(),
  )
}

/**
 * What a check is called: what the machine's plate calls the thing, else what its supply's does; null where neither names one.
 *
 * @param readings  of both plates, where they were read already
 */
export function caseName(
  check: Pick<CheckRequest, 'device' | 'supply'>,
  readings?: { device: LabelReading | null; supply: LabelReading | null },
): string | null {
  for (const of of ['device', 'supply'] as const) {
    const { label } = check[of]
    const thing = label ? thingOn(label, readings?.[of] ?? readPlate(label, of)) : null
    if (thing !== null) return thing.slice(0, 200)
  }
  return null
}

/** The longest part of a plate that stands for a name. */
const longestName = 60

/** The first line of a plate that says something, as printed. */
function printedLine(label: string | null | undefined): string | null {
  const line = (label ?? '').split(/\r?\n/).find((one) => /[\p{L}\d]/u.test(one))
  return line === undefined ? null : line.trim().replace(/\s+/g, ' ').slice(0, longestName)
}

/**
 * What a job is called: the machine by its plate, else the supply by its; where neither names a thing, what the plate
 * says first.
 */
export function jobName(check: Pick<CheckRequest, 'device' | 'supply' | 'arrangement'>): string {
  const named = caseName(check)
  if (named !== null) return named
  const [machine, supply] = [printedLine(check.device.label), printedLine(check.supply.label)]
  if (machine !== null) return `Machine “${machine}”`
  if (supply !== null)
    return `${check.arrangement === 'supply-only' ? 'Supply' : 'Machine with the supply'} “${supply}”`
  return check.arrangement === 'supply-only' ? 'Supply without a plate' : 'Machine without a plate'
}
