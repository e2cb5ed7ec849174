import { type Request, Router } from 'express'
import { atHandIfReadable } from '../../../bench/atHand/atHand.js'
import type { ShelfDevice, ShelfKind, ShelfSupply } from '../../../bench/shelf/shelfItem.js'
import type { Context } from '../../context.js'
import { show } from '../../page.js'
import { FormReader } from '../../parts/formState.js'
import { phoneAddress } from '../../parts/phoneAddress.js'
import { lastPlace } from '../check/lastPlace.js'
import { sheets } from './sheets.js'
import { type Tagged, tagsView } from './view.js'

/** The most tags of one page. */
const mostTags = 200

/** Tags of what lies on the shelf, for plain label sheets: of all, or of those that the address names. */
export function tagRoutes({ store, config, lan }: Context): Router {
  const router = Router()
  // what a phone reaches; where the server can be reached from its own machine only, what that machine calls it
  const originOf = (request: Request): string =>
    phoneAddress({
      listensOn: config.host,
      protocol: request.protocol,
      host: request.get('Host'),
      lan: lan(),
      path: '',
    }) ?? `${request.protocol}://${request.get('Host') ?? 'localhost'}`

  const thingsOf = async (kind: ShelfKind): Promise<Tagged[]> =>
    (await store.listWhole<ShelfSupply | ShelfDevice>(kind, { limit: mostTags })).rows.map((kept) => ({ kind, kept }))

  const named = async (ids: readonly string[]): Promise<Tagged[]> => {
    const held = (await store.held([...ids])).filter(({ deleted }) => !deleted)
    const shelf = held.flatMap(({ id, kind }) => (kind === 'supply' || kind === 'device' ? [{ id, kind }] : []))
    return Promise.all(shelf.map(async ({ id, kind }) => ({ kind, kept: await store.get<ShelfSupply>(kind, id) })))
  }

  router.get('/tags', async (request, response) => {
    const { id, ...sent } = request.query
    const ids = [id ?? []]
      .flat()
      .flatMap((one) => (typeof one === 'string' ? [one] : []))
      .slice(0, mostTags)
    const read = new FormReader(sent, ['sheet', 'first'], (name) => (name === 'first' ? 'First free label' : 'Sheet'))
    const keys = sheets.map(({ key }) => key)
    const sheet = sheets.find(({ key }) => key === read.choice('sheet', keys, 'Sheet')) ?? sheets[0]!
    const each = sheet.columns * sheet.rows
    const first = read.number('first', { label: 'First free label', min: 1, max: each, whole: true }) ?? 1
    const things = ids.length > 0 ? await named(ids) : [...(await thingsOf('supply')), ...(await thingsOf('device'))]
    const country = (await atHandIfReadable(store)).country ?? lastPlace(request)
    const model = tagsView({
      things: things.slice(0, mostTags),
      country,
      origin: originOf(request),
      sheet,
      first,
      form: { ...read.state, values: { ...read.state.values, sheet: sheet.key } },
      faults: read.faults,
      ids,
    })
    show(request, response, { view: 'tags', model })
  })
  return router
}
