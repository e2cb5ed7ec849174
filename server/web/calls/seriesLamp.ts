import { Router } from 'express'
import { lampChoice } from '../../plan/firstPower/lampChoice.js'
import { lampReading } from '../../plan/firstPower/lampReading.js'
import { type LampSetup, lampsFault } from '../../plan/firstPower/lamps.js'
import { seriesLamp } from '../../plan/firstPower/seriesLamp.js'
import { lampTransient } from '../../plan/firstPower/transient.js'
import { say } from '../../words/phrase.js'
import { tell } from '../../words/tell.js'
import { Unprocessable } from '../errors.js'
import { parse } from '../parse.js'
import { lampChoiceSchema, lampReadingSchema, lampTransientSchema, seriesLampSchema } from '../schemas/seriesLamp.js'

/** Lamps that melt on this mains are refused before anything is worked out. */
function usable<Setup extends LampSetup>(setup: Setup): Setup {
  const fault = lampsFault(setup)
  if (fault) throw new Unprocessable([{ path: 'lamps', message: tell(say`${fault}.`) }])
  return setup
}

/** The lamp in series: operating point, reading, choice and switch-on. */
export function seriesLampRoutes(): Router {
  const router = Router()
  router.post('/api/series-lamp', (request, response) => {
    const { load, ...setup } = parse(seriesLampSchema, request.body)
    response.json(tell(seriesLamp(usable(setup), load)))
  })
  router.post('/api/series-lamp/reading', (request, response) => {
    const { lampV, ...setup } = parse(lampReadingSchema, request.body)
    response.json(tell(lampReading(usable(setup), lampV)))
  })
  router.post('/api/series-lamp/choose', (request, response) => {
    const { mains, load, lampsOnHand } = parse(lampChoiceSchema, request.body)
    response.json(tell(lampChoice(mains, { ...load, minimumV: load.minimumV ?? null }, lampsOnHand ?? null)))
  })
  router.post('/api/series-lamp/transient', (request, response) => {
    const { load, switchAt, durationS, ...setup } = parse(lampTransientSchema, request.body)
    response.json(tell(lampTransient(usable(setup), load, switchAt, durationS)))
  })
  return router
}
