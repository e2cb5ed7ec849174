import express from 'express'
import type { Job } from '../../bench/jobs/job.js'
import { Unprocessable } from '../errors.js'
import { changePlan, planJson } from '../exchange/changePlan.js'
import { photosIn } from '../exchange/photosIn.js'
import { largestZip, openZip } from '../exchange/readZip.js'
import { exportFile, jobFile, mostFaults, readRecordsFile } from '../exchange/recordsFile.js'
import { recordsZip } from '../exchange/recordsZip.js'
import { csvPlan, exportCsv } from '../exchange/shelfCsv.js'
import { refusePrototypeKeys } from '../guards/refusePrototypeKeys.js'
import { onceHeader } from '../once.js'
import { parse } from '../parse.js'
import { whatChanges } from '../schemas/answers.js'
import { applyQuerySchema } from '../schemas/importExport.js'
import { type Call, call } from './call.js'

/** The largest file that is brought in. */
export const largestFile = '64mb'

const apply = { apply: '1 does it; without it the answer says what would change' }

/** Everything in and out. */
export const exchangeCalls: readonly Call[] = [
  call({
    method: 'get',
    path: '/api/jobs/:id/export',
    group: 'Jobs',
    summary: 'One job as a file',
    answer: whatChanges,
    attachment: 'lampline-job.json',
    run: async (_body, { store, named }) => jobFile(await store.get<Job>('job', named('id'))),
  }),
  call({
    method: 'get',
    path: '/api/export',
    group: 'In and out',
    summary: 'Everything that is kept',
    answer: whatChanges,
    attachment: 'lampline-records.json',
    run: (_body, { store }) => exportFile(store),
  }),
  call({
    method: 'post',
    path: '/api/import',
    group: 'In and out',
    summary: 'Bring such a file in, all or nothing',
    query: apply,
    file: {
      type: 'application/json',
      read: [express.json({ limit: largestFile, type: () => true }), refusePrototypeKeys],
    },
    answer: whatChanges,
    async run(_body, { store, now, request }) {
      const { apply } = parse(applyQuerySchema, request.query)
      const plan = await changePlan(store, readRecordsFile(request.body), now())
      if (apply) await store.apply(plan.changes)
      return planJson(plan, apply)
    },
  }),
  call({
    method: 'get',
    path: '/api/export.zip',
    group: 'In and out',
    summary: 'Everything that is kept with its photos, as one file',
    answer: 'zip',
    attachment: 'lampline-records.zip',
    run: (_body, { store, config }) => recordsZip(store, config.dataDir),
  }),
  call({
    method: 'post',
    path: '/api/import.zip',
    group: 'In and out',
    summary:
      'Bring such a file in: the records all or nothing, then the photos one by one; `photos.refused` names those not taken',
    query: apply,
    file: { type: 'application/zip', read: [express.raw({ limit: largestZip, type: () => true })] },
    answer: whatChanges,
    async run(_body, asked) {
      const { store, now, request } = asked
      const { apply } = parse(applyQuerySchema, request.query)
      const zip = openZip(Buffer.isBuffer(request.body) ? request.body : Buffer.alloc(0))
      const incoming = readRecordsFile(zip.records)
      const plan = await changePlan(store, incoming, now())
      if (apply) await store.apply(plan.changes)
      const owners = new Set(incoming.map(({ stamp }) => stamp.id))
      return { ...planJson(plan, apply), photos: await photosIn(asked, zip, { owners, keep: apply }) }
    },
  }),
  call({
    method: 'get',
    path: '/api/shelf.csv',
    group: 'In and out',
    summary: 'The shelf as CSV',
    answer: 'csv',
    attachment: 'lampline-shelf.csv',
    run: (_body, { store }) => exportCsv(store),
  }),
  call({
    method: 'post',
    path: '/api/shelf.csv',
    group: 'In and out',
    summary: 'Bring such a CSV in, all or nothing',
    once: true,
    query: apply,
    file: { type: 'text/csv', read: [express.raw({ limit: largestFile, type: () => true })] },
    answer: whatChanges,
    async run(_body, { store, now, request }) {
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
      return { rows: plan.rows, errors: plan.errors.slice(0, mostFaults), ...planJson(plan, apply) }
    },
  }),
]
