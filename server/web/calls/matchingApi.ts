import { Router } from 'express'
import type { Store } from '../../store/store.js'
import { tell } from '../../words/tell.js'
import { parse } from '../parse.js'
import { pageNumber } from '../parts/pager.js'
import type { Match, ShelfMatching } from '../parts/shelfMatching.js'
import { shelfMatrix } from '../parts/shelfMatrix.js'
import { countryQuerySchema } from '../schemas/shelf.js'

const matchJson = ({ id, name, verdict, against }: Match) => ({ id, name, verdict, against })

/** How many supplies, and how many machines, of the matrix one answer holds. */
const sideOfAnswer = 60

interface Needs {
  store: Store
  matching: ShelfMatching
}

/** Which supply suits which machine, as JSON. */
export function matchingApiRoutes({ store, matching }: Needs): Router {
  const router = Router()
  router.get('/api/shelf/devices/:id/matches', async (request, response) => {
    const country = parse(countryQuerySchema, request.query.country)
    response.json(tell({ matches: (await matching.forDevice(request.params.id, country)).map(matchJson) }))
  })
  router.get('/api/shelf/supplies/:id/matches', async (request, response) => {
    const country = parse(countryQuerySchema, request.query.country)
    response.json(tell({ matches: (await matching.forSupply(request.params.id, country)).map(matchJson) }))
  })
  router.get('/api/shelf/devices/:id/wanted', async (request, response) => {
    const country = parse(countryQuerySchema, request.query.country)
    response.json(tell({ wanted: await matching.wanted(request.params.id, country) }))
  })
  router.get('/api/shelf/matrix', async (request, response) => {
    const country = parse(countryQuerySchema, request.query.country)
    const { supplies, devices, cells, total } = await shelfMatrix(store, country, {
      row: pageNumber(request.query.row),
      column: pageNumber(request.query.column),
      rows: sideOfAnswer,
      columns: sideOfAnswer,
    })
    response.json({ supplies, devices, cells: cells.map((row) => row.map(({ outcome }) => outcome)), total })
  })
  return router
}
