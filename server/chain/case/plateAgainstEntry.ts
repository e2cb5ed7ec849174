import { polarityText } from '../../facts/plug.js'
import type { LabelReading } from '../../plate/labelReading.js'
import { joined, listed, or, type Part, type Phrase, say, type Words } from '../../words/phrase.js'
import { amperes, hertz, voltAmperes, volts, watts } from '../../words/quantity.js'
import { isSame, unique } from '../../words/unique.js'
import { ends } from '../matching/matchRails.js'
import { kindText } from '../matching/railText.js'
import { windowText } from '../words.js'
import type { Contradiction } from './contradiction.js'
import { mayBePositions, type PlateSays } from './plateSays.js'
import type { VoltageWindow } from './request.js'
import type { DeviceRail, PreparedDevice, PreparedInput, PreparedSupply, Rail } from './situation.js'

const lookAgain = say`Look at the plate again: put its text right, or the entry.`

const against = <Side>(printed: Part, entered: Part, otherwise: Side): Contradiction<Side> => ({
  says: say`the plate’s text says ${printed}, ${entered} was entered`,
  weighs: 'unknown',
  lookAgain,
  otherwise,
})

/** Entries that say otherwise than the words of a supply's plate. */
export function supplyContradictions(
  supply: PreparedSupply,
  reading: LabelReading | null,
  says: PlateSays,
  printedRails: readonly Rail[],
): Contradiction<PreparedSupply>[] {
  const { protectionClass, technology, regulated, plug } = supply
  const found: Contradiction<PreparedSupply>[] = inputContradictions(supply.input, reading?.input ?? null).map(
    (one) => ({ ...one, otherwise: { ...supply, input: one.otherwise } }),
  )
  const note = (printed: Part, entered: Part, otherwise: Partial<PreparedSupply>): void => {
    found.push(against(printed, entered, { ...supply, ...otherwise }))
  }
  const printedClass = reading?.protectionClass
  if (printedClass && protectionClass && printedClass !== protectionClass)
    note(say`class ${printedClass}`, say`class ${protectionClass}`, { protectionClass: printedClass })
  if (says.technology && technology && says.technology !== technology)
    note(says.technology, technology, { technology: says.technology })
  // of several outputs one may be regulated and the next not: the words on a plate speak against the only one alone
  const held = supply.rails.length === 1 ? (supply.rails[0]?.regulated ?? regulated) : regulated
  if (says.regulated !== null && held !== null && says.regulated !== held)
    note(regulationText(says.regulated), regulationText(held), {
      regulated: says.regulated,
      ...(supply.rails.length === 1 && { rails: supply.rails.map((rail) => ({ ...rail, regulated: null })) }),
    })
  const { polarity } = plug
  const printedPolarity = reading?.polarity
  if (printedPolarity && polarity && printedPolarity !== polarity)
    note(polarityText(printedPolarity), polarityText(polarity), { plug: { ...plug, polarity: printedPolarity } })
  const positions = mayBePositions(supply.facts.label, printedRails)
  for (const one of railContradictions(supply.rails, printedRails, positions))
    found.push({ ...one, otherwise: { ...supply, rails: one.otherwise } })
  const printedW = reading?.outputsTotalW ?? null
  if (printedW !== null && supply.outputsTotalW !== null && printedW !== supply.outputsTotalW)
    found.push(
      against(say`${watts(printedW)} for all outputs together`, watts(supply.outputsTotalW), {
        ...supply,
        outputsTotalW: printedW,
      }),
    )
  return found
}

/** Entries that say otherwise than the words of a machine's plate. */
export function deviceContradictions(
  device: PreparedDevice,
  reading: LabelReading | null,
  printedRails: readonly DeviceRail[],
): Contradiction<PreparedDevice>[] {
  const positions = mayBePositions(device.facts.label, printedRails)
  const found = railContradictions(device.rails, printedRails, positions).map(
    (one): Contradiction<PreparedDevice> => ({ ...one, otherwise: { ...device, rails: one.otherwise } }),
  )
  const printed = reading?.polarity
  const { polarity } = device.jack
  if (printed && polarity && printed !== polarity)
    found.push(
      against(polarityText(printed), polarityText(polarity), {
        ...device,
        jack: { ...device.jack, polarity: printed },
      }),
    )
  return found
}

const regulationText = (regulated: boolean): string => (regulated ? 'regulated' : 'unregulated')

