import type { Rail } from '../chain/case/situation.js'
import { acceptanceBands } from '../tables/dummyLoad.js'
import { seenLimits } from '../tables/examineOrder.js'
import { type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, farads, hertz, ohms, percent, volts } from '../words/quantity.js'
import { type Around, bandOf } from './around.js'
import type { ReadingSeen } from './request.js'

/** What a reading comes to. */
export interface Read {
  /** what it amounts to having seen; null where it is within its limits */
  seen: string | null
  because: Phrase
  /** causes that it excludes, or confirms, by itself */
  excludes: readonly string[]
  speaksFor: readonly string[]
}

/** What a reading is of, told by the words of its key and its unit. */
type Of =
  | 'lamp'
  | 'ripple'
  | 'ripple-frequency'
  | 'output'
  | 'output-ohm'
  | 'input-ohm'
  | 'machine-current'
  | 'case'
  | 'leakage'

/** The words of a key, in the order they are asked for. */
const words: readonly (readonly [word: string, unit: string, of: Of])[] = [
  ['lamp', 'V', 'lamp'],
  ['ripple', 'Hz', 'ripple-frequency'],
  ['ripple', 'V', 'ripple'],
  ['case', 'V', 'case'],
  ['leakage', 'A', 'leakage'],
  ['input', 'Ω', 'input-ohm'],
  ['jack', 'Ω', 'input-ohm'],
  ['', 'Ω', 'output-ohm'],
  ['', 'A', 'machine-current'],
  ['rail', 'V', 'output'],
  ['output', 'V', 'output'],
  ['voltage', 'V', 'output'],
  ['off-load', 'V', 'output'],
]

/** Units as they are sent, in SI. */
const units: Readonly<Record<string, readonly [unit: string, factor: number]>> = {
  V: ['V', 1],
  mV: ['V', 1e-3],
  A: ['A', 1],
  mA: ['A', 1e-3],
  Ω: ['Ω', 1],
  ohm: ['Ω', 1],
  kΩ: ['Ω', 1e3],
  MΩ: ['Ω', 1e6],
  mΩ: ['Ω', 1e-3],
  Hz: ['Hz', 1],
  kHz: ['Hz', 1e3],
}

/** Units that a reading may have. */
export const readingUnits = Object.keys(units)

interface Measured {
  of: Of
  /** in SI */
  value: number
  /** which output, from 0 */
  index: number
  state: ReadingSeen['state']
}

/** What was measured, told by key and unit; null where it is none that anything is known of. */
export function measuredOf({ key, value, unit, state }: ReadingSeen): Measured | null {
  const [inSi, factor] = units[unit] ?? []
  const row = words.find(([word, of]) => of === inSi && key.includes(word))
  if (!row || factor === undefined) return null
  const number = /-(\d+)(?:-at-\d+)?$/.exec(key)?.[1]
  return {
    of: row[2],
    value: value * factor,
    index: number === undefined ? 0 : Number(number) - 1,
    state: state ?? stateOf(key),
  }
}

/** A step of the plan says by its stage how it was read. */
function stateOf(key: string): ReadingSeen['state'] {
  if (key.startsWith('supply-alone')) return 'open'
  return key.startsWith('dummy-load') || key.startsWith('together') ? 'loaded' : null
}

const none = (because: Phrase): Read => ({ seen: null, because, excludes: [], speaksFor: [] })
const sign = (seen: string, because: Phrase, more: Partial<Read> = {}): Read => ({ ...none(because), seen, ...more })

/** What a reading amounts to; null where the case does not hold what it is held against. */
export function readingSeen(reading: ReadingSeen, around: Around): Read | null {
  const measured = measuredOf(reading)
  if (!measured) return null
  const { of, value, index, state } = measured
  const { mains } = around
  const rail = around.rails[index]
  switch (of) {
    case 'lamp':
      return mains && Math.abs(value) <= mains.voltageV ? lampSeen(Math.abs(value), mains.voltageV, around) : null
    case 'ripple':
      return rail ? rippleSeen(Math.abs(value), rail, around) : null
    case 'ripple-frequency':
      return mains?.frequencyHz ? frequencySeen(value, mains.frequencyHz) : null
    case 'output':
      return rail ? outputSeen(value, rail, state) : null
    case 'output-ohm':
      return rail ? shortSeen(Math.abs(value), rail, say`the output`) : null
    case 'input-ohm': {
      const wanted = around.of.device.rails[index]
      return wanted ? shortSeen(Math.abs(value), wanted, say`the machine`) : null
    }
    case 'machine-current': {
      const wanted = around.of.device.rails[index]
      return wanted?.currentA ? currentSeen(Math.abs(value), wanted.currentA) : null
    }
    case 'case':
      return mains ? caseSeen(Math.abs(value), mains.voltageV) : null
    case 'leakage':
      return none(say`${amperes(Math.abs(value))} to earth was read`)
  }
}

/** The current of a lamp tells what is behind it: R = (V − V_lamp) / I. */
function lampSeen(lampV: number, mainsV: number, { lampCurrentA }: Around): Read {
  const share = lampV / mainsV
  const currentA = lampV > 0 ? (lampCurrentA?.(lampV, mainsV) ?? null) : null
  const behind =
    currentA === null
      ? say``
      : say`; the lamp passes ${amperes(currentA, 3)}, so that what is behind it takes it as ${ohms((mainsV - lampV) / currentA, 2)} would`
  const because = say`${volts(lampV)} across the lamp of ${volts(mainsV)}: ${percent(share)}, which leaves ${volts(mainsV - lampV)}${behind}`
  if (share >= seenLimits.lampBrightShare) return sign('lamp-bright', because, { excludes: ['lamp-open'] })
  if (share >= seenLimits.lampHalfShare) return sign('lamp-half', because, { excludes: ['lamp-open'] })
  return share < seenLimits.lampDarkShare ? sign('lamp-dark', because) : none(because)
}

