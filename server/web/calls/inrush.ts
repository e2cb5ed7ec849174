import { Router } from 'express'
import { inrushAnswer, usualInrushRunS } from '../../plan/firstPower/inrush.js'
import { tell } from '../../words/tell.js'
import { parse } from '../parse.js'
import { inrushSchema } from '../schemas/seriesLamp.js'

/** Inrush of a rectifier and capacitor without a lamp. */
export function inrushRoutes(): Router {
  const router = Router()
  router.post('/api/inrush', (request, response) => {
    const { loadOhm, durationS, ...circuit } = parse(inrushSchema, request.body)
    response.json(tell(inrushAnswer({ ...circuit, loadOhm: loadOhm ?? null, durationS: durationS ?? usualInrushRunS })))
  })
  return router
}
