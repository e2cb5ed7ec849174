import compression from 'compression'
import express, { type Express } from 'express'
import { benchRoutes } from './web/calls/bench.js'
import { checkRoutes } from './web/calls/check.js'
import { converterRoutes } from './web/calls/converter.js'
import { exchangeApiRoutes } from './web/calls/exchangeApi.js'
import { factsRoutes } from './web/calls/facts.js'
import { fuseRoutes } from './web/calls/fuse.js'
import { healthRoutes } from './web/calls/health.js'
import { inrushRoutes } from './web/calls/inrush.js'
import { jobsApiRoutes } from './web/calls/jobsApi.js'
import { labelRoutes } from './web/calls/label.js'
import { leadDropRoutes } from './web/calls/leadDrop.js'
import { mainsRoutes } from './web/calls/mains.js'
import { matchingApiRoutes } from './web/calls/matchingApi.js'
import { openApiRoutes } from './web/calls/openapi.js'
import { photoRoutes } from './web/calls/photos.js'
import { seriesLampRoutes } from './web/calls/seriesLamp.js'
import { shelfApiRoutes } from './web/calls/shelfApi.js'
import type { Context } from './web/context.js'
import { handleErrors, notFound } from './web/errorPages.js'
import { passphraseAccess, requirePassphrase } from './web/guards/access.js'
import { contentPolicy } from './web/guards/contentPolicy.js'
import { knownHost } from './web/guards/knownHost.js'
import { rateLimits } from './web/guards/rateLimits.js'
import { refusePrototypeKeys } from './web/guards/refusePrototypeKeys.js'
import { sameOrigin } from './web/guards/sameOrigin.js'
import { checkPageRoutes } from './web/pages/check/route.js'
import { checklistRoutes } from './web/pages/checklist/route.js'
import { enterRoutes } from './web/pages/enter/route.js'
import { firstPowerPageRoutes } from './web/pages/firstPower/route.js'
import { fusePageRoutes } from './web/pages/fuse/route.js'
import { jobsPageRoutes } from './web/pages/jobs/route.js'
import { recordsPageRoutes } from './web/pages/records/route.js'
import { referencePageRoutes } from './web/pages/reference/route.js'
import { shelfPageRoutes } from './web/pages/shelf/route.js'
import { shelfMatching } from './web/parts/shelfMatching.js'
import { requestLog } from './web/requestLog.js'
import { setUpViews, staticFiles } from './web/views.js'

/** The ordered list of what a request passes through. */
export function createApp(context: Context): Express {
  const app = express()
  setUpViews(app, context.now)
  app.disable('x-powered-by')
  app.set('trust proxy', context.config.trustedProxies)
  const elapsed = context.elapsed ?? (() => performance.now())
  const access = passphraseAccess({ ...context, elapsed })
  app.use(requestLog(context.logger))
  app.use(contentPolicy())
  app.use(knownHost(context.config))
  app.use(compression())
  app.use('/static', staticFiles())
  app.use(rateLimits(context.config, elapsed))
  app.use(requirePassphrase(access))
  app.use(sameOrigin)
  app.use(exchangeApiRoutes(context))
  app.use(express.json({ limit: '1mb', strict: true }))
  app.use(express.urlencoded({ limit: '1mb', extended: false }))
  app.use(refusePrototypeKeys)
  app.use(healthRoutes(context))
  app.use(enterRoutes(access))
  app.use(checkPageRoutes())
  app.use(labelRoutes())
  app.use(checkRoutes())
  app.use(factsRoutes())
  app.use(converterRoutes())
  app.use(leadDropRoutes())
  app.use(mainsRoutes())
  app.use(seriesLampRoutes())
  app.use(inrushRoutes())
  app.use(benchRoutes())
  app.use(fuseRoutes())
  app.use(fusePageRoutes())
  app.use(firstPowerPageRoutes())
  app.use(referencePageRoutes())
  app.use(shelfApiRoutes(context))
  app.use(jobsApiRoutes(context))
  app.use(photoRoutes(context))
  app.use(jobsPageRoutes(context))
  app.use(recordsPageRoutes(context))
  const matching = shelfMatching(context.store)
  app.use(shelfPageRoutes({ context, matching }))
  app.use(matchingApiRoutes({ store: context.store, matching }))
  app.use(checklistRoutes(context))
  app.use(openApiRoutes())
  app.use(notFound)
  app.use(handleErrors(context))
  return app
}
