import { randomBytes } from 'node:crypto'
import { type Request, type Response, Router } from 'express'
import multer from 'multer'
import { StorageFault } from '../../../store/errors.js'
import type { Context } from '../../context.js'
import { type FieldError, Unprocessable } from '../../errors.js'
import { type ChangePlan, changePlan } from '../../exchange/changePlan.js'
import { type PhotosIn, photosIn } from '../../exchange/photosIn.js'
import { isZip, largestZip, openZip } from '../../exchange/readZip.js'
import { mostFaults, readRecordsFile } from '../../exchange/recordsFile.js'
import { csvPlan } from '../../exchange/shelfCsv.js'
import { refuseKeysIn } from '../../guards/refusePrototypeKeys.js'
import { head, type PageHead, show } from '../../page.js'

/** The largest file without photos that is taken [bytes]. */
const largestBytes = 64 * 1024 * 1024

/** How long a file that was looked at waits to be brought in [ms], and how many wait at once; together no larger than one may be. */
const waitMs = 15 * 60 * 1000
const mostWaiting = 4

/** How many changes the page names one by one. */
const mostNamed = 200

type FileKind = 'zip' | 'json' | 'csv'

interface Waiting {
  kind: FileKind
  bytes: Buffer
  until: number
  /** what bringing it in came to, or will: a form sent twice is answered twice and brings in once */
  done: Promise<Done> | null
}

interface Done {
  adds: number
  replaces: number
  bringsBack: number
  same: number
  /** null where the file has none */
  photos: PhotosIn | null
}

interface Planned {
  plan: ChangePlan
  photos: (keep: boolean) => Promise<PhotosIn | null>
}

interface RecordsPage {
  page: PageHead
  faults: FieldError[]
  more: number
  preview:
    | (Done & {
        token: string
        kind: FileKind
        changes: { text: string; name: string; stays: string[] }[]
        more: number
      })
    | null
  done: Done | null
  inWords: typeof inWords
}

const upload = multer({
  storage: multer.memoryStorage(),
  limits: { fileSize: largestZip, files: 1, fields: 5, fieldSize: 1000, parts: 6 },
}).single('file')

