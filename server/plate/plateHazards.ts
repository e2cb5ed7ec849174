import type { HazardMeaning } from '../tables/hazardWords.js'
import { usbFixedVoltages } from '../tables/usbPower.js'
import { type Folded, fold } from './fold.js'
import { type FoundHazard, findHazards } from './hazards.js'
import type { Hazard, LabelInput, LabelRail } from './labelReading.js'
import type { Token } from './token.js'

/** Of these the rest of the line belongs to what is said: the model, the battery, the things that are meant. */
const goesOn: readonly HazardMeaning[] = [
  'only with the named model or the supply delivered',
  'do not use with, other appliances forbidden',
  'charger for one named battery',
]

/**
 * Words of hazard on a plate, as printed; their tokens are read with them.
 *
 * @param ratings  input and outputs of the same plate: a charger that is a USB supply is none
 */
export function plateHazards(
  folded: Folded,
  text: string,
  tokens: Token[],
  ratings: { input: LabelInput | null; outputs: readonly LabelRail[] },
): Hazard[] {
  const printed = (start: number, end: number): string =>
    text.slice(folded.origin[start], folded.origin[end]).replace(/\s+/g, ' ').trim()
  const usb = !battery.test(folded.upper) && givesUsb(folded.upper, ratings)
  return findHazards(folded).flatMap((hazard) => {
    const { meaning, language, decides, start, denied } = hazard
    const end = !denied && goesOn.includes(meaning) ? restOfLine(hazard, tokens) : hazard.end
    for (const token of tokens)
      if (token.role === undefined && token.start < end && token.end > start) token.role = 'hazard'
    if (denied) return []
    if (usb && meaning === 'charger: for batteries only') return []
    return [{ meaning, words: printed(start, end), language, decides }]
  })
}

/** Words of hazard in a few words that are no plate: the name of a plug, "interchangeable tips". */
export function hazardsIn(words: string): Hazard[] {
  const folded = fold(words)
  return findHazards(folded).flatMap(({ denied, start, end, ...hazard }) =>
    denied ? [] : [{ ...hazard, words: words.slice(folded.origin[start], folded.origin[end]) }],
  )
}

/** Up to the end of the line or clause, or to what was read as something else. */
function restOfLine({ end }: FoundHazard, tokens: readonly Token[]): number {
  let last = end
  for (const token of tokens) {
    if (token.start < end) continue
    if (token.type === 'line' || token.role !== undefined) break
    if (token.type === 'sign' && /[.;,()]/.test(token.sign) && token.spaceAfter) break
    last = token.end
  }
  return last
}

const battery =
  /BATT|BATER|AKKU|ACCU|ACUM|АККУМ|БАТАР|PILE|PILAS|NI-?\s?CD|NI-?\s?MH|LI-?\s?ION|LITHIUM|LEAD|BLEI|NC-|电池|電池|バッテリ|배터리|전지/

/** 5 V as a USB source gives it, give or take what a cable takes [V]. */
const usbLeastV = 4.75
const usbMostV = 5.3

/** Whether what a plate calls a charger is a supply: "USB" stands on it with USB voltages, or it gives 5 V with a current. */
function givesUsb(upper: string, { input, outputs }: { input: LabelInput | null; outputs: readonly LabelRail[] }) {
  // fed from USB itself, it charges something else
  if (input?.kind === 'dc' && input.voltages.some(({ max }) => max <= usbMostV)) return false
  // no USB source gives an alternating voltage
  if (outputs.some(({ kind }) => kind === 'ac')) return false
  const isFive = ({ voltageV }: LabelRail): boolean => voltageV >= usbLeastV && voltageV <= usbMostV
  if (outputs.some((rail) => isFive(rail) && (rail.currentA !== null || rail.powerW !== null))) return true
  const isUsbVoltage = (rail: LabelRail): boolean =>
    isFive(rail) || usbFixedVoltages.some((fixed) => fixed.voltageV === rail.voltageV)
  return /\bUSB\b/.test(upper) && outputs.every(isUsbVoltage)
}
