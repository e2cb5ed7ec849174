import { CsvRefused, type CsvRow, fromCsv, toCsv } from '../../bench/shelf/csv.js'
import { type Cells, cellsOf, columns, itemOf, sayTheSame } from '../../bench/shelf/shelfCells.js'
import { type ShelfItem, type ShelfKind, shelfDraft } from '../../bench/shelf/shelfItem.js'
import { columnAt } from '../../facts/cells.js'
import type { Kept, Store } from '../../store/store.js'
import { tell } from '../../words/tell.js'
import { Unprocessable } from '../errors.js'
import { entryId } from '../once.js'
import { fieldErrors } from '../parse.js'
import { shelfDeviceSchema, shelfSupplySchema } from '../schemas/shelf.js'
import type { ChangePlan } from './changePlan.js'

const everything = { limit: 1_000_000 }

const shelf = async (store: Store): Promise<(Kept<ShelfItem> & { kind: ShelfKind })[]> => {
  const supplies = await store.listWhole<ShelfItem>('supply', everything)
  const devices = await store.listWhole<ShelfItem>('device', everything)
  return [...supplies.rows, ...devices.rows] as (Kept<ShelfItem> & { kind: ShelfKind })[]
}

/** The whole shelf as CSV: supplies first, then machines, by name. */
export async function exportCsv(store: Store): Promise<string> {
  return toCsv((await shelf(store)).map((kept) => cellsOf(kept.kind, kept, kept.body)))
}

/** One line that cannot be used. */
export interface LineFault {
  line: number
  column: string | null
  message: string
}

export interface CsvPlan extends ChangePlan {
  rows: number
  errors: LineFault[]
}

const emptyCells: Cells = Object.fromEntries(columns.map((column) => [column, '']))

const kindWords: Record<string, ShelfKind> = { supply: 'supply', device: 'device', machine: 'device' }

/** Which column a fault of the schema is about: one of the row's own, or that of a fact. */
const columnOf = (path: string): string | null => (columns.includes(path) ? path : columnAt(path))

/**
 * What bringing the file in would change, with what is wrong line by line. Nothing is changed here.
 *
 * @param once  the once-key it was sent with: its new rows get the same ids each time, so that they are kept once
 */
export async function csvPlan(
  store: Store,
  bytes: Uint8Array,
  now: number,
  once: string | null = null,
): Promise<CsvPlan> {
  let rows: CsvRow[]
  try {
    rows = fromCsv(bytes)
  } catch (error) {
    if (!(error instanceof CsvRefused)) throw error
    throw new Unprocessable([{ path: error.line === null ? 'file' : `line ${error.line}`, message: error.message }])
  }
  const newIds = new Map(rows.map(({ line, cells }) => [line, entryId(once, String(line), JSON.stringify(cells))]))
  const here = new Map((await shelf(store)).map((kept) => [kept.id, kept]))
  const ids = rows.map(({ line, cells }) => cells.id || (newIds.get(line) as string))
  const held = new Map((await store.held(ids)).map((entry) => [entry.id, entry]))
  const plan: CsvPlan = { rows: rows.length, errors: [], same: 0, planned: [], changes: [] }
  const seen = new Map<string, number>()

  for (const { line, cells } of rows) {
    const fault = (column: string | null, message: string): void => {
      plan.errors.push({ line, column, message })
    }
    const kind = kindWords[(cells.kind ?? '').trim().toLowerCase()]
    if (!kind) {
      fault('kind', `kind must be supply or device; this row has “${(cells.kind ?? '').slice(0, 40)}”.`)
      continue
    }
    const given = (cells.id ?? '').trim()
    const id = given || (newIds.get(line) as string)
    if (given !== '') {
      if (!/^[\w-]{16,64}$/.test(id)) {
        fault('id', 'id must be as it was exported, or empty for a new row.')
        continue
      }
      const before = seen.get(id)
      if (before !== undefined) {
        fault('id', `The id “${id}” stands in line ${before} already; an id names one row.`)
        continue
      }
      seen.set(id, line)
    }
    const there = held.get(id)
    // sent again: the row came in the first time, and what happened to it since stays
    if (there && given === '') {
      plan.same += 1
      continue
    }
    if (there && there.kind !== kind) {
      fault('kind', `The row with this id is kept as a ${there.kind}; it cannot become a ${kind}.`)
      continue
    }
    const kept = here.get(id)
    const version = (cells.version ?? '').trim()
    if (kept && version !== '' && version !== String(kept.version)) {
      fault(
        'version',
        `This row was changed meanwhile: it is at version ${kept.version} here and at ${version.slice(0, 12)} in the file. Export again, or empty the version to write over it.`,
      )
      continue
    }
    // a column that the file does not have leaves the row as it is
    const whole: Cells = { ...emptyCells, ...(kept ? cellsOf(kind, kept, kept.body) : {}), ...cells }
    const { item, faults } = itemOf(kind, whole)
    for (const { column, message } of faults) fault(column, message)
    const parsed = (kind === 'supply' ? shelfSupplySchema : shelfDeviceSchema).safeParse(item, { reportInput: true })
    if (!parsed.success) for (const { path, message } of fieldErrors(parsed.error)) fault(columnOf(path), tell(message))
    if (faults.length > 0 || !parsed.success) continue
    const body = { place: null, note: null, ...parsed.data } as ShelfItem
    if (kept && sayTheSame(kept.body, body)) {
      plan.same += 1
      continue
    }
    const draft = shelfDraft(body)
    const name = body.name
    if (kept) {
      plan.planned.push({ change: 'replace', kind, id, name, older: false })
      plan.changes.push({
        do: 'put',
        kind,
        stamp: { id, version: kept.version + 1, createdAt: kept.createdAt, updatedAt: now },
        expects: kept.version,
        draft,
      })
      continue
    }
    const stamp = { id, version: (there?.version ?? 0) + 1, createdAt: now, updatedAt: now }
    plan.planned.push({ change: there ? 'bring back' : 'add', kind, id: stamp.id, name, older: false })
    plan.changes.push({ do: 'put', kind, stamp, expects: there?.version ?? null, draft })
  }
  return plan
}
