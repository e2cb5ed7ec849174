import { parse } from '../parse.js'
import { pageNumber } from '../parts/pager.js'
import { type Match, shelfMatching } from '../parts/shelfMatching.js'
import { shelfMatrix } from '../parts/shelfMatrix.js'
import { matchesAnswer, matrixAnswer, whatChanges } from '../schemas/answers.js'
import { countryQuerySchema } from '../schemas/shelf.js'
import { type Asked, type Call, call } from './call.js'

const country = { country: 'where it will be used, ISO 3166-1 alpha-2' }

const countryOf = ({ request }: Asked) => parse(countryQuerySchema, request.query.country)

const matchJson = ({ id, name, verdict, against }: Match) => ({ id, name, verdict, against })

/** How many supplies, and how many machines, of the matrix one answer holds. */
const sideOfAnswer = 60

/** Which supply of the shelf suits which machine. */
export const matchingCalls: readonly Call[] = [
  call({
    method: 'get',
    path: '/api/shelf/devices/:id/matches',
    group: 'Shelf',
    summary: 'Supplies for a machine, best first',
    query: country,
    answer: matchesAnswer,
    async run(_body, asked) {
      const matches = await shelfMatching(asked.store).forDevice(asked.named('id'), countryOf(asked))
      return { matches: matches.map(matchJson) }
    },
  }),
  call({
    method: 'get',
    path: '/api/shelf/supplies/:id/matches',
    group: 'Shelf',
    summary: 'Machines for a supply, best first',
    query: country,
    answer: matchesAnswer,
    async run(_body, asked) {
      const matches = await shelfMatching(asked.store).forSupply(asked.named('id'), countryOf(asked))
      return { matches: matches.map(matchJson) }
    },
  }),
  call({
    method: 'get',
    path: '/api/shelf/devices/:id/wanted',
    group: 'Shelf',
    summary: 'What to look for when no supply suits',
    query: country,
    answer: whatChanges,
    run: async (_body, asked) => ({
      wanted: await shelfMatching(asked.store).wanted(asked.named('id'), countryOf(asked)),
    }),
  }),
  call({
    method: 'get',
    path: '/api/shelf/matrix',
    group: 'Shelf',
    summary: 'Every supply against every machine, 60 of each at a time',
    query: { ...country, row: 'which 60 supplies, from 1', column: 'which 60 machines, from 1' },
    answer: matrixAnswer,
    async run(_body, asked) {
      const { row, column } = asked.request.query
      const { supplies, devices, cells, total } = await shelfMatrix(asked.store, countryOf(asked), {
        row: pageNumber(row),
        column: pageNumber(column),
        rows: sideOfAnswer,
        columns: sideOfAnswer,
      })
      return { supplies, devices, cells: cells.map((cell) => cell.map(({ outcome }) => outcome)), total }
    },
  }),
]
