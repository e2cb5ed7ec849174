import { rectifiedCrest, rippleBound, windingVoltage } from '../../physics/offLoad.js'
import { type ReservoirState, reservoirSupply } from '../../physics/reservoirSupply.js'
import { unregulatedBand } from '../../tables/dummyLoad.js'
import {
  cheapAdaptors,
  diodeDrop,
  loadedRule,
  offLoadHigh,
  rippleSource,
  windingCurrents,
} from '../../tables/rectifiers.js'
import { regulationFor } from '../../tables/transformerRegulation.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, decimal, farads, hertz, percent, voltAmperes, volts } from '../../words/quantity.js'
import type { Explained } from '../firstPower/lamps.js'

export const rectifiers = ['bridge', 'centre-tap', 'half-wave', 'none'] as const

type Rectifier = (typeof rectifiers)[number]

export interface OffLoadRequest {
  /** rated secondary; of one half where it is centre-tapped [V rms] */
  acV: number
  ratedVA: number
  /** absent: typical for the size, which is known from 1 VA to 500 VA */
  regulationPercent?: number | null
  rectifier: Rectifier
  capacitanceF?: number | null
  currentA?: number | null
  frequencyHz?: number | null
  /** mains now, and mains it is rated for; absent: the same [V] */
  mainsV?: number | null
  ratedMainsV?: number | null
}

export interface OffLoadAnswer extends Explained {
  /** with nothing connected; null without a rectifier [V] */
  dcOffLoadV: number | null
  /** mean under the load asked about; null where no current or no capacitor is given, or it cannot be held [V] */
  dcLoadedV: number | null
  /** upper bound, peak to peak; null likewise [V] */
  rippleV: number | null
  /** expected rather than at most, peak to peak [V] */
  expectedRippleV: number | null
  /** lowest point of the ripple by the bound [V] */
  valleyV: number | null
  acOffLoadV: number
  acLoadedV: number | null
  /** what a meter may show with nothing connected: the regulation's own range [V] */
  offLoadRangeV: { low: number; high: number }
  regulationPercent: number
  /** rms current of the winding under that load: worked out, and the published factors [A] */
  windingA: number | null
  windingFactors: { factor: number; from: string }[]
}

/** Whether the size is covered where no regulation is given. */
export const regulationKnown = (ratedVA: number): boolean => regulationFor(ratedVA) !== undefined

/**
 * What an unregulated transformer supply gives, off load and under load.
 *
 * @throws RangeError for values of 0 or less, or a size outside the table with no regulation given
 * @source regulation, crest less diodes, reservoir capacitor
 */
export function offLoad(request: OffLoadRequest): OffLoadAnswer {
  const { acV, ratedVA, rectifier } = request
  const typical = request.regulationPercent == null ? regulationFor(ratedVA) : undefined
  const given = request.regulationPercent == null ? undefined : request.regulationPercent / 100
  const range =
    given !== undefined
      ? { low: given, high: given }
      : typical
        ? { low: typical.low, high: typical.high }
        : fail(`ratedVA has no typical regulation, got ${ratedVA}`)
  const regulation = (range.low + range.high) / 2
  const ratio = request.mainsV != null && request.ratedMainsV != null ? request.mainsV / request.ratedMainsV : 1
  const diodes = { bridge: 2, 'centre-tap': 1, 'half-wave': 1, none: 0 }[rectifier]
  const dc = (acOffV: number): number => rectifiedCrest(acOffV, diodes, diodeDrop.offLoadV)
  const acOffLoadV = windingVoltage(acV, regulation, 0, ratio)
  const ends = [range.low, range.high].map((share) => windingVoltage(acV, share, 0, ratio))
  const [low = acOffLoadV, high = acOffLoadV] = rectifier === 'none' ? ends : ends.map(dc)
  const load = underLoad(request, regulation, ratio, diodes)
  const dcOffLoadV = rectifier === 'none' ? null : dc(acOffLoadV)
  const factors = windingCurrents.filter((row) => row.rectifier === rectifier)
  return {
    dcOffLoadV,
    ...load.answer,
    acOffLoadV,
    offLoadRangeV: { low, high },
    regulationPercent: regulation * 100,
    windingFactors: factors.map((row) => ({ factor: row.factor, from: row.source.title })),
    working: [
      given !== undefined
        ? say`regulation ${percent(regulation)}, as given`
        : say`regulation ${percent(range.low)} to ${percent(range.high)} is typical for ${voltAmperes(ratedVA)} (project estimate); the middle, ${percent(regulation)}, is used`,
      say`winding off load: ${volts(acV)} × (1 + ${decimal(regulation)})${ratio === 1 ? say`` : say` × ${decimal(ratio)}`} = ${volts(acOffLoadV)}`,
      ...(dcOffLoadV === null
        ? []
        : [
            say`off load: ${volts(acOffLoadV)} × √2 − ${decimal(diodes)} × ${volts(diodeDrop.offLoadV)} = ${volts(dcOffLoadV)}; a meter may show ${volts(low)} to ${volts(high)}`,
          ]),
      ...load.working,
    ],
    cautions: [
      say`A high reading with nothing connected condemns nothing by itself: rated volts are reached only at rated current. Judge the supply on a dummy load.`,
      ...(dcOffLoadV === null
        ? [say`An AC output is replaced by an AC supply only; its rated current is an rms current.`]
        : [
            say`The capacitor must be rated above the off-load voltage at the highest mains, ${volts(high * (1 + unregulatedBand.tolerance), 3, 'up')} at ${percent(unregulatedBand.tolerance)} over.`,
            say`A machine that needs a regulated voltage must not be connected to this output.`,
          ]),
      ...load.cautions,
    ],
    sources: [
      ...(typical?.sources ?? []),
      offLoadHigh,
      cheapAdaptors,
      diodeDrop.source,
      rippleSource,
      ...factors.map(({ source }) => source),
      ...(rectifier === 'bridge' ? [loadedRule.source] : []),
    ],
  }
}