/** What is left of the capacitor: C = I / (2 · f · ΔV). */
function rippleSeen(rippleV: number, rail: Rail, { mains }: Around): Read {
  const size = Math.abs(rail.voltageV)
  const limitV =
    acceptanceBands.find(({ voltageV }) => voltageV === rail.voltageV)?.rippleV ?? seenLimits.rippleShare * size
  const left =
    mains?.frequencyHz && rail.currentA && rippleV > 0
      ? say`; at ${amperes(rail.currentA)} and twice ${hertz(mains.frequencyHz)} it comes of C = I / (2 · f · ΔV) = ${farads(rail.currentA / (2 * mains.frequencyHz * rippleV), 3)} left, at most`
      : say``
  const because = say`${volts(rippleV)} of ripple on ${volts(size)}, where ${volts(limitV)} is accepted${left}`
  return rippleV > limitV ? sign('ripple-high', because) : none(because)
}

function frequencySeen(rippleHz: number, mainsHz: number): Read {
  const because = say`ripple of ${hertz(rippleHz)} on a mains of ${hertz(mainsHz)}`
  const near = (times: number): boolean => Math.abs(rippleHz - times * mainsHz) < 0.1 * mainsHz
  if (near(1))
    return sign('ripple-high', because, {
      speaksFor: ['diode-open'],
      excludes: ['output-capacitor-esr', 'output-ripple'],
    })
  if (near(2))
    return sign('ripple-high', because, {
      speaksFor: ['reservoir-dry'],
      excludes: ['diode-open', 'output-capacitor-esr', 'output-ripple'],
    })
  return rippleHz > 10 * mainsHz
    ? sign('ripple-high', because, {
        speaksFor: ['output-ripple', 'output-capacitor-esr'],
        excludes: ['diode-open', 'reservoir-dry'],
      })
    : none(because)
}

function outputSeen(valueV: number, rail: Rail, state: ReadingSeen['state']): Read {
  const size = Math.abs(rail.voltageV)
  const read = Math.abs(valueV)
  const { lowV, highV } = bandOf(rail)
  const how =
    state === 'open'
      ? say` with nothing connected`
      : state === 'warm'
        ? say` warm, under load`
        : state === 'loaded'
          ? say` under load`
          : say``
  const because = say`${volts(valueV)}${how} where ${volts(lowV)} to ${volts(highV)} is expected`
  if (read < seenLimits.noOutputShare * size) return sign('output-none', because)
  if (read < Math.min(Math.abs(lowV), Math.abs(highV)))
    return state === 'open' || state == null || read > (1 - seenLimits.collapseShare) * size
      ? sign('output-low', because)
      : sign('output-collapses', because)
  if (read <= Math.max(Math.abs(lowV), Math.abs(highV))) return none(because)
  const unregulated = state === 'open' || state == null
  return sign('output-high', because, {
    excludes: unregulated && read <= (1 + seenLimits.unregulatedRise) * size ? [] : ['unregulated-open'],
    speaksFor: state === 'warm' ? ['brick-drifts'] : [],
  })
}

function shortSeen(readOhm: number, rail: Rail, of: Phrase): Read {
  const size = Math.abs(rail.voltageV)
  const own = rail.currentA ? size / rail.currentA : null
  const because =
    own === null
      ? say`${ohms(readOhm)} at ${volts(size)}`
      : say`${ohms(readOhm)} at ${volts(size)}: ${volts(size)} / ${ohms(readOhm)} = ${amperes(size / Math.max(readOhm, 1e-3), 3)}, where ${of} is printed with ${amperes(rail.currentA ?? 0)}`
  if (readOhm < seenLimits.shortOhm) return { ...none(because), excludes: ['reading-normal'], speaksFor: shorts }
  return own !== null && readOhm >= own / seenLimits.overPlate
    ? { ...none(because), excludes: shorts, speaksFor: ['reading-normal'] }
    : none(because)
}

/** What reads as a short at the terminals. */
const shorts = [
  'output-diode-shorted',
  'rail-shorted-inside',
  'rail-shorted-machine',
  'board-tantalum-shorted',
  'protection-diode-shorted',
]

function currentSeen(readA: number, plateA: number): Read {
  const because = say`${amperes(readA)} where its plate says ${amperes(plateA)}: ${decimal(readA / plateA, 3)} times`
  if (readA > seenLimits.overPlate * plateA) return sign('current-too-much', because)
  return readA < seenLimits.noCurrentShare * plateA ? sign('current-none', because) : none(because)
}

function caseSeen(caseV: number, mainsV: number): Read {
  const because = say`${volts(caseV)} from the case to earth, ${percent(caseV / mainsV)} of the mains`
  if (caseV > seenLimits.lampBrightShare * mainsV) return sign('tingle', because, { speaksFor: ['live-on-case'] })
  return caseV > 0.1 * mainsV ? sign('tingle', because, { speaksFor: ['filter-no-earth'] }) : none(because)
}
