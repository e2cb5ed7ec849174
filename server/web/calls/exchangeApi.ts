import express, { Router } from 'express'
import type { Job } from '../../bench/jobs/job.js'
import type { Context } from '../context.js'
import { Unprocessable } from '../errors.js'
import { changePlan, planJson } from '../exchange/changePlan.js'
import { exportFile, jobFile, mostFaults, readRecordsFile } from '../exchange/recordsFile.js'
import { csvPlan, exportCsv } from '../exchange/shelfCsv.js'
import { refusePrototypeKeys } from '../guards/refusePrototypeKeys.js'
import { onceHeader } from '../once.js'
import { parse } from '../parse.js'
import { applyQuerySchema } from '../schemas/importExport.js'

/** The largest file that is brought in. */
export const largestFile = '64mb'

/**
 * Everything in and out. Mounted before the parsers of other requests, because a file may be larger than a request.
 */
export function exchangeApiRoutes({ store, now }: Context): Router {
  const router = Router()

  router.get('/api/export', async (_request, response) => {
    const file = await exportFile(store)
    response.type('json').attachment('lampline-records.json').send(file)
  })
  router.get('/api/jobs/:id/export', async (request, response) => {
    const kept = await store.get<Job>('job', request.params.id)
    response.type('json').attachment('lampline-job.json').send(jobFile(kept))
  })
  router.post(
    '/api/import',
    express.json({ limit: largestFile, type: () => true }),
    refusePrototypeKeys,
    async (request, response) => {
      const { apply } = parse(applyQuerySchema, request.query)
      const plan = await changePlan(store, readRecordsFile(request.body), now())
      if (apply) await store.apply(plan.changes)
      response.json(planJson(plan, apply))
    },
  )

  router.get('/api/shelf.csv', async (_request, response) => {
    const file = await exportCsv(store)
    response.type('text/csv').attachment('lampline-shelf.csv').send(file)
  })
  router.post('/api/shelf.csv', express.raw({ limit: largestFile, type: () => true }), async (request, response) => {
    const { apply } = parse(applyQuerySchema, request.query)
    const bytes = Buffer.isBuffer(request.body) ? request.body : Buffer.alloc(0)
    const plan = await csvPlan(store, bytes, now(), onceHeader(request))
    if (apply && plan.errors.length > 0)
      throw new Unprocessable(
        plan.errors.slice(0, mostFaults).map(({ line, column, message }) => ({
          path: column === null ? `line ${line}` : `line ${line}, ${column}`,
          message,
        })),
        `Nothing was brought in: ${plan.errors.length} of ${plan.rows} lines cannot be used.`,
      )
    if (apply) await store.apply(plan.changes)
    response.json({ rows: plan.rows, errors: plan.errors.slice(0, mostFaults), ...planJson(plan, apply) })
  })
  return router
}
