import { z } from 'zod'
import {
  type ShelfDevice,
  type ShelfItem,
  type ShelfKind,
  type ShelfSupply,
  shelfDraft,
} from '../../bench/shelf/shelfItem.js'
import type { Kept } from '../../store/store.js'
import { newEntry } from '../once.js'
import { parse } from '../parse.js'
import { conflictAs } from '../records/conflict.js'
import { deviceRecord, supplyRecord } from '../records/shelfRecord.js'
import { deviceRecordAnswer, supplyRecordAnswer } from '../schemas/answers.js'
import { listQuerySchema, mostListed, versionQuerySchema } from '../schemas/record.js'
import { shelfDevicePutSchema, shelfDeviceSchema, shelfSupplyPutSchema, shelfSupplySchema } from '../schemas/shelf.js'
import type { Call } from './call.js'
import { recordCalls } from './records.js'

const common = ({ name, place, note }: { name: string; place?: string | null; note?: string | null }) => ({
  name,
  place: place ?? null,
  note: note ?? null,
})

interface Collection<Item extends ShelfItem, Create extends z.ZodType, Change extends z.ZodType> {
  kind: ShelfKind
  /** the last part of the address, and the name of the list in the answer */
  plural: 'supplies' | 'devices'
  noun: string
  answer: z.ZodType
  create: Create
  change: Change
  item: (sent: z.output<Create> | z.output<Change>) => Item
  record: (kept: Kept<Item>) => { id: string }
}

function collectionCalls<
  Item extends ShelfItem,
  Create extends z.ZodType,
  Change extends z.ZodType<{ version: number }>,
>(collection: Collection<Item, Create, Change>): Call[] {
  const { kind, plural, noun, answer, create, change, item, record } = collection
  const list = z.object({ [plural]: z.array(answer), total: z.number() })
  return recordCalls(
    { group: 'Shelf', path: `/api/shelf/${plural}`, plural, noun, list, record: answer },
    {
      body: create,
      async run(sent, { store, request }) {
        const draft = item(sent)
        return record((await store.add(kind, shelfDraft(draft), newEntry(request, draft))) as Kept<Item>)
      },
    },
    {
      method: 'put',
      body: change,
      async run(sent, { store, named }) {
        const next = store.change<Item>(kind, named('id'), sent.version, () => shelfDraft(item(sent)))
        return record(await conflictAs(record, next))
      },
    },
    {
      async list({ store, request }) {
        const { search, limit = mostListed, offset } = parse(listQuerySchema, request.query)
        const { rows, total } = await store.listWhole<Item>(kind, { search, limit, offset })
        return { [plural]: rows.map(record), total }
      },
      one: async ({ store, named }) => record(await store.get<Item>(kind, named('id'))),
      async remove({ store, named, request }) {
        const version = parse(versionQuerySchema, request.query.version) ?? null
        await conflictAs(record, store.remove(kind, named('id'), version))
      },
      restore: async ({ store, named }) => record(await store.restore<Item>(kind, named('id'))),
    },
  )
}

/** The rows of the shelf. */
export const shelfCalls: readonly Call[] = [
  ...collectionCalls({
    kind: 'supply',
    plural: 'supplies',
    noun: 'supply',
    answer: supplyRecordAnswer,
    create: shelfSupplySchema,
    change: shelfSupplyPutSchema,
    item: (sent): ShelfSupply => ({ ...common(sent), supply: sent.supply }),
    record: supplyRecord,
  }),
  ...collectionCalls({
    kind: 'device',
    plural: 'devices',
    noun: 'machine',
    answer: deviceRecordAnswer,
    create: shelfDeviceSchema,
    change: shelfDevicePutSchema,
    item: (sent): ShelfDevice => ({ ...common(sent), device: sent.device }),
    record: deviceRecord,
  }),
]
