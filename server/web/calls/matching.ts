import { parse } from '../parse.js'
import { fromShelf } from '../parts/fromShelf.js'
import { pageNumber } from '../parts/pager.js'
import { type Match, shelfMatching } from '../parts/shelfMatching.js'
import { shelfMatrix } from '../parts/shelfMatrix.js'
import { matchesAnswer, matrixAnswer, offeredAnswer, whatChanges } from '../schemas/answers.js'
import { countryQuerySchema, offeredSchema } from '../schemas/shelf.js'
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
    method: 'post',
    path: '/api/shelf/offered',
    group: 'Shelf',
    summary: 'Supplies for a machine that need not be on the shelf, best first; none that a stop stands against',
    body: offeredSchema,
    answer: offeredAnswer,
    async run({ site, device, readings }, { store }) {
      const { says, offered } = await fromShelf(store, { site, supply: {}, device, readings })
      return { says, offered: offered.map((match) => ({ ...matchJson(match), place: match.place })) }
    },
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
