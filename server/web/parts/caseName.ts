import type { CheckRequest } from '../../chain/case/request.js'

/** Words of a plate that name a rating, not the thing. */
const ratingWord = /^(?:power|supply|in|out|input|output|primary|secondary|ac|dc|volts?|rating|rated)$/i

/** "TAPE RECORDER 12V DC 1.2A" → "Tape recorder"; null where the line names nothing but ratings. */
function thingOf(line: string): string | null {
  const [before = ''] = line.split(/[+−-]?\d[\d.,/–-]*\s?(?:V|A|W|VA|mA|Hz)\b/i)
  const words = before.replace(/(?:[:;,=\s]+|\s(?:ac|dc|in|out|input|output|rating|rated))+$/i, '').split(/\s+/)
  if (words.every((word) => !/\p{L}{2}/u.test(word) || ratingWord.test(word.replace(/\W/g, '')))) return null
  const thing = words.join(' ').trim()
  // a plate shouts; a word with a figure in it is a type name and stays as it is
  if (thing !== thing.toUpperCase() || /\d/.test(thing)) return thing
  return (thing.charAt(0) + thing.slice(1).toLowerCase()).replace(/\b(?:ac|dc|crt|led)\b/gi, (word) =>
    word.toUpperCase(),
  )
}

/** What a check is called: the first line that names a thing on the machine's plate, else on its supply's; null for none. */
export function caseName({ device, supply }: Pick<CheckRequest, 'device' | 'supply'>): string | null {
  for (const label of [device.label, supply.label])
    for (const line of (label ?? '').split(/\r?\n/)) {
      const thing = thingOf(line.trim())
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
