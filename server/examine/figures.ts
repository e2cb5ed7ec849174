import type { Rail } from '../chain/case/situation.js'
import { windowText } from '../chain/words.js'
import { doublerVoltageV } from '../physics/doubler.js'
import { capacitorCurrent } from '../physics/leakage.js'
import { rippleBound } from '../physics/offLoad.js'
import { primaryOhm } from '../physics/primaryResistance.js'
import { plugPinLimit } from '../tables/capacitors.js'
import type { Cause } from '../tables/causes.js'
import { powerMargin } from '../tables/dummyLoad.js'
import type { FigureOf } from '../tables/examinations.js'
import { examineLimits as limit } from '../tables/examineLimits.js'
import { lampTimes } from '../tables/examineOrder.js'
import { groundFaultTrip, residualTrip } from '../tables/residualCurrent.js'
import { regulationFor } from '../tables/transformerRegulation.js'
import { joined, type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, farads, hertz, ohms, percent, volts, watts } from '../words/quantity.js'
import { type Around, bandOf, fluxOverPlate } from './around.js'

type Worked = (around: Around) => Phrase | null

/** A line for each output that is known well enough; null where none is. */
const ofRails =
  (line: (rail: Rail) => Phrase | null): Worked =>
  ({ rails }) => {
    const lines = rails.flatMap((rail) => line(rail) ?? [])
    return lines.length === 0 ? null : joined(lines, say`; `)
  }

/** The same for outputs whose current is known. */
const ofLoads = (line: (size: number, currentA: number, rail: Rail) => Phrase): Worked =>
  ofRails((rail) =>
    rail.currentA === null || rail.currentA === 0 ? null : line(Math.abs(rail.voltageV), rail.currentA, rail),
  )

/** What the machine takes by its plate. */
const ofMachine = (line: (size: number, currentA: number) => Phrase): Worked => {
  const worked = ofLoads(line)
  return (around) => worked({ ...around, rails: around.of.device.rails })
}

const ofMains =
  (line: (voltageV: number, frequencyHz: number | null) => Phrase | null): Worked =>
  ({ mains }) =>
    mains && line(mains.voltageV, mains.frequencyHz)

const band = (rail: Rail): Phrase => {
  const { lowV, highV } = bandOf(rail)
  return say`${volts(rail.voltageV)}: ${volts(lowV)} to ${volts(highV)}`
}

/** The resistance that the rated current itself comes to: no short. */
const normalOhm = ofLoads(
  (size, currentA) =>
    say`${volts(size)} / ${amperes(currentA)} = ${ohms(size / currentA, 3)} is what the rated current itself comes to; a short lies well under it, and under ${ohms(limit.short.value)} until explained`,
)

/** What the outputs come to [W]; null where one is not known. */
function outputW(rails: readonly Rail[]): number | null {
  const sum = rails.reduce((total, { voltageV, currentA }) => total + Math.abs(voltageV) * (currentA ?? Number.NaN), 0)
  return sum > 0 ? sum : null
}

const primary: Worked = ({ mains, rails, of }) => {
  const printedVA = outputW(rails)
  if (!mains || printedVA === null || of.supply.technology === 'switch-mode') return null
  const known = regulationFor(printedVA)
  if (!known) return null
  const [low, high] = [known.low, known.high].map((share) => primaryOhm(mains.voltageV, printedVA, share)) as [
    number,
    number,
  ]
  return say`for ${volts(mains.voltageV)} and ${decimal(printedVA, 3)} VA a transformer’s winding of about ${ohms(low, 2)} to ${ohms(high, 2)}`
}

const flux: Worked = (around) => {
  const over = fluxOverPlate(around)
  const { mains } = around
  if (over === null || !mains || mains.frequencyHz === null) return null
  return say`here ${volts(mains.voltageV)} at ${hertz(mains.frequencyHz)} against ${volts(over.printedV)} at ${hertz(over.printedHz)}: ${decimal(over.ratio, 3)} times the volts per hertz of the plate`
}

