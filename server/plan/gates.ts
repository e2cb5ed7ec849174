import { primaryOhm } from '../physics/primaryResistance.js'
import { coldInput } from '../tables/firstPower.js'
import { isolationInsulation, safetyLimits } from '../tables/safetyTestLimits.js'
import { regulationFor } from '../tables/transformerRegulation.js'
import { joined, type Phrase, say } from '../words/phrase.js'
import { amperes, ohms, plain, watts } from '../words/quantity.js'
import { acrossCapacitors } from './acrossCapacitors.js'
import type { Step } from './firstPowerPlan.js'
import { insideGates } from './inside/insideGates.js'
import type { Limits } from './limits.js'
import { cleanPaper, oldBatteries, oldMaterials, pictureTube } from './stages/cautions.js'
import { type PlanFacts, standing } from './stages/facts.js'
import { type LeastLoad, leastLoads } from './stages/leastLoads.js'
import type { RailPlan } from './stages/rails.js'
import { reformGates } from './stages/reformGates.js'
import { beforeReach, step, stepOn } from './stages/step.js'

const onMachine = stepOn('machine')
const open = say`it has no result: have it tested by a qualified person`

/**
 * What is done before any power, in order: look and take out, cold resistance, isolation and earth, what is replaced on sight,
 * reforming, what must be connected. None of them puts anything on the mains.
 */
export function gatesOf(facts: PlanFacts, rails: readonly RailPlan[]): Step[] {
  const onMains = !facts.fedLow && facts.arrangement !== 'machine-only'
  return [
    ...looking
      .filter(({ link }) => (link === 'machine' ? facts.arrangement !== 'supply-only' : onMains))
      .map((one): Step => (inside.includes(one.key) && forTrainedHands(facts) ? { ...one, who: 'qualified' } : one)),
    ...(facts.tube ? [tubeStep] : []),
    ...(facts.arrangement === 'built-in' ? insideGates(facts) : []),
    ...(onMains ? [...replaced, ...coldResistance(facts), ...isolation(facts), ...earth(facts)] : []),
    ...reformGates(facts),
    ...leastLoads(facts, rails).map(leastLoadStep),
  ]
}

/** What reaches inside the machine. */
const inside = ['look.discharge', 'look.inside']

/** Whether the inside of the machine is for trained hands: a picture tube is in it, or its chassis is, or may be, joined to the mains. */
const forTrainedHands = (facts: PlanFacts): boolean =>
  facts.tube ||
  facts.notIsolated ||
  (facts.arrangement === 'built-in' && standing(facts, ['isolation'], true).length > 0)

const looking: readonly Step[] = [
  onMachine(
    'look.batteries',
    say`Take out every battery and back-up cell of the machine; look at the places they sat in.`,
    {
      expect: say`dry, no crust, no green or white on contacts and board`,
      stopIf: say`anything has leaked: clean and mend before power`,
      caution: oldBatteries,
    },
  ),
  step('look.cord', say`Look along the cord, the plug and both strain reliefs.`, {
    link: 'cord',
    expect: say`no cracks, no cuts, nothing sticky, no play`,
    stopIf: say`any damage: the cord set is replaced as a whole`,
  }),
  step('look.case', say`Look at, shake and smell supply and machine.`, {
    expect: say`closed case, nothing rattles, no smell of burning or fish`,
    stopIf: say`something rattles, bulges, or smells burnt`,
  }),
  onMachine(
    'look.discharge',
    say`Before each reach inside the machine: unplug, wait, ${acrossCapacitors}.`,
    beforeReach,
  ),
  onMachine('look.inside', say`Look inside the machine: capacitors, board, connectors, moving parts, foam and belts.`, {
    expect: say`no bulges, no crust, no burnt spot, moves by hand where it should`,
    stopIf: say`a capacitor has burst or leaked`,
    caution: oldMaterials,
  }),
]

const tubeStep = onMachine(
  'gate.picture-tube',
  say`Leave the picture tube and what feeds it connected and closed as they are. Discharging, disconnecting and replacing are for a technician trained on picture tubes.`,
  {
    expect: say`anode cap, deflection coils and neck board all in place; the machine never runs without its tube`,
    stopIf: say`one of them is loose or missing, or the glass is scratched or cracked`,
    who: 'qualified',
    caution: pictureTube,
  },
)

const replaced: readonly Step[] = [
  step(
    'gate.paper-capacitors',
    say`Have capacitors across the mains that are metallised paper in clear resin replaced before power, on sight, also those in the inlet filter; a sealed case is not opened for it.`,
    {
      expect: say`none left: film parts of class X2 across the mains and Y2 to earth in their place, of the same value`,
      stopIf: say`one is still in, cracked or not`,
      who: 'qualified',
      caution: cleanPaper,
    },
  ),
  step('gate.suppressors', say`Have the print of surge suppressors across the mains read.`, {
    expect: say`an AC rating of at least 1.1 times the highest mains here, such as 275\u00a0V for 230\u00a0V`,
    stopIf: say`it is rated for another region’s lower mains: it conducts on every crest`,
    who: 'qualified',
  }),
]

