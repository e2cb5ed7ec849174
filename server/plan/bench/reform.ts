import { standardRating } from '../../physics/eSeries.js'
import {
  leakageLimit,
  type ReformingStage,
  reformingResistor,
  reformingStages,
  squareRootLeakage,
} from '../../physics/reforming.js'
import {
  acceptedLeakage,
  accessibleLimit,
  type LeakageRule,
  leakageRules,
  olderLeakageFactors,
  reformingDrop,
  reformingNeed,
  reformingRules,
  reformingSteps,
  storageAges,
} from '../../tables/capacitors.js'
import { powerMargin } from '../../tables/dummyLoad.js'
import { e12, resistorRatings } from '../../tables/preferredValues.js'
import { say } from '../../words/phrase.js'
import { amperes, decimal, duration, farads, ohms, percent, plain, volts, watts } from '../../words/quantity.js'
import type { Explained } from '../firstPower/lamps.js'

export interface ReformRequest {
  capacitanceF: number
  ratedV: number
  yearsUnused: number
  /** highest voltage it will see; absent: the rated one */
  workingV?: number | null
}

export interface ReformAnswer extends Explained {
  /** whether one unused for so long is reformed */
  need: 'check-leakage' | 'reform' | 'plan-to-replace'
  /** makers' words for that age */
  advice: string
  stages: (ReformingStage & { /** across the resistor at that leakage [V] */ dropV: number })[]
  /** in the series resistor if the capacitor is shorted [W] */
  resistorW: number
  /** rating to fit [W]; null where no single one is large enough */
  resistorRatedW: number | null
  /** in the first moment if the whole voltage is put on at once [A] */
  firstCurrentA: number
  acceptLeakageA: number
  /** of resistor and capacitor [s] */
  timeConstantS: number
  /** modern and older rules side by side; null where a rule is not meant for such a voltage */
  limits: { name: string; leakageA: number | null; after: string }[]
}

/** Leakage by one of the published rules; null outside the voltages it is meant for [A]. */
function limitBy(rule: LeakageRule, capacitanceF: number, ratedV: number): number | null {
  if (ratedV < rule.fromV || ratedV > rule.toV) return null
  if (rule.kind === 'square-root') return squareRootLeakage(capacitanceF, ratedV)
  if (rule.kind === 'proportional') return leakageLimit(rule.factor ?? 0, capacitanceF, ratedV, rule.addA, rule.floorA)
  const factor = olderLeakageFactors.find((row) => ratedV <= row.toV)
  // the older rule counts in mA per µF, without the voltage
  return factor ? leakageLimit(factor.factor, capacitanceF, 1, rule.addA) : null
}

/**
 * Who needs reforming, in what steps, and which leakage is accepted at the end.
 *
 * @throws RangeError for values of 0 or less, negative years, or a working voltage above the rated one
 * @source capacitor maker's note of October 1993; the others side by side in the answer
 */
export function reform(request: ReformRequest): ReformAnswer {
  const { capacitanceF, ratedV, yearsUnused } = request
  const workingV = request.workingV ?? ratedV
  if (!(workingV <= ratedV)) throw new RangeError(`workingV must be at most ratedV, got ${workingV} and ${ratedV}`)
  if (!(yearsUnused >= 0)) throw new RangeError(`yearsUnused must be 0 or more, got ${yearsUnused}`)
  const rules = { ...reformingRules, decade: e12.values }
  const acceptLeakageA = leakageLimit(acceptedLeakage.factor, capacitanceF, ratedV, 0, acceptedLeakage.floorA)
  const acceptWorkingA = leakageLimit(acceptedLeakage.factor, capacitanceF, workingV, 0, acceptedLeakage.floorA)
  const seriesOhm = reformingResistor(workingV, acceptWorkingA, rules)
  const stages = reformingStages(capacitanceF, workingV, seriesOhm, acceptWorkingA, rules)
  const resistorW = workingV ** 2 / seriesOhm
  const after = ratedV > reformingNeed.highVoltageV ? reformingNeed.highVoltageYears : reformingNeed.lowVoltageYears
  const need =
    yearsUnused > reformingNeed.replaceYears ? 'plan-to-replace' : yearsUnused > after ? 'reform' : 'check-leakage'
  const age = storageAges.find(({ toYears }) => toYears === null || yearsUnused <= toYears)
  return {
    need,
    advice: age?.advice ?? '',
    stages: stages.map((stage) => ({ ...stage, dropV: stage.maxLeakageA * stage.seriesOhm })),
    resistorW,
    resistorRatedW: standardRating(resistorW * powerMargin.factor, resistorRatings.valuesW) ?? null,
    firstCurrentA: workingV / seriesOhm,
    acceptLeakageA,
    timeConstantS: seriesOhm * capacitanceF,
    limits: leakageRules.map((rule) => ({
      name: rule.name,
      leakageA: limitBy(rule, capacitanceF, ratedV),
      after: rule.after,
    })),
    working: [
      say`leakage accepted at ${volts(ratedV)}: ${decimal(acceptedLeakage.factor)} × ${farads(capacitanceF)} × ${volts(ratedV)} = ${amperes(acceptLeakageA)}`,
      say`series resistor ${ohms(seriesOhm)}: makers give ${ohms(reformingRules.lowSeriesOhm)} up to ${volts(reformingRules.lowVoltageV)}, ${ohms(reformingRules.highSeriesOhm)} above, and it may take at most ${percent(reformingRules.largestDrop)} of the voltage at the accepted leakage`,
      say`if the capacitor is shorted: (${volts(workingV)})² / ${ohms(seriesOhm)} = ${watts(resistorW)}`,
      say`${decimal(stages.length)} steps of ${volts(workingV / stages.length)}: each starts with at most ${amperes(workingV / stages.length / seriesOhm)}`,
      say`settling: ${decimal(reformingRules.settling)} × ${ohms(seriesOhm)} × ${farads(capacitanceF)} = ${duration(reformingRules.settling * seriesOhm * capacitanceF)}`,
      say`${decimal(yearsUnused)} years without power at ${volts(ratedV)}: reformed after ${plain(after, 'years')}, replacement planned after ${plain(reformingNeed.replaceYears, 'years')}`,
    ],
    cautions: [
      ...(workingV > accessibleLimit.limitV
        ? [
            say`The terminals carry a voltage that can kill, for hours: cover them, label them, and discharge and measure before you touch anything.`,
          ]
        : []),
      say`A dry, bulged, vented or leaking capacitor is replaced, not reformed.`,
      say`Take the capacitor out of circuit, or be sure that nothing else hangs on its terminals. Mind its polarity.`,
      say`The part must stay cold. If it warms, or the current stops falling or rises, stop and discharge it.`,
      say`A series lamp does not reform: at milliamperes it drops nothing, so the capacitor gets the whole voltage at once.`,
    ],
    sources: [
      reformingRules.source,
      reformingSteps,
      reformingNeed.source,
      reformingDrop,
      acceptedLeakage.source,
      ...(age ? [age.source] : []),
      ...leakageRules.map(({ source }) => source),
    ],
  }
}
