import { Router } from 'express'
import { NotFound } from '../../errors.js'
import { show } from '../../page.js'
import { indexView } from './indexView.js'
import type { Table } from './pageTable.js'
import { tableByName } from './pageTables.js'
import { tableCsv } from './tableCsv.js'
import { tableView } from './tableView.js'

/** Longest search that is looked for; what follows is dropped, as no row could hold it. */
const longestSearch = 200

/** What is searched for; of a field given several times the first. */
function searchOf(query: Record<string, unknown>): string {
  const [text] = [query.q].flat()
  return typeof text === 'string' ? text.trim().slice(0, longestSearch) : ''
}

function tableOf(name: string): Table {
  const table = tableByName(name)
  if (!table) throw new NotFound('There is no such table in the reference; the page “Reference” lists all of them.')
  return table
}

/** The pages "/reference…" and each table as CSV. */
export function referencePageRoutes(): Router {
  const router = Router()
  router.get('/reference', (request, response) => {
    show(request, response, { view: 'reference', model: indexView(searchOf(request.query)) })
  })
  router.get('/reference/:name.csv', (request, response) => {
    const table = tableOf(request.params.name)
    response.attachment(`lampline-${table.name}.csv`).type('text/csv; charset=utf-8').send(tableCsv(table))
  })
  router.get('/reference/:name', (request, response) => {
    const table = tableOf(request.params.name)
    show(request, response, { view: 'reference-table', model: tableView(table, searchOf(request.query)) })
  })
  return router
}
