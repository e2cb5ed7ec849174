import type { Rail } from '../chain/case/situation.js'
import { acceptanceBands } from '../tables/dummyLoad.js'
import { examineLimits as limit } from '../tables/examineLimits.js'
import { residualTrip } from '../tables/residualCurrent.js'
import { type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, farads, hertz, ohms, percent, volts } from '../words/quantity.js'
import { inUnit } from '../words/unit.js'
import { type Around, bandOf } from './around.js'
import type { ReadingSeen } from './examineRequest.js'

/** What a reading comes to. */
export interface Read {
  /** what it amounts to having seen; null where it is within its limits */
  seen: string | null
  because: Phrase
  /** causes that it excludes, or confirms, by itself */
  excludes: readonly string[]
  speaksFor: readonly string[]
  /** true: it holds power by itself */
  holds: boolean
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

/** How an output was read; "part": under a part of its load, which proves nothing of the whole. */
type How = NonNullable<ReadingSeen['state']> | 'part' | null

/**
 * What is read under a key, by its unit: typed by itself, or at a step of the plan. The number of an output, or of a rail, is the
 * group of the pattern. A key that no row has is of nothing that is known here.
 */
const keys: readonly (readonly [key: RegExp, unit: string, of: Of, how?: How])[] = [
  [/^lamp$/, 'V', 'lamp'],
  [/^ripple-frequency$|^ripple(?:-(\d+))?$/, 'Hz', 'ripple-frequency'],
  [/^ripple(?:-(\d+))?$/, 'V', 'ripple'],
  [/^case$/, 'V', 'case'],
  [/^leakage$/, 'A', 'leakage'],
  [/^(?:input|jack)(?:-(\d+))?$/, 'Ω', 'input-ohm'],
  [/^(?:output|rail)(?:-(\d+))?$/, 'Ω', 'output-ohm'],
  [/^(?:output|rail|voltage)(?:-(\d+))?$/, 'V', 'output'],
  [/^off-load(?:-(\d+))?$/, 'V', 'output', 'open'],
  [/^current(?:-(\d+))?$/, 'A', 'machine-current'],
  [/^(?:supply-alone|together|inside-[a-z]+)\.(?:lamp-volts|hold)$/, 'V', 'lamp'],
  [/^supply-alone\.off-load-(\d+)$/, 'V', 'output', 'open'],
  [/^dummy-load\.rail-(\d+)-at-100$/, 'V', 'output', 'loaded'],
  [/^dummy-load\.rail-(\d+)-at-\d+$/, 'V', 'output', 'part'],
  [/^together\.rail-(\d+)$/, 'V', 'output', 'part'],
  [/^dummy-load\.ripple-(\d+)$/, 'V', 'ripple'],
  [/^bench-supply\.step-\d+$/, 'A', 'machine-current', 'part'],
  [/^bench-supply\.step-\d+-rail-(\d+)$/, 'A', 'machine-current', 'part'],
]

interface Measured {
  of: Of
  /** in SI; null: over the range of the meter */
  value: number | null
  /** which output, from 0 */
  index: number
  how: How
}

/** What was measured, told by key and unit; null where it is none that anything is known of. */
export function measuredOf({ key, value, unit, state }: ReadingSeen): Measured | null {
  const row = keys.find(([pattern, si]) => inUnit(1, unit, si) !== null && pattern.test(key))
  if (!row) return null
  const [pattern, si, of, how = null] = row
  const number = pattern.exec(key)?.[1]
  return {
    of,
    value: value === null ? null : inUnit(value, unit, si),
    index: number === undefined ? 0 : Number(number) - 1,
    // a step of the plan says itself how it is read
    how: how ?? state ?? null,
  }
}

const none = (because: Phrase): Read => ({ seen: null, because, excludes: [], speaksFor: [], holds: false })
const sign = (seen: string, because: Phrase, more: Partial<Read> = {}): Read => ({ ...none(because), seen, ...more })

/** What a reading amounts to; null where the case does not hold what it is held against. */
export function readingSeen(reading: ReadingSeen, around: Around): Read | null {
  const measured = measuredOf(reading)
  if (!measured) return null
  const { of, index, how } = measured
  if (measured.value === null && of !== 'output-ohm' && of !== 'input-ohm') return overRange(reading)
  // more ohms than the meter can show are more than any
  const value = measured.value ?? Number.POSITIVE_INFINITY
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
      return rail ? outputSeen(value, rail, how) : null
    case 'output-ohm':
      return rail ? shortSeen(Math.abs(value), rail, say`the output`) : null
    case 'input-ohm': {
      const wanted = around.of.device.rails[index]
      return wanted ? shortSeen(Math.abs(value), wanted, say`the machine`) : null
    }
    case 'machine-current': {
      const wanted = around.of.device.rails[index]
      return wanted?.currentA ? currentSeen(Math.abs(value), wanted.currentA, how) : null
    }
    case 'case':
      return mains ? caseSeen(Math.abs(value), mains.voltageV) : null
    case 'leakage':
      return leakageSeen(Math.abs(value))
  }
}

/** Over its range a meter tells nothing but that: it holds power until it is read again. */
const overRange = ({ unit }: ReadingSeen): Read => ({
  ...none(say`OL was read, over the range of the meter in ${unit}: choose a higher range and read again`),
  holds: true,
})