const leakage: Worked = ({ mains }) => {
  if (!mains || mains.frequencyHz === null) return null
  const perNano = capacitorCurrent(1e-9, mains.voltageV, mains.frequencyHz)
  const large = limit.lineCapacitor.value
  const ofLarge = capacitorCurrent(large, mains.voltageV, mains.frequencyHz)
  return say`I = 2π · f · C · V: ${amperes(perNano, 2)} for each nF on the line conductor at ${volts(mains.voltageV)} ${hertz(mains.frequencyHz)}, ${amperes(ofLarge, 3)} for ${farads(large)}; a device of ${amperes(residualTrip.ratedA)} may trip from ${amperes(residualTrip.mayTripA)}, with ${amperes(residualTrip.standingA)} advised as the most; a ground-fault interrupter trips between ${amperes(groundFaultTrip.leastA)} and ${amperes(groundFaultTrip.mostA)}`
}

const ripple: Worked = (around) => {
  const metHz = around.mains?.frequencyHz ?? null
  if (metHz === null) return null
  const formula = ofLoads((size, currentA) => {
    const per1000 = rippleBound(currentA, 1e-3, metHz, 2)
    return say`${volts(size)}: ΔV = I / (2 · f · C) = ${amperes(currentA)} / (2 · ${hertz(metHz)} · C), ${volts(per1000, 3)} for each ${farads(1e-3)} if unregulated`
  })(around)
  const frequencies = say`${hertz(metHz)}: one diode open; ${hertz(2 * metHz)}: the reservoir or bulk capacitor; tens of kHz: the output capacitors`
  return formula ? say`${formula}. ${frequencies}` : frequencies
}

const lampShares = ofMains(
  (voltageV) =>
    say`of ${volts(voltageV)}: over ${volts(limit.lampBright.value * voltageV, 3)} across the lamp is a short behind it, ${volts(limit.lampHalf.value * voltageV, 3)} to that is half bright, under ${volts(limit.lampHealthy.value * voltageV, 3)} after 1 s is healthy`,
)