const kindOf = (bytes: Buffer): FileKind =>
  isZip(bytes) ? 'zip' : /^\ufeff?\s*\{/.test(bytes.subarray(0, 200).toString('utf8')) ? 'json' : 'csv'

const count = ({ planned, same }: ChangePlan): Omit<Done, 'photos'> => ({
  adds: planned.filter(({ change }) => change === 'add').length,
  replaces: planned.filter(({ change }) => change === 'replace').length,
  bringsBack: planned.filter(({ change }) => change === 'bring back').length,
  same,
})

/** What came of the records of a file, without what came of none: "2 added, 1 replaced". */
function inWords({ adds, replaces, bringsBack, same }: Omit<Done, 'photos'>, stayed: string): string {
  const counts = { added: adds, replaced: replaces, 'brought back': bringsBack, [stayed]: same }
  const words = Object.entries(counts).flatMap(([word, count]) => (count === 0 ? [] : `${count} ${word}`))
  return words.join(', ') || 'no record'
}

/** What of a job that is kept here is not replaced. */
const stayWords = ({ entries, stops }: NonNullable<ChangePlan['planned'][number]['stays']>): string[] => [
  ...(entries === 0
    ? []
    : [`${entries} ${entries === 1 ? 'entry' : 'entries'} of here that the file does not have: kept.`]),
  ...stops.map((title) => `Stopped here, and still: ${title}`),
]

const empty: Omit<RecordsPage, 'page'> = {
  faults: [],
  more: 0,
  preview: null,
  done: null,
  inWords,
}

const kindNames = { supply: 'supply', device: 'machine', job: 'job', 'at-hand': 'what is at hand' } as const

/** In and out as a page: a file is looked at first, and brought in only when what it would change is agreed to. */
export function recordsPageRoutes(context: Context): Router {
  const { store, now } = context
  const router = Router()
  const waiting = new Map<string, Waiting>()

  const answer = (request: Request, response: Response, model: Partial<RecordsPage>, status = 200): void =>
    show(request, response, {
      view: 'records-page',
      model: { ...empty, page: head('Bring in and take out', 'shelf'), ...model },
      status,
    })

  const refused = (request: Request, response: Response, faults: FieldError[], status = 422): void =>
    answer(
      request,
      response,
      {
        page: head('Bring in and take out', 'shelf', [
          { name: 'file', message: 'The file was not brought in; nothing was changed.' },
        ]),
        faults: faults.slice(0, mostFaults),
        more: Math.max(0, faults.length - mostFaults),
      },
      status,
    )

  const noPhotos = async (): Promise<null> => null

  /** What a file would change; throws Unprocessable with every line that cannot be used. */
  const planFor = async ({ kind, bytes }: Pick<Waiting, 'kind' | 'bytes'>): Promise<Planned> => {
    if (kind === 'zip') {
      const zip = openZip(bytes)
      const incoming = readRecordsFile(zip.records)
      const owners = new Set(incoming.map(({ stamp }) => stamp.id))
      return {
        plan: await changePlan(store, incoming, now()),
        photos: (keep) => photosIn(context, zip, { owners, keep }),
      }
    }
    if (kind === 'json') {
      let sent: unknown
      try {
        sent = JSON.parse(bytes.toString('utf8').replace(/^\ufeff/, ''))
      } catch {
        throw new Unprocessable([{ path: 'file', message: 'The file begins like JSON but is not whole JSON.' }])
      }
      refuseKeysIn(sent)
      return { plan: await changePlan(store, readRecordsFile(sent), now()), photos: noPhotos }
    }
    const plan = await csvPlan(store, bytes, now())
    if (plan.errors.length > 0)
      throw new Unprocessable(
        plan.errors.map(({ line, message }) => ({ path: `line ${line}`, message: `Line ${line}: ${message}` })),
      )
    return { plan, photos: noPhotos }
  }

  const keep = (file: Waiting): string => {
    for (const [token, { until }] of waiting) if (until < now()) waiting.delete(token)
    for (const token of [...waiting.keys()].slice(0, -(mostWaiting - 1))) waiting.delete(token)
    let held = file.bytes.length
    for (const [token, { bytes }] of [...waiting].reverse()) {
      held += bytes.length
      if (held > largestZip) waiting.delete(token)
    }
    const token = randomBytes(16).toString('base64url')
    waiting.set(token, file)
    return token
  }

  const bringIn = async (file: Waiting): Promise<Done> => {
    const { plan, photos } = await planFor(file)
    await store.apply(plan.changes)
    const done = { ...count(plan), photos: await photos(true) }
    file.bytes = Buffer.alloc(0)
    return done
  }

  router.get('/records', (request, response) => answer(request, response, {}))

  router.post('/records', (request, response, next) => {
    upload(request, response, (fault: unknown) => {
      if (fault) {
        const { code } = fault as { code?: string }
        const message =
          code === 'LIMIT_FILE_SIZE'
            ? 'The file is larger than the 256 MB that are read at once.'
            : 'The form cannot be read; send it again with one file.'
        refused(request, response, [{ path: 'file', message }], code === 'LIMIT_FILE_SIZE' ? 413 : 422)
        return
      }
      if (!request.file || request.file.size === 0) {
        refused(request, response, [
          { path: 'file', message: 'Choose a file: a record file, CSV of the shelf, or JSON of everything.' },
        ])
        return
      }
      const bytes = request.file.buffer
      const kind = kindOf(bytes)
      if (kind !== 'zip' && bytes.length > largestBytes) {
        const message = 'The file is larger than the 64 MB that are read at once.'
        refused(request, response, [{ path: 'file', message }], 413)
        return
      }
      planFor({ kind, bytes })
        .then(async ({ plan, photos }) => {
          const changes = plan.planned.slice(0, mostNamed).map(({ change, kind: record, name, older, stays }) => ({
            text: `${change} ${kindNames[record]}${older ? ' (what is kept here was changed since)' : ''}`,
            name,
            stays: stays ? stayWords(stays) : [],
          }))
          const token = keep({ kind, bytes, until: now() + waitMs, done: null })
          const more = Math.max(0, plan.planned.length - mostNamed)
          const looked = { ...count(plan), photos: await photos(false) }
          answer(request, response, { preview: { token, kind, ...looked, changes, more } })
        })
        .catch((error: unknown) => {
          if (error instanceof Unprocessable) refused(request, response, error.fields)
          else next(error)
        })
    })
  })

  router.post('/records/apply', async (request, response) => {
    const { token } = (request.body ?? {}) as { token?: unknown }
    const file = typeof token === 'string' ? waiting.get(token) : undefined
    if (!file || file.until < now()) {
      refused(request, response, [
        { path: 'file', message: 'The file that was looked at is not held any more; choose it again.' },
      ])
      return
    }
    try {
      file.done ??= bringIn(file)
      answer(request, response, { done: await file.done })
    } catch (error) {
      file.done = null
      if (error instanceof Unprocessable) refused(request, response, error.fields)
      else if (error instanceof StorageFault)
        refused(request, response, [{ path: 'file', message: error.message }], error.status)
      else throw error
    }
  })
  return router
}
