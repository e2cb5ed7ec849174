import { windowText } from '../../chain/words.js'
import { plugPinLimit } from '../../tables/capacitors.js'
import { largestRise } from '../../tables/dummyLoad.js'
import { fallenShare, flashOver, settleTimes } from '../../tables/firstPower.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { duration, volts } from '../../words/quantity.js'
import type { Step } from '../firstPowerPlan.js'
import { type BehindLamp, lampBand, seenAs } from './behindLamp.js'
import { behindIsolating, noConverter, noIsolation, storedCharge } from './cautions.js'
import { type LampUse, mainsBand, type PlanFacts } from './facts.js'
import { lampCircuit, sourceStep } from './fedBy.js'
import { leastLoads } from './leastLoads.js'
import { markedFor, meterOnLamp } from './meterOnLamp.js'
import type { RailPlan } from './rails.js'
import { atMost, fallenBelow, step } from './step.js'

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
            say`Have the converter’s output measured: AC volts, ${markedFor(facts.reach.voltageV)}. Feed the lamp circuit from it.`,
            {
              expect: say`near ${volts(facts.reach.voltageV)}; the supply meets the wall socket at no time`,
              unit: 'V',
              ...mainsBand(facts.reach),
              stopIf: say`it reads outside, or the lamp circuit hangs on the wall socket`,
              link: 'converter',
              who: 'qualified',
              power: 'mains',
              caution: facts.check.converter?.kind === 'isolating' ? behindIsolating : null,
            },
          ),
        ]
      : []),
    lampCircuit('supply-alone', facts, lamp),
    ...sourceStep('supply-alone', facts),
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
  const lampLimits = lampBand(facts, idle?.lampV ?? null)
  const wait = duration(flashOver.atLeastS)
  return [
    ...beforePower(facts, lamp, loaded),
    meterOnLamp('supply-alone', facts),
    step('supply-alone.switch-on', say`Plug in, switch on, hands off, and watch the lamp for ${wait}.`, {
      expect: seen ?? say`a flash, then ${idle ? seenAs(idle.glow) : say`darker`}`,
      stopIf: say`the lamp is still bright after ${wait}, gets brighter, or anything hums, smells or smokes: switch off and unplug`,
      power: 'mains',
      caution: noIsolation,
    }),
    step(
      'supply-alone.lamp-volts',
      say`Read the voltage across the lamp: leads untouched, a true-rms meter made for mains.`,
      {
        expect:
          lampHigh === null
            ? say`at most ${volts(lampLimits.high, 3, 'up')}, half of the mains; the figure of its own needs the ratings of lamp and supply`
            : say`at most ${volts(lampHigh, 3, 'up')}`,
        ...lampLimits,
        stopIf: say`it is above that and does not fall, or rises while you watch`,
        power: 'mains',
      },
    ),
    step('supply-alone.hold', say`Leave it on for ${duration(settleTimes.aloneS)} and read the lamp again.`, {
      expect: say`at most ${volts(lampLimits.high, 3, 'up')}, and no more than before`,
      ...lampLimits,
      notAbove: 'supply-alone.lamp-volts',
      stopIf: say`it has risen: something warms up`,
      power: 'mains',
    }),
    ...toTheOutput(rails),
    ...rails.map((plan, index) =>
      step(
        `supply-alone.off-load-${index + 1}`,
        loaded ? say`Read ${plan.name}, with only the least load.` : say`Read ${plan.name}, with nothing connected.`,
        {
          ...offLoadBand(plan),
          power: 'mains',
          stopIf: plan.unregulated
            ? say`it reads nothing, or is far outside: a high reading alone condemns nothing`
            : say`it lies outside`,
        },
      ),
    ),
    ...signSteps(facts, rails),
    step('supply-alone.off', say`Switch off, unplug, wait, and read the output until it has fallen.`, {
      ...fallen(rails),
      caution: storedCharge,
    }),
  ]
}

