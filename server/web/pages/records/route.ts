import { randomBytes } from 'node:crypto'
import { type Request, type Response, Router } from 'express'
import multer from 'multer'
import { StorageFault } from '../../../store/errors.js'
import type { Context } from '../../context.js'
import { type FieldError, Unprocessable } from '../../errors.js'
import { type ChangePlan, changePlan } from '../../exchange/changePlan.js'
import { mostFaults, readRecordsFile } from '../../exchange/recordsFile.js'
import { csvPlan } from '../../exchange/shelfCsv.js'
import { head, type PageHead, show } from '../../page.js'

/** The largest file taken, in bytes. */
const largestBytes = 64 * 1024 * 1024

/** How long a file that was looked at waits to be brought in [ms], and how many wait at once. */
const waitMs = 15 * 60 * 1000
const mostWaiting = 4

/** How many changes the page names one by one. */
const mostNamed = 200

type FileKind = 'json' | 'csv'

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
}

interface RecordsPage {
  page: PageHead
  faults: FieldError[]
  more: number
  preview: {
    token: string
    kind: FileKind
    adds: number
    replaces: number
    bringsBack: number
    same: number
    changes: { text: string; name: string }[]
    more: number
  } | null
  done: Done | null
  inWords: (done: Done, stayed: string) => string
}

const upload = multer({
  storage: multer.memoryStorage(),
  limits: { fileSize: largestBytes, files: 1, fields: 5, fieldSize: 1000, parts: 6 },
}).single('file')

const kindOf = (bytes: Buffer): FileKind =>
  /^\ufeff?\s*\{/.test(bytes.subarray(0, 200).toString('utf8')) ? 'json' : 'csv'

const count = ({ planned, same }: ChangePlan): Done => ({
  adds: planned.filter(({ change }) => change === 'add').length,
  replaces: planned.filter(({ change }) => change === 'replace').length,
  bringsBack: planned.filter(({ change }) => change === 'bring back').length,
  same,
})

/** What came of the records of a file, without what came of none: "2 added, 1 replaced". */
function inWords({ adds, replaces, bringsBack, same }: Done, stayed: string): string {
  const counts = { added: adds, replaced: replaces, 'brought back': bringsBack, [stayed]: same }
  const words = Object.entries(counts).flatMap(([word, count]) => (count === 0 ? [] : `${count} ${word}`))
  return words.join(', ') || 'no record'
}

const empty: Omit<RecordsPage, 'page'> = {
  faults: [],
  more: 0,
  preview: null,
  done: null,
  inWords,
}

const kindNames = { supply: 'supply', device: 'machine', job: 'job', 'at-hand': 'what is at hand' } as const

/** In and out as a page: a file is looked at first, and brought in only when what it would change is agreed to. */
export function recordsPageRoutes({ store, now }: Context): Router {
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

  /** What a file would change; throws Unprocessable with every line that cannot be used. */
  const planFor = async ({ kind, bytes }: Pick<Waiting, 'kind' | 'bytes'>): Promise<ChangePlan> => {
    if (kind === 'json') {
      let sent: unknown
      try {
        sent = JSON.parse(bytes.toString('utf8').replace(/^\ufeff/, ''))
      } catch {
        throw new Unprocessable([{ path: 'file', message: 'The file begins like JSON but is not whole JSON.' }])
      }
      return changePlan(store, readRecordsFile(sent), now())
    }
    const plan = await csvPlan(store, bytes, now())
    if (plan.errors.length > 0)
      throw new Unprocessable(
        plan.errors.map(({ line, message }) => ({ path: `line ${line}`, message: `Line ${line}: ${message}` })),
      )
    return plan
  }

  const keep = (file: Waiting): string => {
    for (const [token, { until }] of waiting) if (until < now()) waiting.delete(token)
    for (const token of [...waiting.keys()].slice(0, -(mostWaiting - 1))) waiting.delete(token)
    const token = randomBytes(16).toString('base64url')
    waiting.set(token, file)
    return token
  }

  const bringIn = async (file: Waiting): Promise<Done> => {
    const plan = await planFor(file)
    await store.apply(plan.changes)
    file.bytes = Buffer.alloc(0)
    return count(plan)
  }

  router.get('/records', (request, response) => answer(request, response, {}))

  router.post('/records', (request, response, next) => {
    upload(request, response, (fault: unknown) => {
      if (fault) {
        const { code } = fault as { code?: string }
        const message =
          code === 'LIMIT_FILE_SIZE'
            ? 'The file is larger than the 64 MB that are read at once.'
            : 'The form cannot be read; send it again with one file.'
        refused(request, response, [{ path: 'file', message }], code === 'LIMIT_FILE_SIZE' ? 413 : 422)
        return
      }
      if (!request.file || request.file.size === 0) {
        refused(request, response, [
          { path: 'file', message: 'Choose a file: CSV of the shelf, or JSON of everything.' },
        ])
        return
      }
      const bytes = request.file.buffer
      const kind = kindOf(bytes)
      planFor({ kind, bytes })
        .then((plan) => {
          const changes = plan.planned.slice(0, mostNamed).map(({ change, kind: record, name, older }) => ({
            text: `${change} ${kindNames[record]}${older ? ' (what is kept here was changed since)' : ''}`,
            name,
          }))
          const token = keep({ kind, bytes, until: now() + waitMs, done: null })
          const more = Math.max(0, plan.planned.length - mostNamed)
          answer(request, response, { preview: { token, kind, ...count(plan), changes, more } })
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