type Loaded = Pick<OffLoadAnswer, 'dcLoadedV' | 'rippleV' | 'expectedRippleV' | 'valleyV' | 'acLoadedV' | 'windingA'>

const nothing: Loaded = {
  dcLoadedV: null,
  rippleV: null,
  expectedRippleV: null,
  valleyV: null,
  acLoadedV: null,
  windingA: null,
}

function underLoad(
  request: OffLoadRequest,
  regulation: number,
  ratio: number,
  diodes: number,
): { answer: Loaded; working: Phrase[]; cautions: Phrase[] } {
  const { acV, ratedVA, rectifier, capacitanceF, currentA } = request
  if (currentA == null) return { answer: nothing, working: [], cautions: [] }
  const ratedA = ratedVA / acV
  if (rectifier === 'none') {
    const share = currentA / ratedA
    const acLoadedV = Math.max(0, windingVoltage(acV, regulation, share, ratio))
    return {
      answer: { ...nothing, acLoadedV, windingA: currentA },
      working: [
        say`at ${amperes(currentA)}, ${percent(share)} of ${amperes(ratedA)}: ${volts(acV)} × (1 + ${decimal(regulation)} × (1 − ${decimal(share)})) = ${volts(acLoadedV)}`,
      ],
      cautions: share > 1 ? [overloaded(currentA, ratedA)] : [],
    }
  }
  if (capacitanceF == null)
    return {
      answer: nothing,
      working: [say`without the reservoir capacitor’s value neither ripple nor loaded volts can be worked out`],
      cautions: [],
    }
  const full = rectifier !== 'half-wave'
  const frequencies = request.frequencyHz == null ? [50, 60] : [request.frequencyHz]
  const bounds = frequencies.map((hz) => ({ hz, ripple: rippleBound(currentA, capacitanceF, hz, full ? 2 : 1) }))
  // without a frequency the lower one, which has more ripple, decides
  const [{ hz, ripple } = { hz: 50, ripple: 0 }] = bounds
  const state = reservoirSupply({
    crestV: windingVoltage(acV, regulation, 0, ratio) * Math.SQRT2,
    sourceOhm: (regulation * acV) / ratedA,
    dropV: diodes * diodeDrop.loadedV,
    capacitanceF,
    currentA,
    frequencyHz: hz,
    fullWave: full,
  })
  const crest = rectifiedCrest(windingVoltage(acV, regulation, 1, ratio), diodes, diodeDrop.loadedV)
  const valleyV = Math.max(0, crest - ripple)
  const windingA = state === null ? null : state.rmsFactor * currentA * (rectifier === 'centre-tap' ? Math.SQRT1_2 : 1)
  return {
    answer: {
      dcLoadedV: state?.meanV ?? null,
      rippleV: ripple,
      expectedRippleV: state?.rippleV ?? null,
      valleyV,
      acLoadedV: null,
      windingA,
    },
    working: [
      ...bounds.map(
        (bound) =>
          say`ripple at ${hertz(bound.hz)}: at most ${amperes(currentA)} / (${full ? say`2 × ` : say``}${hertz(bound.hz)} × ${farads(capacitanceF)}) = ${volts(bound.ripple)} peak to peak`,
      ),
      say`valley: ${volts(acV)}${ratio === 1 ? say`` : say` × ${decimal(ratio)}`} × √2 − ${decimal(diodes)} × ${volts(diodeDrop.loadedV)} − ${volts(ripple)} = ${volts(valleyV)}, at rated load, before the extra drop of peaky current`,
      ...(state === null ? [] : stateWorking(state, request, regulation, ratedA, windingA ?? 0)),
    ],
    cautions: [
      ...(state === null ? [say`This transformer cannot hold that load: the capacitor runs empty.`] : []),
      ...(windingA !== null && windingA > ratedA ? [overloaded(windingA, ratedA)] : []),
      ...(bounds.length > 1 || hz === 50
        ? [
            say`Ripple is ${1.2} times as much on 50\u00a0Hz as on 60\u00a0Hz: hum that comes only with 50\u00a0Hz points to a tired capacitor.`,
          ]
        : []),
    ],
  }
}

const overloaded = (windingA: number, ratedA: number): Phrase =>
  say`The winding carries ${amperes(windingA, 3, 'up')}, more than its rated ${amperes(ratedA)}: it overheats at this load.`

const stateWorking = (
  state: ReservoirState,
  { acV, currentA }: OffLoadRequest,
  regulation: number,
  ratedA: number,
  windingA: number,
): Phrase[] => [
  say`loaded, stepped through the cycle with ${decimal(regulation)} × ${volts(acV)} / ${amperes(ratedA)} of winding resistance: mean ${volts(state.meanV)}, ripple ${volts(state.rippleV)}`,
  say`winding current: ${amperes(windingA)} rms for ${amperes(currentA ?? 0)} DC`,
]

function fail(message: string): never {
  throw new RangeError(message)
}