function inputContradictions(input: PreparedInput, printed: LabelReading['input']): Contradiction<PreparedInput>[] {
  if (!printed) return []
  const found: Contradiction<PreparedInput>[] = []
  const note = (written: readonly Phrase[], entered: readonly Phrase[], otherwise: Partial<PreparedInput>): void => {
    const same =
      written.length === entered.length && written.every((text) => entered.some((other) => isSame(text, other)))
    if (written.length > 0 && entered.length > 0 && !same)
      found.push(against(listed(written, or), listed(entered, or), { ...input, ...otherwise }))
  }
  const windowTexts = (windows: readonly VoltageWindow[], dc = false): Phrase[] =>
    windows.map((window) => (dc ? say`${windowText(window)} DC` : windowText(window)))
  const maybe = (value: number | null, text: (value: number) => Phrase): Phrase[] =>
    value === null ? [] : [text(value)]
  const { kind, voltages, frequenciesHz, currentA, powerVA, powerW } = printed
  const windows = windowTexts(voltages, kind === 'dc' && input.kind !== 'dc')
  note(windows, windowTexts(input.windows), { windows: voltages, kind })
  const hertzTexts = (list: readonly number[]): Phrase[] => list.map((hz) => hertz(hz))
  note(hertzTexts(frequenciesHz), hertzTexts(input.frequenciesHz), { frequenciesHz })
  note(maybe(currentA, amperes), maybe(input.currentA, amperes), { currentA })
  note(maybe(powerVA, voltAmperes), maybe(input.powerVA, voltAmperes), { powerVA })
  note(maybe(powerW, watts), maybe(input.powerW, watts), { powerW })
  return found
}

/** Entered rails against the nearest printed one each: kind of current, volts, amperes and watts. */
function railContradictions<Each extends Rail>(
  entered: readonly Each[],
  printed: readonly Each[],
  positions: boolean,
): Contradiction<Each[]>[] {
  // where none was entered the rails are those that are printed
  if (entered === printed || printed.length === 0) return []
  const found: Contradiction<Each[]>[] = []
  const note = (text: (rail: Rail) => Words, withPrinted: (own: Each, other: Rail) => Each): void => {
    const otherwise = entered.map((own) => {
      const other = nearestOf(printed, own)
      return other ? withPrinted(own, other) : own
    })
    const differs = (_: Rail, index: number): boolean => otherwise[index] !== entered[index]
    const says = (rails: readonly Each[]): Phrase => listed(unique(rails.filter(differs).map(text)))
    if (entered.some(differs)) found.push(against(says(otherwise), says(entered), otherwise))
  }
  note(kindOf, (own, { kind }) => (kind && own.kind && kind !== own.kind ? { ...own, kind } : own))
  note(voltageOf, (own, { voltageV, voltageMaxV, ...rest }) => {
    const [low, high] = ends({ voltageV, voltageMaxV, ...rest })
    // a voltage within a printed range says where it is set
    return own.voltageV >= low && own.voltageV <= high ? own : { ...own, voltageV, voltageMaxV }
  })
  note(loadOf, (own, { currentA, powerW }) => {
    // what was measured is another thing than what is printed
    if ('currentIs' in own && own.currentIs === 'measured') return own
    const printedA = own.currentA === null ? null : (currentA ?? own.currentA)
    const printedW = own.powerW === null ? null : (powerW ?? own.powerW)
    return printedA === own.currentA && printedW === own.powerW ? own : { ...own, currentA: printedA, powerW: printedW }
  })
  // one that was left out is wanted, or given, all the same; of the positions of a switch there is one at a time
  const leftOut = printed.filter(
    (other) =>
      !entered.some(
        (own) => nearestOf(printed, own) === other || (sameSign(other, own) && distanceV(other, own) === 0),
      ),
  )
  if (leftOut.length > 0 && !positions) {
    const texts = (rails: readonly Rail[]): Phrase => listed(rails.map(voltageOf))
    found.push(against(texts(printed), texts(entered), [...entered, ...leftOut]))
  }
  return found
}

const sameSign = (one: Rail, other: Rail): boolean => one.voltageV * other.voltageV > 0

const kindOf = ({ kind }: Rail): string => (kind === null ? '' : kindText(kind))
const voltageOf = (rail: Rail): Phrase => {
  const [low, high] = ends(rail)
  return windowText({ min: low, max: high })
}
const loadOf = ({ voltageV, currentA, powerW }: Rail): Phrase =>
  joined([
    ...(currentA === null ? [] : [amperes(currentA)]),
    ...(powerW === null ? [] : [watts(powerW)]),
    say`at ${volts(voltageV)}`,
  ])

/** The printed rail nearest an entered one, of its sign where there is one. */
function nearestOf<Each extends Rail>(printed: readonly Each[], own: Rail): Each | undefined {
  const ofItsSign = printed.filter((rail) => sameSign(rail, own))
  return (ofItsSign.length > 0 ? ofItsSign : printed).toSorted(
    (one, other) => distanceV(one, own) - distanceV(other, own),
  )[0]
}

/** How far an entered voltage lies outside a printed range [V]. */
function distanceV(rail: Rail, own: Rail): number {
  const [low, high] = ends(rail)
  return Math.max(0, low - own.voltageV, own.voltageV - high)
}
