import { type AtHand, atHandDraft, atHandId, nothingAtHand } from '../../bench/atHand/atHand.js'
import type { Job } from '../../bench/jobs/job.js'
import { jobDraft } from '../../bench/jobs/jobDraft.js'
import { type ShelfDevice, type ShelfSupply, shelfDraft } from '../../bench/shelf/shelfItem.js'
import type { Kept, Kind, Stamp, Store } from '../../store/store.js'
import { say } from '../../words/phrase.js'
import { type FieldError, Unprocessable } from '../errors.js'
import { fieldErrors } from '../parse.js'
import { fileFormat, fileVersion, type RecordsFile, recordsFileSchema } from '../schemas/importExport.js'
import type { Incoming } from './changePlan.js'

const stampOf = ({ id, version, createdAt, updatedAt }: Stamp): Stamp => ({ id, version, createdAt, updatedAt })

const everything = { limit: 1_000_000 }

const entries = async <Body>(store: Store, kind: Kind) =>
  (await store.listWhole<Body>(kind, everything)).rows.map((kept) => ({ ...stampOf(kept), ...kept.body }))

const file = (parts: { supplies: unknown[]; devices: unknown[]; jobs: unknown[]; atHand?: unknown }): string =>
  `${JSON.stringify({ format: fileFormat, formatVersion: fileVersion, ...parts }, null, 1)}\n`

/** Everything that is kept as one file; two equal sets of records give the same bytes. */
export async function exportFile(store: Store): Promise<string> {
  return file({
    supplies: await entries<ShelfSupply>(store, 'supply'),
    devices: await entries<ShelfDevice>(store, 'device'),
    jobs: await entries<Job>(store, 'job'),
    ...(await atHandEntry(store)),
  })
}

/** What is at hand, as a file has it; nothing where nothing was entered. */
async function atHandEntry(store: Store): Promise<{ atHand?: unknown }> {
  const [kept] = (await store.listWhole<AtHand>('at-hand', everything)).rows
  if (!kept) return {}
  const { id: _, ...stamp } = stampOf(kept)
  return { atHand: { ...stamp, has: kept.body } }
}

/** One job as a file that can be brought in elsewhere. */
export const jobFile = (kept: Kept<Job>): string =>
  file({ supplies: [], devices: [], jobs: [{ ...stampOf(kept), ...kept.body }] })

/** The most faults that are told of one file. */
export const mostFaults = 100

const shelfBody = ({ name, place, note }: { name: string; place?: string | null; note?: string | null }) => ({
  name,
  place: place ?? null,
  note: note ?? null,
})

const twiceIn = (incoming: Incoming[]): FieldError[] => {
  const seen = new Set<string>()
  return incoming.flatMap(({ stamp }) => {
    if (!seen.has(stamp.id)) {
      seen.add(stamp.id)
      return []
    }
    return [{ path: 'id', message: `The id “${stamp.id}” stands in the file twice; an id names one record.` }]
  })
}

/** The records of a file; throws {@link Unprocessable} with what is wrong, and then nothing is taken from it. */
export function readRecordsFile(sent: unknown): Incoming[] {
  const parsed = recordsFileSchema.safeParse(sent, { reportInput: true })
  if (!parsed.success) {
    const all = fieldErrors(parsed.error)
    throw new Unprocessable(
      all.slice(0, mostFaults),
      say`The file cannot be brought in: ${all[0] && all.length === 1 ? all[0].message : `${all.length} entries cannot be used.`}`,
    )
  }
  const incoming = incomingOf(parsed.data)
  const twice = twiceIn(incoming)
  if (twice.length > 0) throw new Unprocessable(twice.slice(0, mostFaults))
  return incoming
}

function incomingOf({ supplies, devices, jobs, atHand }: RecordsFile): Incoming[] {
  return [
    ...supplies.map((entry): Incoming => {
      const body: ShelfSupply = { ...shelfBody(entry), supply: entry.supply }
      return { kind: 'supply', stamp: stampOf(entry), draft: shelfDraft(body) }
    }),
    ...devices.map((entry): Incoming => {
      const body: ShelfDevice = { ...shelfBody(entry), device: entry.device }
      return { kind: 'device', stamp: stampOf(entry), draft: shelfDraft(body) }
    }),
    ...jobs.map((entry): Incoming => {
      const { id, version, createdAt, updatedAt, ...body } = entry
      const job = body as unknown as Job
      return { kind: 'job', stamp: { id, version, createdAt, updatedAt }, draft: jobDraft(job) }
    }),
    ...[atHand ?? []].flat().map(
      ({ has, ...stamp }): Incoming => ({
        kind: 'at-hand',
        stamp: { id: atHandId, ...stamp },
        draft: atHandDraft({ ...nothingAtHand, ...has }),
      }),
    ),
  ]
}