/** Live to neutral and each to earth, cold, at the plug. */
function coldResistance(facts: PlanFacts): Step[] {
  const { stopIf, ...expected } = betweenPoles(facts)
  return [
    step(
      'gate.live-neutral',
      say`Plug out, switch on: measure resistance from live to neutral pin, both ways round, until it stops rising.`,
      { link: 'inlet', unit: 'Ω', ...expected, stopIf: say`${stopIf}; or ${open}` },
    ),
    ...(facts.classI === false
      ? []
      : [
          step(
            'gate.to-earth',
            say`The same from the live pin to the earth pin, then from the neutral pin: write down the lower.`,
            {
              link: 'inlet',
              expect: say`more than ${ohms(coldInput.toEarthOhm)}, rising: filter capacitors pass no direct current`,
              unit: 'Ω',
              low: coldInput.toEarthOhm,
              stopIf: say`it is less, or ${open}`,
            },
          ),
        ]),
  ]
}

interface Expected extends Limits {
  expect: Phrase
  stopIf: Phrase
}

function betweenPoles({ technology, supply, rated }: PlanFacts): Expected {
  const shorted = say`a shorted rectifier, suppressor or winding`
  if (technology === 'switch-mode')
    return {
      expect: say`a kick while a capacitor charges, then ${ohms(coldInput.rectifierOhm)} or more`,
      low: coldInput.rectifierOhm,
      high: null,
      stopIf: say`it stays below that: ${shorted}`,
    }
  const [window, ...others] = supply.input.windows
  const ratedVA = supply.input.powerVA ?? rated?.powerW ?? null
  const regulation = ratedVA === null ? undefined : regulationFor(ratedVA)
  const low =
    window && ratedVA !== null && regulation
      ? primaryOhm(window.min, ratedVA, regulation.low) / coldInput.spread
      : coldInput.fewOhm
  if (technology === 'transformer' && window && others.length === 0 && ratedVA !== null && regulation) {
    const high = primaryOhm(window.max, ratedVA, regulation.high) * coldInput.spread
    return {
      expect: say`the winding: ${ohms(low, 2, 'down')} to ${ohms(high, 2, 'up')} (estimate from its size)`,
      low,
      high,
      stopIf: say`it is far less: shorted turns; or open: a fuse-link, switch or thermal link, which is never bridged`,
    }
  }
  const few = Math.min(low, coldInput.fewOhm)
  return {
    expect: say`of a transformer its winding, some ohms to a kilohm by its size; of a rectifier ${ohms(coldInput.rectifierOhm)} or more after a kick`,
    low: few,
    high: null,
    strict: true,
    stopIf: say`it stays at ${ohms(few, 2)} or less: ${shorted}`,
  }
}

const leastOf = (of: 'I' | 'II'): number =>
  Math.max(
    ...safetyLimits.flatMap(({ test, general, classes, limit }) =>
      test === 'insulation' && general && limit !== null && classes.includes(of) ? [limit] : [],
    ),
  )

/** The largest earth resistance of the schemes for equipment in use, with their longest cords [Ω]. */
const mostEarthOhm = Math.max(
  ...safetyLimits.flatMap(({ test, general, limit, stepped }) =>
    test === 'earth-resistance' && general && limit !== null ? [stepped?.mostOhm ?? limit] : [],
  ),
)

const byTester = say`by a person qualified for it, with an insulation tester at 500\u00a0V DC, or 250\u00a0V where surge suppressors join the poles to earth`

/** Mains to output and to metal, before anyone probes the output. */
function isolation({ arrangement, classI, notIsolated }: PlanFacts): Step[] {
  const caseMOhm = leastOf(classI === true ? 'I' : 'II')
  return [
    ...(notIsolated || arrangement === 'built-in'
      ? []
      : [
          step(
            'gate.isolation',
            say`Have insulation measured from live and neutral joined to every output contact joined, never between the output’s own contacts: ${byTester}.`,
            {
              expect: say`at least ${plain(isolationInsulation.value, 'MΩ')}: the output is isolated from the mains`,
              unit: 'Ω',
              low: isolationInsulation.value * 1e6,
              stopIf: say`it is less, or ${open}`,
              who: 'qualified',
            },
          ),
        ]),
    step(
      'gate.insulation',
      say`Have insulation measured from live and neutral joined to all bare metal${classI === false ? say`` : say` and the earth pin`}: ${byTester}.`,
      {
        expect: say`at least ${plain(caseMOhm, 'MΩ')}`,
        unit: 'Ω',
        low: caseMOhm * 1e6,
        stopIf: say`it is less, falls under the test, or ${open}`,
        who: 'qualified',
      },
    ),
  ]
}

const earth = ({ classI, supply }: PlanFacts): Step[] =>
  classI === true
    ? [
        step(
          'before.earth',
          say`Have the earth proved from the plug’s earth contact to bare metal of the ${supply.called}.`,
          {
            link: 'inlet',
            expect: say`within the limit of the scheme the tester works to, ${ohms(mostEarthOhm)} at most in any`,
            unit: 'Ω',
            low: 0,
            high: mostEarthOhm,
            stopIf: say`the limit is passed, there is no earth to prove, or ${open}`,
            who: 'qualified',
          },
        ),
      ]
    : []

const leastLoadStep = ({ plan, number, leastA, known }: LeastLoad): Step => {
  const size = Math.abs(plan.rail.voltageV)
  return step(
    `gate.least-load-${number}`,
    joined([
      say`Put its least load on ${plan.name}, before the first second of power: a resistor of ${ohms(size / leastA, 3, 'down')} or less, for at least ${watts(2 * size * leastA, 2, 'up')}, that draws ${amperes(leastA, 3, 'up')}.`,
      ...(known ? [] : [say`What it needs is not known: a tenth of its rating is usual; look on its sticker.`]),
    ]),
    {
      expect: say`connected, and left there through every stage`,
      stopIf: say`it is not on: without it such a supply may shut off, or raise its outputs`,
    },
  )
}
