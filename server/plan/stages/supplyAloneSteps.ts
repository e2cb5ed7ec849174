import { windowText } from '../../chain/words.js'
import { flashOver, settleTimes } from '../../tables/firstPower.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { duration, volts } from '../../words/quantity.js'
import type { Step } from '../firstPowerPlan.js'
import { type BehindLamp, lampText, seenAs } from './behindLamp.js'
import { lampWiring, noConverter, noIsolation, storedCharge } from './cautions.js'
import type { LampUse, PlanFacts } from './facts.js'
import { leastLoads } from './leastLoads.js'
import type { RailPlan } from './rails.js'
import { atMost, step } from './step.js'

/** What is done and looked at before the plug goes in. */
function beforePower(facts: PlanFacts, lamp: LampUse | null, loaded: boolean): Step[] {
  const windows = joined(facts.supply.input.windows.map(windowText), say` or `)
  return [
    step('supply-alone.gates', say`Go back through every gate: each has its result, and who found it, written down.`, {
      expect: say`all of them, each within its limits`,
      stopIf: say`one is open: have it tested by a qualified person; nothing is plugged in before`,
    }),
    step(
      'supply-alone.bare',
      loaded
        ? say`Nothing on the supply’s output but its least load, its case closed, its plug out of the socket.`
        : say`Nothing on the supply’s output, its case closed, its plug out of the socket.`,
    ),
    step('supply-alone.voltage-again', say`Read the input voltage on the plate once more.`, {
      expect: facts.reach ? say`${windows}, for a mains of ${volts(facts.reach.voltageV)}` : windows,
      stopIf: say`it is another voltage than the mains`,
      caution: noConverter,
    }),
    ...(facts.reach?.through === 'converter'
      ? [
          step(
            'supply-alone.converter',
            say`Have the converter’s output measured, and feed the lamp circuit from it.`,
            {
              expect: say`near ${volts(facts.reach.voltageV)}; the supply meets the wall socket at no time`,
              unit: 'V',
              low: facts.reach.minV,
              high: facts.reach.maxV,
              stopIf: say`it reads outside, or the lamp circuit hangs on the wall socket`,
              link: 'converter',
              who: 'qualified',
              power: 'mains',
            },
          ),
        ]
      : []),
    step(
      'supply-alone.lamp-circuit',
      say`Have the lamp circuit ready: ${lampText(lamp)} and a switch in the line conductor.`,
      {
        expect: say`a circuit built and checked under local codes, with earth straight through`,
        stopIf: say`it is not certain which conductor is the line`,
        link: 'source',
        who: 'qualified',
        caution: lampWiring,
      },
    ),
    ...(facts.classI === false
      ? []
      : [
          step(
            'supply-alone.earth',
            say`Have the earth proved from the socket to bare metal of the supply, through the lamp circuit’s own earth.`,
            {
              expect: say`a continuous path that does not pass the lamp`,
              stopIf: say`there is none`,
              link: 'source',
              who: 'qualified',
            },
          ),
        ]),
  ]
}

/** The lines of stage 1, in order. */
export function supplyAloneSteps(
  facts: PlanFacts,
  rails: readonly RailPlan[],
  lamp: LampUse | null,
  idle: BehindLamp | null,
  seen: Phrase | null,
): Step[] {
  const loaded = leastLoads(facts, rails).length > 0
  const lampHigh = idle?.lampV == null ? null : atMost(idle.lampV)
  const wait = duration(flashOver.atLeastS)
  return [
    ...beforePower(facts, lamp, loaded),
    step('supply-alone.switch-on', say`Plug in, switch on, hands off, and watch the lamp for ${wait}.`, {
      expect: seen ?? say`a flash, then ${idle ? seenAs(idle.glow) : say`darker`}`,
      stopIf: say`the lamp is still bright after ${wait}, gets brighter, or anything hums, smells or smokes: switch off and unplug`,
      power: 'mains',
      caution: noIsolation,
    }),
    step(
      'supply-alone.lamp-volts',
      say`Read the voltage across the lamp, on insulated test sockets, with a true-rms meter made for mains.`,
      {
        expect:
          lampHigh === null
            ? say`the lower, the less the supply takes; a figure needs the lamp’s rating and the supply’s`
            : say`at most ${volts(lampHigh, 3, 'up')}`,
        unit: 'V',
        low: lampHigh === null ? null : 0,
        high: lampHigh,
        stopIf:
          lampHigh === null
            ? say`it rises while you watch`
            : say`it is above that and does not fall, or rises while you watch`,
        power: 'mains',
      },
    ),
    ...rails.map((plan, index) =>
      step(
        `supply-alone.off-load-${index + 1}`,
        loaded ? say`Read ${plan.name}, with only the least load.` : say`Read ${plan.name}, with nothing connected.`,
        {
          expect: plan.offLoad
            ? say`${volts(plan.offLoad.low, 4)} to ${volts(plan.offLoad.high, 4)}`
            : say`write it down; whether it is regulated is not known`,
          unit: 'V',
          low: plan.offLoad?.low ?? null,
          high: plan.offLoad?.high ?? null,
          power: 'mains',
          stopIf: plan.unregulated
            ? say`it reads nothing, or is far outside: a high reading alone condemns nothing`
            : say`it lies outside`,
        },
      ),
    ),
    ...(rails.some(({ rail }) => rail.kind === 'dc')
      ? [
          step(
            'supply-alone.polarity',
            rails.length > 1
              ? say`Meter on DC volts, black lead on the common: write down voltage and sign of every pin.`
              : say`Meter on DC volts: black lead on the sleeve of the plug, red on its centre. Write down the sign.`,
            {
              expect:
                rails.length > 1 ? say`as the outputs read above` : say`plus: centre positive; minus: centre negative`,
              stopIf: say`it is not what the machine wants`,
              link: 'plug',
              power: 'mains',
            },
          ),
        ]
      : []),
    step('supply-alone.hold', say`Leave it on for ${duration(settleTimes.aloneS)} and read the lamp again.`, {
      expect:
        lampHigh === null
          ? say`no more than before`
          : say`at most ${volts(lampHigh, 3, 'up')}, and no more than before`,
      unit: 'V',
      low: lampHigh === null ? null : 0,
      high: lampHigh,
      stopIf: say`it has risen: something warms up`,
      power: 'mains',
    }),
    step('supply-alone.off', say`Switch off, unplug, wait, and read the output until it has fallen.`, {
      expect: say`towards 0\u00a0V`,
      caution: storedCharge,
    }),
  ]
}
