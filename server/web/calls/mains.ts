import { Router } from 'express'
import { countries, type MainsCountry, mainsOf } from '../../tables/mains.js'
import { NotFound } from '../errors.js'

/** A country's mains as the API gives it. */
const asJson = ({ country, name, systems, sockets, notes, sources }: MainsCountry) => ({
  country,
  name,
  systems: systems.map(({ voltageV, frequencyHz, minV, maxV, bandSources }) => ({
    voltageV,
    frequencyHz,
    minV,
    maxV,
    sources: bandSources,
  })),
  sockets,
  notes,
  sources,
})

export function mainsRoutes(): Router {
  const router = Router()
  router.get('/api/mains', (_request, response) => {
    response.json(countries.map(asJson))
  })
  router.get('/api/mains/:country', (request, response) => {
    const found = mainsOf(request.params.country)
    if (!found)
      throw new NotFound(
        `No country is listed under "${request.params.country.slice(0, 20)}"; give two letters of ISO 3166-1, such as SE or JP. /api/mains lists all.`,
      )
    response.json(asJson(found))
  })
  return router
}
