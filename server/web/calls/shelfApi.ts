import { type Request, Router } from 'express'
import {
  type ShelfDevice,
  type ShelfItem,
  type ShelfKind,
  type ShelfSupply,
  shelfDraft,
} from '../../bench/shelf/shelfItem.js'
import type { Kept, Store } from '../../store/store.js'
import type { Context } from '../context.js'
import { entryId, onceHeader } from '../once.js'
import { parse } from '../parse.js'
import { conflictAs } from '../records/conflict.js'
import { deviceRecord, supplyRecord } from '../records/shelfRecord.js'
import { listQuerySchema, mostListed, versionQuerySchema } from '../schemas/record.js'
import { shelfDevicePutSchema, shelfDeviceSchema, shelfSupplyPutSchema, shelfSupplySchema } from '../schemas/shelf.js'

interface Collection<Item extends ShelfItem> {
  kind: ShelfKind
  /** the last part of the address, and the name of the list in the answer */
  plural: 'supplies' | 'devices'
  created: (body: unknown) => Item
  changed: (body: unknown) => { version: number; item: Item }
  record: (kept: Kept<Item>) => unknown
}

const common = ({ name, place, note }: { name: string; place?: string | null; note?: string | null }) => ({
  name,
  place: place ?? null,
  note: note ?? null,
})

const supplies: Collection<ShelfSupply> = {
  kind: 'supply',
  plural: 'supplies',
  created(body) {
    const sent = parse(shelfSupplySchema, body)
    return { ...common(sent), supply: sent.supply }
  },
  changed(body) {
    const sent = parse(shelfSupplyPutSchema, body)
    return { version: sent.version, item: { ...common(sent), supply: sent.supply } }
  },
  record: supplyRecord,
}

const devices: Collection<ShelfDevice> = {
  kind: 'device',
  plural: 'devices',
  created(body) {
    const sent = parse(shelfDeviceSchema, body)
    return { ...common(sent), device: sent.device }
  },
  changed(body) {
    const sent = parse(shelfDevicePutSchema, body)
    return { version: sent.version, item: { ...common(sent), device: sent.device } }
  },
  record: deviceRecord,
}

function mount<Item extends ShelfItem>(router: Router, store: Store, collection: Collection<Item>): void {
  const { kind, plural, created, changed, record } = collection
  const all = `/api/shelf/${plural}`
  const one = `${all}/:id`
  const id = (request: Request): string => String(request.params.id)

  router.get(all, async (request, response) => {
    const { search, limit = mostListed, offset } = parse(listQuerySchema, request.query)
    const { rows, total } = await store.listWhole<Item>(kind, { search, limit, offset })
    response.json({ [plural]: rows.map(record), total })
  })
  router.post(all, async (request, response) => {
    const item = created(request.body)
    const entry = entryId(onceHeader(request), request.path, JSON.stringify(item))
    const kept = await store.add(kind, shelfDraft(item), entry)
    response
      .status(201)
      .location(`${all}/${kept.id}`)
      .json(record(kept as Kept<Item>))
  })
  router.get(one, async (request, response) => {
    response.json(record(await store.get<Item>(kind, id(request))))
  })
  router.put(one, async (request, response) => {
    const { version, item } = changed(request.body)
    const change = store.change<Item>(kind, id(request), version, () => shelfDraft(item))
    response.json(record(await conflictAs(record, change)))
  })
  router.delete(one, async (request, response) => {
    const version = parse(versionQuerySchema, request.query.version) ?? null
    await conflictAs(record, store.remove(kind, id(request), version))
    response.status(204).end()
  })
  router.post(`${one}/restore`, async (request, response) => {
    response.json(record(await store.restore<Item>(kind, id(request))))
  })
}

/** The rows of the shelf as JSON. */
export function shelfApiRoutes({ store }: Context): Router {
  const router = Router()
  mount(router, store, supplies)
  mount(router, store, devices)
  return router
}
