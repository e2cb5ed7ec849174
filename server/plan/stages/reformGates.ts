import { dcTouchLimit, reformingNeed } from '../../tables/capacitors.js'
import { say } from '../../words/phrase.js'
import { amperes, duration, farads, ohms, plain, volts, watts } from '../../words/quantity.js'
import { type ReformAnswer, reform } from '../bench/reform.js'
import type { Step } from '../firstPowerPlan.js'
import { lethalCapacitor, storedCharge } from './cautions.js'
import type { PlanFacts } from './facts.js'
import { step } from './step.js'

/** The reforming of the capacitor that was entered, to the voltage it will see; null where the years ask for none, or it is not known. */
export function reforming({ options, reach }: PlanFacts): { answer: ReformAnswer; mainsSide: boolean } | null {
  const { yearsUnused, bulkF, bulkRatedV } = options
  if (yearsUnused == null || bulkF == null || bulkRatedV == null) return null
  const crestV = reach && reach.voltageV * Math.SQRT2
  // a capacitor that would not bear the crest of the mains stands on the low-voltage side
  const mainsSide = crestV === null ? bulkRatedV > dcTouchLimit.limitV : bulkRatedV >= crestV
  return { answer: reform({ capacitanceF: bulkF, ratedV: bulkRatedV, yearsUnused }), mainsSide }
}

/** Reforming as steps, each with what may still leak at its end; where only the years are known, the capacitor is asked for. */
export function reformGates(facts: PlanFacts): Step[] {
  const { yearsUnused, bulkF, bulkRatedV } = facts.options
  if (yearsUnused == null) {
    facts.missing.push(say`Years without power: capacitors that stood long are reformed first.`)
    return []
  }
  if (bulkF == null || bulkRatedV == null)
    facts.missing.push(say`Value and rated voltage of the largest capacitor: the reforming steps hang on them.`)
  const found = reforming(facts)
  if (!found || bulkF == null || bulkRatedV == null)
    return yearsUnused > reformingNeed.highVoltageYears
      ? [
          step(
            'gate.reform-values',
            say`After ${plain(yearsUnused, 'years')} without power: read value and rated voltage of the reservoir capacitors, of the mains side and of the low-voltage side, and enter them.`,
            {
              expect: say`then the reforming of each is worked out; above ${volts(dcTouchLimit.limitV)} it is for a qualified person`,
              stopIf: say`they are not known: have them measured or replaced before power`,
            },
          ),
        ]
      : []
  const { answer, mainsSide } = found
  if (answer.need === 'check-leakage') return []
  const deadly = bulkRatedV > dcTouchLimit.limitV
  return [
    step(
      'gate.reform-fit',
      say`Reform the ${farads(bulkF)} ${volts(bulkRatedV)} capacitor of the ${mainsSide ? say`mains` : say`low-voltage`} side out of circuit, covered, through ${ohms(answer.stages[0]?.seriesOhm ?? 0)}${answer.resistorRatedW === null ? say`` : say`, ${watts(answer.resistorRatedW)}`}: on a DC source that can be set.`,
      {
        expect: say`plus to plus; dry, not bulged`,
        stopIf: say`it leaks or bulges: it is replaced, not reformed`,
        who: deadly ? 'qualified' : 'you',
        caution: deadly ? lethalCapacitor : storedCharge,
      },
    ),
    ...answer.stages.map(({ voltageV, holdS, maxLeakageA }, index) =>
      step(
        `gate.reform-${index + 1}`,
        say`Reform: raise the source to ${volts(voltageV)}, hold for ${duration(holdS)}, and read the current.`,
        {
          expect: say`fallen to at most ${amperes(maxLeakageA, 3, 'down')}; the part stays cold`,
          unit: 'A',
          low: 0,
          high: maxLeakageA,
          stopIf: say`it stops falling, rises, or the part warms: switch off, discharge, replace it`,
          who: deadly ? 'qualified' : 'you',
          power: 'low-voltage',
        },
      ),
    ),
  ]
}
