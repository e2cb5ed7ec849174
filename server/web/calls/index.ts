import type { Router } from 'express'
import type { Context } from '../context.js'
import { openApiDocument } from '../openapi.js'
import { whatChanges } from '../schemas/answers.js'
import { atHandCalls } from './atHand.js'
import { type Call, call, routesOf } from './call.js'
import { checkCalls } from './check.js'
import { examineCalls } from './examine.js'
import { exchangeCalls } from './exchange.js'
import { firstPowerCalls } from './firstPower.js'
import { fuseCalls } from './fuse.js'
import { jobCalls } from './jobs.js'
import { mainsCalls } from './mains.js'
import { matchingCalls } from './matching.js'
import { photoCalls } from './photos.js'
import { shelfCalls } from './shelf.js'

/** Every call under /api, in the order of the documentation. */
export const calls: readonly Call[] = [
  ...checkCalls,
  ...mainsCalls,
  ...fuseCalls,
  ...firstPowerCalls,
  ...examineCalls,
  ...shelfCalls,
  ...matchingCalls,
  ...jobCalls,
  ...photoCalls,
  ...atHandCalls,
  ...exchangeCalls,
  call({
    method: 'get',
    path: '/api/openapi.json',
    group: 'This document',
    summary: 'The description of all calls',
    answer: whatChanges,
    run: () => openApiDocument(calls),
  }),
]

/** Calls that take a file. It may be larger than a request, so they stand before what reads the bodies of others. */
export const fileCallRoutes = (context: Context): Router =>
  routesOf(
    calls.filter(({ file }) => file),
    context,
  )

/** All other calls. */
export const callRoutes = (context: Context): Router =>
  routesOf(
    calls.filter(({ file }) => !file),
    context,
  )
