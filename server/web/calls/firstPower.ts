import type { z } from 'zod'
import { assessCase } from '../../chain/assess.js'
import { prepareCase } from '../../chain/case/case.js'
import { benchSupply } from '../../plan/bench/benchSupply.js'
import { discharge } from '../../plan/bench/discharge.js'
import { dummyLoad } from '../../plan/bench/dummyLoad.js'
import { insulationAnswer } from '../../plan/bench/insulation.js'
import { leakage } from '../../plan/bench/leakage.js'
import { offLoad } from '../../plan/bench/offLoad.js'
import { reform } from '../../plan/bench/reform.js'
import { inrushAnswer, usualInrushRunS } from '../../plan/firstPower/inrush.js'
import { lampChoice } from '../../plan/firstPower/lampChoice.js'
import { lampReading } from '../../plan/firstPower/lampReading.js'
import { type LampSetup, lampsFault } from '../../plan/firstPower/lamps.js'
import { seriesLamp } from '../../plan/firstPower/seriesLamp.js'
import { lampTransient } from '../../plan/firstPower/transient.js'
import { planFirstPower } from '../../plan/planFirstPower.js'
import { say } from '../../words/phrase.js'
import { tell } from '../../words/tell.js'
import { Unprocessable } from '../errors.js'
import * as answers from '../schemas/answers.js'
import * as bench from '../schemas/bench.js'
import * as lamp from '../schemas/seriesLamp.js'
import { type Call, call } from './call.js'

/** Lamps that melt on this mains are refused before anything is worked out. */
function usable<Setup extends LampSetup>(setup: Setup): Setup {
  const fault = lampsFault(setup)
  if (fault) throw new Unprocessable([{ path: 'lamps', message: tell(say`${fault}.`) }])
  return setup
}

const worksOut = <Body extends z.ZodType>(
  path: string,
  summary: string,
  body: Body,
  answer: z.ZodType,
  run: (body: z.output<Body>) => unknown,
): Call => call({ method: 'post', path: `/api/${path}`, group: 'First power', summary, body, answer, run })

/** What is worked out for a first power-up: lamps, loads, limits, discharge, reforming, leakage, test readings, the plan. */
export const firstPowerCalls: readonly Call[] = [
  worksOut(
    'series-lamp',
    'Operating point of lamps in series with a load',
    lamp.seriesLampSchema,
    answers.seriesLampAnswer,
    ({ load, ...setup }) => seriesLamp(usable(setup), load),
  ),
  worksOut(
    'series-lamp/reading',
    'From the volts across the lamps to the current',
    lamp.lampReadingSchema,
    answers.lampReadingAnswer,
    ({ lampV, ...setup }) => lampReading(usable(setup), lampV),
  ),
  worksOut(
    'series-lamp/choose',
    'Which lamps suit a load, and in which order',
    lamp.lampChoiceSchema,
    answers.lampChoiceAnswer,
    ({ mains, load, lampsOnHand }) =>
      lampChoice(mains, { ...load, minimumV: load.minimumV ?? null }, lampsOnHand ?? null),
  ),
  worksOut(
    'series-lamp/transient',
    'Glow and capacitor voltage after switching on',
    lamp.lampTransientSchema,
    answers.lampTransientAnswer,
    ({ load, switchAt, durationS, ...setup }) => lampTransient(usable(setup), load, switchAt, durationS),
  ),
  worksOut(
    'inrush',
    'Inrush of a rectifier and capacitor without a lamp',
    lamp.inrushSchema,
    answers.inrushAnswer,
    ({ loadOhm, durationS, ...circuit }) =>
      inrushAnswer({ ...circuit, loadOhm: loadOhm ?? null, durationS: durationS ?? usualInrushRunS }),
  ),
  worksOut(
    'bench-supply',
    'Stages of voltage and current limit',
    bench.benchSupplySchema,
    answers.benchSupplyAnswer,
    ({ rails, ...rest }) => {
      const asked = rails.map(({ voltageV, currentA, tolerancePercent }) => ({
        voltageV,
        currentA,
        tolerance: tolerancePercent == null ? null : tolerancePercent / 100,
      }))
      return benchSupply({ rails: asked, ...rest })
    },
  ),
  worksOut('dummy-load', 'Resistors that load an output', bench.dummyLoadSchema, answers.dummyLoadAnswer, dummyLoad),
  worksOut('discharge', 'Discharging a capacitor', bench.dischargeSchema, answers.dischargeAnswer, discharge),
  worksOut('reform', 'Reforming an electrolytic capacitor', bench.reformSchema, answers.reformAnswer, reform),
  worksOut(
    'off-load',
    'Off-load voltage of an unregulated supply',
    bench.offLoadSchema,
    answers.offLoadAnswer,
    offLoad,
  ),
  worksOut('leakage', 'Current through a capacitor to earth', bench.leakageSchema, answers.leakageAnswer, leakage),
  worksOut(
    'insulation',
    'Test readings against the limits of a scheme',
    bench.insulationSchema,
    answers.insulationAnswer,
    ({ scheme, ...readings }) => insulationAnswer({ schemes: scheme, ...readings }),
  ),
  worksOut(
    'first-power',
    'The stages of a first power-up, worked out from a check',
    bench.firstPowerSchema,
    answers.firstPowerAnswer,
    ({ check, ...options }) => {
      const of = prepareCase(check)
      return planFirstPower(of, assessCase(of), options)
    },
  ),
]
