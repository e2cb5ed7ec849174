import { fluxClear, fluxStopAbove, wideWindowRatio } from '../tables/thresholds.js'
import { listed, or, type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, hertz, volts } from '../words/quantity.js'
import { type Around, fluxOverPlate, overPlate } from './around.js'

/** What the facts of a case say of a cause, before anything is examined: against it, or for it and why. */
export type ByCase = 'against' | { because: Phrase }

type Says = (around: Around) => ByCase | null

const inFavour = (because: Phrase): ByCase => ({ because })

const regulation: Says = ({ of }) => {
  if (of.supply.regulated === true) return 'against'
  return of.supply.regulated === false ? inFavour(say`its outputs are unregulated`) : null
}

const flux: Says = (around) => {
  const over = fluxOverPlate(around)
  if (over === null) return null
  const { ratio } = over
  if (ratio > fluxStopAbove.value)
    return inFavour(say`the core is driven at ${decimal(ratio, 3)} times the flux of its plate`)
  return ratio <= fluxClear.value ? 'against' : null
}

const lowerFrequency: Says = ({ mains, plate }) => {
  const metHz = mains?.frequencyHz ?? null
  if (metHz === null || !plate || plate.frequenciesHz.length === 0) return null
  const printedHz = Math.min(...plate.frequenciesHz)
  return metHz < printedHz ? inFavour(say`the plate says ${hertz(printedHz)}, the mains is ${hertz(metHz)}`) : 'against'
}

const otherFrequency: Says = ({ mains, plate }) => {
  const metHz = mains?.frequencyHz ?? null
  if (metHz === null || !plate || plate.frequenciesHz.length === 0) return null
  const words = say`the plate says ${listed(
    plate.frequenciesHz.map((one) => hertz(one)),
    or,
  )}, the mains is ${hertz(metHz)}`
  return plate.frequenciesHz.includes(metHz) ? 'against' : inFavour(words)
}

const mainsOver: Says = (around) => {
  const ratio = overPlate(around)
  if (ratio === null) return null
  return ratio > 1 ? inFavour(say`the mains is ${decimal(ratio, 3)} times the plate`) : 'against'
}

/** The selector against the mains: below it, or above. */
const selector =
  (wrong: 'low' | 'high'): Says =>
  ({ of, mains }) => {
    const setV = of.supply.input.selectorV
    if (setV === null || !mains) return null
    const ratio = mains.voltageV / setV
    // the two voltage classes of the world lie further apart than a wide window
    const found = ratio > wideWindowRatio.value ? 'low' : ratio < 1 / wideWindowRatio.value ? 'high' : 'right'
    const words = say`the selector stands at ${volts(setV)}, the mains is ${volts(mains.voltageV)}`
    return found === wrong ? inFavour(words) : 'against'
  }

const overloaded: Says = ({ of }) => {
  const [rail, ...others] = of.supply.rails
  const [wanted, ...more] = of.device.rails
  if (!rail || !wanted || others.length + more.length > 0 || rail.currentA === null || wanted.currentA === null)
    return null
  const words = say`the machine asks for ${amperes(wanted.currentA)}, the supply gives ${amperes(rail.currentA)}`
  return wanted.currentA > rail.currentA ? inFavour(words) : 'against'
}

const kindOf =
  (given: 'ac' | 'dc', wanted: 'ac' | 'dc'): Says =>
  ({ of }) => {
    const [rail] = of.supply.rails
    const [asked] = of.device.rails
    if (!rail?.kind || !asked?.kind) return null
    return rail.kind === given && asked.kind === wanted
      ? inFavour(
          given === 'ac'
            ? say`the supply gives AC, the machine asks for DC`
            : say`the supply gives DC, the machine asks for AC`,
        )
      : null
  }

const polarity: Says = ({ of }) => {
  const given = of.supply.plug.polarity
  const wanted = of.device.jack.polarity
  if (!given || !wanted) return null
  return given === wanted ? 'against' : inFavour(say`plug and jack differ in polarity`)
}

/** What each cause is judged by; one without an entry is judged by examination alone. */
const judged: Readonly<Record<string, Says>> = {
  'unregulated-open': regulation,
  'unregulated-ripple': regulation,
  'flux-too-high': flux,
  'sixty-on-fifty': lowerFrequency,
  'ferro-frequency': otherFrequency,
  'mains-over-plate': mainsOver,
  'selector-low': selector('low'),
  'selector-high': selector('high'),
  'unit-too-small': overloaded,
  'half-wave-runs': kindOf('ac', 'dc'),
  'ac-part-missing': kindOf('dc', 'ac'),
  'series-diode-blocks': polarity,
  'junction-forward': polarity,
}

export const byCase = (cause: string, around: Around): ByCase | null => judged[cause]?.(around) ?? null
