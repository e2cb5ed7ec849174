import { Router } from 'express'
import { cellOf } from '../../shelf/matrix.js'
import { parse } from '../parse.js'
import { countryQuerySchema } from '../schemas/shelf.js'
import type { Match, ShelfMatching } from '../shelfMatching.js'
import { finishedWithin, type ShelfMatrix } from '../shelfMatrix.js'

const matchJson = ({ id, name, verdict, against }: Match) => ({ id, name, verdict, against })

/** How long a call waits for a matrix before it answers how far it is [ms]. */
const patienceMs = 500

interface Needs {
  matching: ShelfMatching
  matrix: (country: string | undefined) => Promise<ShelfMatrix>
}

/** Which supply suits which machine, as JSON. */
export function matchingApiRoutes({ matching, matrix }: Needs): Router {
  const router = Router()
  router.get('/api/shelf/devices/:id/matches', async (request, response) => {
    const country = parse(countryQuerySchema, request.query.country)
    response.json({ matches: (await matching.forDevice(request.params.id, country)).map(matchJson) })
  })
  router.get('/api/shelf/supplies/:id/matches', async (request, response) => {
    const country = parse(countryQuerySchema, request.query.country)
    response.json({ matches: (await matching.forSupply(request.params.id, country)).map(matchJson) })
  })
  router.get('/api/shelf/devices/:id/wanted', async (request, response) => {
    const country = parse(countryQuerySchema, request.query.country)
    response.json({ wanted: await matching.wanted(request.params.id, country) })
  })
  /** 200 with every cell, or 202 with how far it is: ask again */
  router.get('/api/shelf/matrix', async (request, response) => {
    const country = parse(countryQuerySchema, request.query.country)
    const whole = await matrix(country)
    const finished = await finishedWithin(whole, patienceMs)
    const { supplies, devices, run } = whole
    const progress = { done: run.done(), of: supplies.length }
    if (!finished) {
      response.status(202).set('Retry-After', '1').json(progress)
      return
    }
    const cells = run.rows.map((row) => Array.from(row ?? [], (code) => cellOf(code).outcome))
    response.json({ ...progress, supplies, devices, cells })
  })
  return router
}
