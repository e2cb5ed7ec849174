import { duration, volts } from '../../physics/quantity.js'
import { flashOver, settleTimes } from '../../tables/firstPower.js'
import type { Step } from '../firstPowerPlan.js'
import { type BehindLamp, lampText, seenAs } from './behindLamp.js'
import { lampWiring, noConverter, noIsolation, storedCharge } from './cautions.js'
import type { LampUse, PlanFacts } from './facts.js'
import type { RailPlan } from './rails.js'
import { atMost, qualified, step } from './step.js'

/** What is done and looked at before the plug goes in. */
function beforePower(facts: PlanFacts, lamp: LampUse | null): Step[] {
  const windows = facts.supply.input.windows
    .map(({ min, max }) => (min === max ? volts(min) : `${volts(min)} to ${volts(max)}`))
    .join(' or ')
  return [
    step('supply-alone.bare', 'Nothing on the supply’s output, its case closed, its plug out of the socket.'),
    step('supply-alone.voltage-again', 'Read the input voltage on the plate once more.', {
      expect: facts.reach ? `${windows}, for a mains of ${volts(facts.reach.voltageV)}` : windows,
      stopIf: 'it is another voltage than the mains',
      caution: noConverter,
    }),
    ...(facts.reach?.through === 'converter'
      ? [
          step('supply-alone.converter', 'Have the converter’s output measured, and feed the lamp circuit from it.', {
            expect: `near ${volts(facts.reach.voltageV)}; the supply meets the wall socket at no time`,
            unit: 'V',
            low: facts.reach.minV,
            high: facts.reach.maxV,
            stopIf: 'it reads outside, or the lamp circuit hangs on the wall socket',
            who: qualified,
          }),
        ]
      : []),
    step(
      'supply-alone.lamp-circuit',
      `Have the lamp circuit ready: ${lampText(lamp)} and a switch in the line conductor.`,
      {
        expect: 'a circuit built and checked under local codes, with earth straight through',
        stopIf: 'it is not certain which conductor is the line',
        who: qualified,
        caution: lampWiring,
      },
    ),
    ...(facts.classI === false
      ? []
      : [
          step(
            'supply-alone.earth',
            'Have the earth proved from the socket to bare metal of the supply, through the lamp circuit’s own earth.',
            {
              expect: 'a continuous path that does not pass the lamp',
              stopIf: 'there is none',
              who: qualified,
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
  seen: string | null,
): Step[] {
  const lampHigh = idle?.lampV == null ? null : atMost(idle.lampV)
  const wait = duration(flashOver.atLeastS)
  return [
    ...beforePower(facts, lamp),
    step('supply-alone.switch-on', `Plug in, switch on, hands off, and watch the lamp for ${wait}.`, {
      expect: seen ?? `a flash, then ${idle ? seenAs(idle.glow) : 'darker'}`,
      stopIf: `the lamp is still bright after ${wait}, gets brighter, or anything hums, smells or smokes: switch off and unplug`,
      caution: noIsolation,
    }),
    step(
      'supply-alone.lamp-volts',
      'Read the voltage across the lamp, on insulated test sockets, with a true-rms meter made for mains.',
      {
        expect:
          lampHigh === null
            ? 'the lower, the less the supply takes; a figure needs the lamp’s rating and the supply’s'
            : `at most ${volts(lampHigh, 3, 'up')}`,
        unit: 'V',
        low: lampHigh === null ? null : 0,
        high: lampHigh,
        stopIf:
          lampHigh === null
            ? 'it rises while you watch'
            : `it is above that and does not fall, or rises while you watch`,
      },
    ),
    ...rails.map((plan, index) =>
      step(`supply-alone.off-load-${index + 1}`, `Read ${plan.name}, with nothing connected.`, {
        expect: plan.offLoad
          ? `${volts(plan.offLoad.low, 4)} to ${volts(plan.offLoad.high, 4)}`
          : 'write it down; whether it is regulated is not known',
        unit: 'V',
        low: plan.offLoad?.low ?? null,
        high: plan.offLoad?.high ?? null,
        stopIf: plan.unregulated
          ? 'it reads nothing, or is far outside: a high reading alone condemns nothing'
          : 'it lies outside',
      }),
    ),
    ...(rails.some(({ rail }) => rail.kind === 'dc')
      ? [
          step(
            'supply-alone.polarity',
            rails.length > 1
              ? 'Meter on DC volts, black lead on the common: write down voltage and sign of every pin.'
              : 'Meter on DC volts: black lead on the sleeve of the plug, red on its centre. Write down the sign.',
            {
              expect: rails.length > 1 ? 'as the outputs read above' : 'plus: centre positive; minus: centre negative',
              stopIf: 'it is not what the machine wants',
            },
          ),
        ]
      : []),
    step('supply-alone.hold', `Leave it on for ${duration(settleTimes.aloneS)} and read the lamp again.`, {
      expect:
        lampHigh === null ? 'no more than before' : `at most ${volts(lampHigh, 3, 'up')}, and no more than before`,
      unit: 'V',
      low: lampHigh === null ? null : 0,
      high: lampHigh,
      stopIf: 'it has risen: something warms up',
    }),
    step('supply-alone.off', 'Switch off, unplug, wait, and read the output until it has fallen.', {
      expect: 'towards 0\u00a0V',
      caution: storedCharge,
    }),
  ]
}
