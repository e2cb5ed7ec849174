import compression from 'compression'
import express, { type Express } from 'express'
import { callRoutes, fileCallRoutes } from './web/calls/index.js'
import type { Context } from './web/context.js'
import { drawingRoutes } from './web/drawings/route.js'
import { handleErrors, notFound } from './web/errorPages.js'
import { passphraseAccess, requirePassphrase } from './web/guards/access.js'
import { contentPolicy } from './web/guards/contentPolicy.js'
import { knownHost } from './web/guards/knownHost.js'
import { oneAddress } from './web/guards/oneAddress.js'
import { rateLimits } from './web/guards/rateLimits.js'
import { refusePrototypeKeys } from './web/guards/refusePrototypeKeys.js'
import { sameOrigin } from './web/guards/sameOrigin.js'
import { healthRoutes } from './web/health.js'
import { atHandRoutes } from './web/pages/atHand/route.js'
import { judgeScriptFile } from './web/pages/bench/judgeScript.js'
import { benchPageRoutes } from './web/pages/bench/route.js'
import { checkPageRoutes } from './web/pages/check/route.js'
import { checklistRoutes } from './web/pages/checklist/route.js'
import { enterRoutes } from './web/pages/enter/route.js'
import { examineRoutes } from './web/pages/examine/route.js'
import { firstPowerPageRoutes } from './web/pages/firstPower/route.js'
import { fusePageRoutes } from './web/pages/fuse/route.js'
import { jobFactsRoutes } from './web/pages/jobs/factsRoute.js'
import { jobsPageRoutes } from './web/pages/jobs/route.js'
import { plugSizesRoutes } from './web/pages/plugSizes/route.js'
import { recordsPageRoutes } from './web/pages/records/route.js'
import { referencePageRoutes } from './web/pages/reference/route.js'
import { shelfPageRoutes } from './web/pages/shelf/route.js'
import { tagRoutes } from './web/pages/tags/route.js'
import { shelfMatching } from './web/parts/shelfMatching.js'
import { pictureRoutes } from './web/pictures.js'
import { withGates } from './web/records/withGates.js'
import { requestLog } from './web/requestLog.js'
import { setUpViews, staticFiles } from './web/views.js'

/** The ordered list of what a request passes through. */
export function createApp(given: Context): Express {
  const context = { ...given, store: withGates(given.store) }
  const app = express()
  setUpViews(app, context.now)
  app.disable('x-powered-by')
  app.set('trust proxy', context.config.trustedProxies)
  const elapsed = context.elapsed ?? (() => performance.now())
  const access = passphraseAccess({ ...context, elapsed })
  app.use(requestLog(context.logger))
  app.use(contentPolicy())
  app.use(knownHost(context.config))
  app.use(oneAddress)
  app.use(compression())
  app.get('/static/judge.js', judgeScriptFile())
  app.use('/static', staticFiles())
  app.use(rateLimits(context.config, elapsed))
  app.use(requirePassphrase(access))
  app.use(sameOrigin)
  app.use(fileCallRoutes(context))
  app.use(express.json({ limit: '1mb', strict: true }))
  app.use(express.urlencoded({ limit: '1mb', extended: false }))
  app.use(refusePrototypeKeys)
  app.use(healthRoutes(context))
  app.use(drawingRoutes())
  app.use(enterRoutes(access))
  app.use(checkPageRoutes(context))
  app.use(callRoutes(context))
  app.use(plugSizesRoutes())
  app.use(atHandRoutes(context))
  app.use(fusePageRoutes())
  app.use(firstPowerPageRoutes(context))
  app.use(referencePageRoutes())
  app.use(pictureRoutes(context))
  app.use(jobsPageRoutes(context))
  app.use(jobFactsRoutes(context))
  app.use(benchPageRoutes(context))
  app.use(examineRoutes(context))
  app.use(recordsPageRoutes(context))
  const matching = shelfMatching(context.store)
  app.use(shelfPageRoutes({ context, matching }))
  app.use(tagRoutes(context))
  app.use(checklistRoutes(context))
  app.use(notFound)
  app.use(handleErrors(context))
  return app
}
