import { z } from 'zod'
import { countries, type MainsCountry, mainsOf } from '../../tables/mains.js'
import { NotFound } from '../errors.js'
import { mainsCountryAnswer } from '../schemas/answers.js'
import { type Call, call } from './call.js'

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

/** The mains of each country. */
export const mainsCalls: readonly Call[] = [
  call({
    method: 'get',
    path: '/api/mains',
    group: 'Mains',
    summary: 'All countries',
    answer: z.array(mainsCountryAnswer),
    run: () => countries.map(asJson),
  }),
  call({
    method: 'get',
    path: '/api/mains/:country',
    group: 'Mains',
    summary: 'One country',
    answer: mainsCountryAnswer,
    run(_body, { named }) {
      const found = mainsOf(named('country'))
      if (found) return asJson(found)
      throw new NotFound(
        `No country is listed under "${named('country').slice(0, 20)}"; give two letters of ISO 3166-1, such as SE or JP. /api/mains lists all.`,
      )
    },
  }),
]