/** The current of a lamp tells what is behind it: R = (V − V_lamp) / I. */
function lampSeen(lampV: number, mainsV: number, { lampCurrentA }: Around): Read {
  const share = lampV / mainsV
  const currentA = lampV > 0 ? (lampCurrentA?.(lampV, mainsV) ?? null) : null
  const behind =
    currentA === null
      ? say``
      : say`; the lamp passes ${amperes(currentA, 3)}, so that what is behind it takes it as ${ohms((mainsV - lampV) / currentA, 2)} would`
  const because = say`${volts(lampV)} across the lamp of ${volts(mainsV)}: ${percent(share)}, which leaves ${volts(mainsV - lampV)}${behind}`
  if (share >= limit.lampBright.value) return sign('lamp-bright', because, { excludes: ['lamp-open'] })
  if (share >= limit.lampHalf.value) return sign('lamp-half', because, { excludes: ['lamp-open'] })
  return share < limit.lampDark.value ? sign('lamp-dark', because) : none(because)
}

/** What is left of the capacitor: C = I / (2 · f · ΔV). */
function rippleSeen(rippleV: number, rail: Rail, { mains }: Around): Read {
  const size = Math.abs(rail.voltageV)
  const limitV =
    acceptanceBands.find(({ voltageV }) => voltageV === rail.voltageV)?.rippleV ?? limit.rippleShare.value * size
  const left =
    mains?.frequencyHz && rail.currentA && rippleV > 0
      ? say`; at ${amperes(rail.currentA)} and twice ${hertz(mains.frequencyHz)} it comes of C = I / (2 · f · ΔV) = ${farads(rail.currentA / (2 * mains.frequencyHz * rippleV), 3)} left, at most`
      : say``
  const because = say`${volts(rippleV)} of ripple on ${volts(size)}, where ${volts(limitV)} is accepted${left}`
  return rippleV > limitV ? sign('ripple-high', because) : none(because)
}

function frequencySeen(rippleHz: number, mainsHz: number): Read {
  const because = say`ripple of ${hertz(rippleHz)} on a mains of ${hertz(mainsHz)}`
  const near = (times: number): boolean => Math.abs(rippleHz - times * mainsHz) < limit.rippleNear.value * mainsHz
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
  return rippleHz > limit.rippleSwitching.value * mainsHz
    ? sign('ripple-high', because, {
        speaksFor: ['output-ripple', 'output-capacitor-esr'],
        excludes: ['diode-open', 'reservoir-dry'],
      })
    : none(because)
}

const howWords: Readonly<Record<NonNullable<How>, Phrase>> = {
  open: say` with nothing connected`,
  part: say` under a part of its load`,
  loaded: say` under load`,
  warm: say` warm, under load`,
}

/** An output held against its band: a DC output by its sign, which reversed is none of it. */
function outputSeen(valueV: number, rail: Rail, how: How): Read {
  const size = Math.abs(rail.voltageV)
  const read = rail.kind === 'ac' ? Math.abs(valueV) : valueV * Math.sign(rail.voltageV)
  const { lowV, highV } = bandOf(rail)
  const because = say`${volts(valueV)}${how ? howWords[how] : say``} where ${volts(lowV)} to ${volts(highV)} is expected`
  if (Math.abs(read) < limit.noOutput.value * size) return sign('output-none', because)
  if (read < 0) return { ...none(say`${because}: its sign is reversed, or the leads of the meter are`), holds: true }
  if (read < Math.min(Math.abs(lowV), Math.abs(highV)))
    return how === 'open' || !how || read > (1 - limit.collapse.value) * size
      ? sign('output-low', because)
      : sign('output-collapses', because)
  if (read <= Math.max(Math.abs(lowV), Math.abs(highV))) return none(because)
  const mayBeUnloaded = how === 'open' || !how
  return sign('output-high', because, {
    excludes: mayBeUnloaded && read <= (1 + limit.unregulatedRise.value) * size ? [] : ['unregulated-open'],
    speaksFor: how === 'warm' ? ['brick-drifts'] : [],
  })
}

function shortSeen(readOhm: number, rail: Rail, of: Phrase): Read {
  const size = Math.abs(rail.voltageV)
  const own = rail.currentA ? size / rail.currentA : null
  const because =
    own === null || readOhm === 0 || !Number.isFinite(readOhm)
      ? say`${Number.isFinite(readOhm) ? ohms(readOhm) : 'OL, more ohms than the meter shows,'} at ${volts(size)}`
      : say`${ohms(readOhm)} at ${volts(size)}: ${volts(size)} / ${ohms(readOhm)} = ${amperes(size / readOhm, 3)}, where ${of} is printed with ${amperes(size / own)}`
  if (readOhm < limit.short.value) return { ...none(because), excludes: ['reading-normal'], speaksFor: shorts }
  return own !== null && readOhm >= own / limit.tooMuchCurrent.value
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

/** At a first step of the bench supply its volts may lie under the plate: too little says nothing there. */
function currentSeen(readA: number, plateA: number, how: How): Read {
  const because = say`${amperes(readA)} where its plate says ${amperes(plateA)}: ${decimal(readA / plateA, 3)} times`
  if (readA > limit.tooMuchCurrent.value * plateA) return sign('current-too-much', because)
  return how !== 'part' && readA < limit.noCurrent.value * plateA ? sign('current-none', because) : none(because)
}

function caseSeen(caseV: number, mainsV: number): Read {
  const because = say`${volts(caseV)} from the case to earth, ${percent(caseV / mainsV)} of the mains`
  if (caseV > limit.caseLive.value * mainsV) return sign('tingle', because, { speaksFor: ['live-on-case'] })
  return caseV > limit.caseTingle.value * mainsV
    ? sign('tingle', because, { speaksFor: ['filter-no-earth'] })
    : none(because)
}

/** Over what is advised as the most, leakage holds power until it is found. */
function leakageSeen(leakA: number): Read {
  const { standingA } = residualTrip
  const because = say`${amperes(leakA)} to earth was read, where ${amperes(standingA)} is advised as the most`
  return leakA > standingA ? { ...none(because), speaksFor: ['y-leaky', 'y-by-design'], holds: true } : none(because)
}
