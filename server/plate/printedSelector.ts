import { plateLimits } from '../tables/plateLimits.js'
import { voltageStopAbove } from '../tables/thresholds.js'
import type { VoltageWindow } from './labelReading.js'
import { placesOf, readPart, saysSetsItself } from './sayings.js'

const volts = '\\s*(?:V(?:OLTS?|AC)?|В|伏|볼트)?\\s*~?\\s*(?:AC(?!\\p{L}))?\\s*'
const figure = '\\d{1,3}(?:\\.\\d+)?(?!\\d)'
const one = `${figure}(?:\\s*V?\\s*[-–~]\\s*${figure})?${volts}`
const or = '(?:[/|,;&]|(?:or|oder|ou|o|eller|of|или|或)(?!\\p{L}))\\s*'
/** What may stand between a word for the selector and its positions. */
const filler =
  '[\\s:=()\\[\\]-]*(?:(?:is|set|to|at|for|on|auf|sur|a|en|su|switch|positions?|ac|mains|input|на|至)(?!\\p{L})[\\s:=(-]*){0,4}'
const listBehind = new RegExp(`^${filler}(${one}(?:${or}${one})*)`, 'iu')
const listBefore = new RegExp(`(?<![\\d.,-])(${one}(?:${or}${one})+)[\\s(]*$`, 'iu')
const parted = new RegExp(`\\d${volts}${or}\\d`, 'iu')
/** How far from the word its positions may begin, in characters. */
const reach = 60

/** "NO VOLTAGE SELECTOR", "AUTO VOLTAGE SELECTION", "OUTPUT VOLTAGE SELECTOR". */
const otherwise =
  /(?:(?<!\p{L})(?:no|not|without|auto(?:matic)?|output|ohne|keine?|ausgangs?|sans|sortie|sin|senza|uscita|sem|zonder|uten|uden|utan|ilman|bez|без|не|нет|вых\p{L}*)[\s-]+|[无無非自動动]|出力|输出|輸出|자동\s*)$/iu

/**
 * The positions of a voltage selector that a plate prints, or speaks of without naming one: then the list is empty. A word for any
 * switch speaks of one only beside two mains voltages; low volts beside a word are the positions of an output's.
 *
 * @returns null where the plate speaks of none, denies it, or says that its unit sets itself
 */
export function printedSelector(label: string | null | undefined): VoltageWindow[] | null {
  if (saysSetsItself(label)) return null
  const text = readPart(label)
  const beside = ([start, end]: [number, number]): string =>
    listBehind.exec(text.slice(end, end + reach))?.[1] ??
    listBefore.exec(text.slice(Math.max(0, start - reach), start))?.[1] ??
    ''
  const isMains = (found: readonly VoltageWindow[]): boolean =>
    found.every(({ min }) => min >= plateLimits.leastMainsV.value)
  const isSpoken = ([start]: [number, number]): boolean => !otherwise.test(text.slice(0, start))
  const named = placesOf(label, 'selector')
    .filter(isSpoken)
    .map((place) => positions(beside(place)))
    .filter(isMains)
  const listed = placesOf(label, 'any switch')
    .filter(isSpoken)
    .map(beside)
    // "NETWORK SWITCH INPUT 100-240V" is a range and no list
    .filter((list) => parted.test(list))
    .map(positions)
    .filter((found) => found.length > 1 && isMains(found))
  return [...named, ...listed].toSorted((a, b) => b.length - a.length)[0] ?? null
}

/** "115/230", "110-120 V or 220-240 V"; what is too far apart for one winding, "115-230", is two positions. */
const positions = (list: string): VoltageWindow[] =>
  [...list.matchAll(/(\d+(?:\.\d+)?)(?:\s*V?\s*[-–~]\s*(\d+(?:\.\d+)?))?/giu)].flatMap(([, low, high = low]) => {
    const [min, max] = [Number(low), Number(high)].toSorted((a, b) => a - b) as [number, number]
    return max > min * voltageStopAbove.value ** 2
      ? [
          { min, max: min },
          { min: max, max },
        ]
      : [{ min, max }]
  })
