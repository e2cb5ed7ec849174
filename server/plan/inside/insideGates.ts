import { coldInput } from '../../tables/firstPower.js'
import { chassisCapacitor, coldLoads } from '../../tables/inside.js'
import { say } from '../../words/phrase.js'
import { farads, ohms } from '../../words/quantity.js'
import type { Step } from '../firstPowerPlan.js'
import type { PlanFacts } from '../stages/facts.js'
import { stepOn } from '../stages/step.js'
import { partsOf } from './parts.js'

const step = stepOn('machine')

const motor = coldLoads[0]!

/** What is done inside a machine with its supply inside before its mains side is measured: what can be left off is unplugged. */
export function insideGates(facts: PlanFacts): Step[] {
  const parts = partsOf(facts)
  return [
    step(
      'gate.unplug-inside',
      say`Unplugged and opened, have everything with a plug of its own taken off inside: cards, drives, motors, heaters, lamps${parts.includes('picture tube') ? say`, the degaussing coil` : say``}; mark each plug. The picture tube, its coils and its neck board stay on.`,
      {
        expect: say`a list of what is off: what stays on sets the lamp`,
        stopIf: say`a plug has no mark: it is drawn before it is pulled`,
        who: 'qualified',
      },
    ),
    step(
      'gate.chassis-capacitors',
      say`Have capacitors from the mains to the chassis, and a switch that turns the two mains conductors round, taken out of circuit.`,
      {
        expect: say`none left, or one of class Y2 and ${farads(chassisCapacitor.mostF)} at most, earth proved; one that fails puts the mains on the chassis`,
        stopIf: say`an ordinary capacitor still joins the mains to the chassis`,
        who: 'qualified',
      },
    ),
    step(
      'gate.line-switched',
      say`Where cord, plug or inlet was replaced, have it proved which conductor the switch and the fuse-link break.`,
      {
        link: 'inlet',
        expect: say`both in the line conductor; in both conductors where both are live`,
        stopIf: say`either breaks the neutral alone: a blown link then leaves the inside live`,
        who: 'qualified',
      },
    ),
    ...(parts.includes('motor')
      ? [
          step('gate.shafts', say`Turn every shaft, reel, fan and platter by hand, belts off.`, {
            expect: say`free, without a grind; old belts and idlers are not tar`,
            stopIf: say`one sticks: a seized motor takes its starting current until something opens`,
          }),
          step(
            'gate.motor-ohms',
            say`Have each mains motor measured across its own leads, unplugged from the machine, then from a lead to its frame.`,
            {
              expect: say`a small motor for ${motor.atV}\u00a0V ${ohms(motor.lowOhm)} to ${ohms(motor.highOhm)}, for 120\u00a0V about a quarter; nothing to the frame`,
              unit: 'Ω',
              low: coldInput.fewOhm,
              high: motor.highOhm * 10,
              stopIf: say`open, a few ohms, or anything to the frame`,
              who: 'qualified',
            },
          ),
        ]
      : []),
    ...(parts.includes('transformer')
      ? [
          step(
            'gate.valves',
            say`Valves, where there are any: have the rectifier valve taken out, or all of them, for the first minutes on the lamp.`,
            {
              expect: say`then only the heaters that are left and the transformer light the lamp`,
              stopIf: say`a valve is milky, loose or cracked`,
              who: 'qualified',
            },
          ),
        ]
      : []),
  ]
}