/** What a figure is worked out from: its name in the table of examinations. */
const worked: Readonly<Record<FigureOf, Worked>> = {
  'board-rails': ofRails(band),
  'bulk-volts': ofMains(
    (voltageV) =>
      say`the bulk capacitor held up to √2 · ${volts(voltageV)} = ${volts(Math.SQRT2 * voltageV, 3)}, a doubler wrongly set up to ${volts(doublerVoltageV(voltageV), 3)}: measured first, until it is under ${volts(plugPinLimit.limitV)}`,
  ),
  crest: ofRails((rail) =>
    rail.kind === 'ac'
      ? say`the crest of ${volts(rail.voltageV)} AC is √2 · ${volts(rail.voltageV)} = ${volts(Math.SQRT2 * Math.abs(rail.voltageV), 3)}`
      : null,
  ),
  dissipation: (around) => {
    const [rail] = around.rails
    const [wanted] = around.of.device.rails
    if (!rail || !wanted || wanted.currentA === null || Math.abs(rail.voltageV) <= Math.abs(wanted.voltageV))
      return null
    const over = Math.abs(rail.voltageV) - Math.abs(wanted.voltageV)
    return say`(${volts(Math.abs(rail.voltageV))} − ${volts(Math.abs(wanted.voltageV))}) · ${amperes(wanted.currentA)} = ${watts(over * wanted.currentA, 3)} more than it was made for`
  },
  'half-mains': ofMains((voltageV, frequencyHz) => {
    const half = say`half of ${volts(voltageV)} is ${volts(voltageV / 2)}: two equal filter capacitors`
    if (frequencyHz === null) return half
    const { filterCapacitor, caseLoad } = limit
    const pulledV = caseLoad.value * capacitorCurrent(filterCapacitor.value, voltageV, frequencyHz)
    return say`${half}; with 2 × ${farads(filterCapacitor.value)} a load of ${ohms(caseLoad.value)} pulls it down to ${volts(pulledV, 2)}`
  }),
  'input-ohm': ofMachine(
    (size, currentA) =>
      say`${volts(size)} / ${amperes(currentA)} = ${ohms(size / currentA, 3)} is the machine’s own current; under ${ohms(size / (limit.tooMuchCurrent.value * currentA), 3)} it would take over ${decimal(limit.tooMuchCurrent.value)} times that`,
  ),
  'lamp-share': ({ rails, of }) => {
    const printedW = outputW(rails)
    const times = lampTimes[of.supply.technology ?? 'switch-mode']
    return printedW === null
      ? null
      : say`its outputs come to ${watts(printedW, 3)}: a lamp of ${decimal(times)} · ${watts(printedW, 3)} = ${watts(times * printedW, 2, 'up')} or so`
  },
  'lamp-volts': lampShares,
  'lamp-watts': (around) => worked['lamp-share'](around),
  leakage,
  'least-load': ofLoads((size, currentA) => {
    const [from, to] = [limit.leastLoadFrom.value * currentA, limit.leastLoadTo.value * currentA]
    return say`${volts(size)}: ${amperes(from, 2)} to ${amperes(to, 2)}, a resistor of ${ohms(size / to, 2)} to ${ohms(size / from, 2)}`
  }),
  load: ofLoads((size, currentA, rail) => {
    const at = (share: number): Phrase => say`at ${percent(share)} with ${ohms(size / (share * currentA), 3)}`
    return say`${band(rail)}, ${at(limit.loadLight.value)}, ${at(limit.loadHalf.value)}, ${at(1)} for ${watts(powerMargin.factor * size * currentA, 2, 'up')} or more`
  }),
  'machine-current': ofMachine(
    (size, currentA) =>
      say`at ${volts(size)} its plate says ${amperes(currentA)}: over ${amperes(limit.tooMuchCurrent.value * currentA, 3)} is too much`,
  ),
  'mains-band': ({ mains, plate }) =>
    mains && plate
      ? say`the plate says ${windowText({ min: plate.minV, max: plate.maxV })}; here ${volts(mains.voltageV)} are stated`
      : null,
  path: ofRails(({ voltageV }) => {
    const size = Math.abs(voltageV)
    return say`of ${volts(size)}: over ${volts(limit.pathLost.value * size, 2)} lost along the path is too much, under ${volts(limit.pathRight.value * size, 2)} is right`
  }),
  peak: ofRails(({ voltageV }) => {
    const size = Math.abs(voltageV)
    return say`${volts(size)}: the protection fires at about ${volts(limit.protectionFrom.value * size, 3)} to ${volts(limit.protectionTo.value * size, 3)}`
  }),
  'primary-ohm': primary,
  rail: ofRails(band),
  'rail-ohm': normalOhm,
  regulator: ofRails(({ voltageV, kind }) =>
    kind === 'ac'
      ? null
      : say`for ${volts(voltageV)} at least ${volts(Math.abs(voltageV) + limit.regulatorOver.value, 3)} going in at full load, ${volts(voltageV)} coming out`,
  ),
  ripple,
  selector: ofMains((voltageV) => say`it belongs at the position for ${volts(voltageV)}`),
  'volts-per-hertz': flux,
}

/** The figures to expect, worked out from the case; null where the case does not hold what they need. */
export const figureFor = (name: FigureOf | null, around: Around): Phrase | null => (name ? worked[name](around) : null)

/** What a renewed part must be rated for here; null where its print is enough, or the mains is not known. */
export function partRating({ rated }: Pick<Cause, 'rated'>, { mains }: Around): Phrase | null {
  if (rated === 'as printed') return say`the amperes, speed and size printed at its holder`
  if (rated === 'twice the rail') return say`twice the volts of its rail`
  if (rated === null || !mains) return null
  const { voltageV } = mains
  switch (rated) {
    case 'class X2':
      return say`class X2, for ${volts(voltageV)} AC or more`
    case 'class Y2':
      return say`class Y2 or Y1, for ${volts(voltageV)} AC or more`
    case 'mains':
      return say`for ${volts(voltageV)} AC mains`
    case 'crest':
      return say`for more than √2 · ${volts(mains.maxV ?? voltageV)} = ${volts(Math.SQRT2 * (mains.maxV ?? voltageV), 3, 'up')}, its half each where two stand in series`
  }
}