/** The sign on the centre of the plug; of several outputs that of each pin, which is a reading of its own. */
function signSteps(facts: PlanFacts, rails: readonly RailPlan[]): Step[] {
  const shared = { link: 'plug', power: 'mains', unit: 'V', strict: true } as const
  if (rails.length > 1)
    return rails.flatMap(({ rail, name }, index) =>
      rail.kind === 'dc'
        ? step(
            `supply-alone.polarity-${index + 1}`,
            say`At the connector, black lead on the common, red on the pin of ${name}: write down voltage and sign.`,
            {
              ...shared,
              ...(rail.voltageV < 0
                ? { expect: say`minus: below 0\u00a0V`, high: 0 }
                : { expect: say`plus: above 0\u00a0V`, low: 0 }),
              stopIf: say`the sign is the other one, or the pin is not certain`,
            },
          )
        : [],
    )
  if (rails[0]?.rail.kind !== 'dc') return []
  const wanted = facts.device.jack.polarity ?? facts.supply.plug.polarity
  return [
    step(
      'supply-alone.polarity',
      say`Meter on DC volts: black lead on the sleeve of the plug, red on its centre. Write down the sign.`,
      {
        expect: say`plus: centre positive; minus: centre negative`,
        stopIf: say`it is not what the machine wants`,
        link: 'plug',
        power: 'mains',
        ...(wanted === null ? {} : { ...shared, ...(wanted === 'centre-positive' ? { low: 0 } : { high: 0 }) }),
      },
    ),
  ]
}

/** Between the lamp and the output the leads change places with nothing under power. */
const toTheOutput = (rails: readonly RailPlan[]): Step[] =>
  rails.length === 0
    ? []
    : [
        step(
          'supply-alone.meter-output',
          say`Switch off, unplug; move the leads from lamp to output: ${kindsOf(rails)} volts, a range above ${volts(mostOf(rails), 3, 'up')}.`,
          {
            expect: say`black on the sleeve or the common, red on the centre or the pin`,
            stopIf: say`the leads would touch each other, or bridge two contacts`,
            caution: storedCharge,
          },
        ),
        step('supply-alone.on-again', say`Plug in and switch on again, hands off; watch the lamp.`, {
          expect: say`the same as the first time`,
          stopIf: say`the lamp is brighter than the first time, or anything hums, smells or smokes: switch off and unplug`,
          power: 'mains',
        }),
      ]

const kindsOf = (rails: readonly RailPlan[]): Phrase => {
  const ac = rails.some(({ rail }) => rail.kind === 'ac')
  const dc = rails.some(({ rail }) => rail.kind !== 'ac')
  return ac && dc ? say`DC or AC, as the output is,` : ac ? say`AC` : say`DC`
}

const mostOf = (rails: readonly RailPlan[]): number =>
  Math.max(...rails.map((plan) => Math.max(...[offLoadBand(plan).low, offLoadBand(plan).high].map(Math.abs))))

/** Where nothing tells how it is built: from the regulated band up to what the smallest unregulated ones rise to. */
function offLoadBand({
  rail,
  tolerance,
  offLoad,
}: RailPlan): Pick<Step, 'expect' | 'unit'> & { low: number; high: number } {
  if (offLoad)
    return {
      expect: say`${volts(offLoad.low, 4)} to ${volts(offLoad.high, 4)}`,
      unit: 'V',
      low: offLoad.low,
      high: offLoad.high,
    }
  const ends = [rail.voltageV * (1 - tolerance), rail.voltageV * (1 + largestRise.rise)]
  const [low, high] = [Math.min(...ends), Math.max(...ends)]
  return {
    expect: say`${volts(low, 4)} to ${volts(high, 4)}: near ${volts(rail.voltageV)} if it is regulated, up to twice that if not`,
    unit: 'V',
    low,
    high,
  }
}

/** What may be left on an output when it is switched off; nothing where no output is known. */
function fallen(rails: readonly RailPlan[]): Partial<Step> {
  if (rails.length === 0) return {}
  const lowest = Math.min(...rails.map(({ rail }) => Math.abs(rail.voltageV)))
  const limitV = Math.min(fallenShare.value * lowest, plugPinLimit.limitV)
  return {
    ...fallenBelow(limitV),
    expect: say`below ${volts(limitV, 2, 'down')}, towards 0\u00a0V`,
    stopIf: say`it does not fall: nothing is connected to it`,
  }
}
