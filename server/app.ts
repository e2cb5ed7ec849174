import compression from 'compression'
import express, { type Express } from 'express'
import { passphraseAccess, requirePassphrase } from './web/access.js'
import { contentPolicy } from './web/contentPolicy.js'
import type { Context } from './web/context.js'
import { handleErrors, notFound } from './web/errorPages.js'
import { knownHost } from './web/knownHost.js'
import { rateLimits } from './web/rateLimits.js'
import { refusePrototypeKeys } from './web/refusePrototypeKeys.js'
import { requestLog } from './web/requestLog.js'
import { benchRoutes } from './web/routes/bench.js'
import { checkRoutes } from './web/routes/check.js'
import { checklistRoutes } from './web/routes/checklist.js'
import { checkPageRoutes } from './web/routes/checkPage.js'
import { converterRoutes } from './web/routes/converter.js'
import { enterRoutes } from './web/routes/enter.js'
import { exchangeApiRoutes } from './web/routes/exchangeApi.js'
import { factsRoutes } from './web/routes/facts.js'
import { firstPowerPageRoutes } from './web/routes/firstPowerPage.js'
import { fuseRoutes } from './web/routes/fuse.js'
import { fusePageRoutes } from './web/routes/fusePage.js'
import { healthRoutes } from './web/routes/health.js'
import { inrushRoutes } from './web/routes/inrush.js'
import { jobsApiRoutes } from './web/routes/jobsApi.js'
import { jobsPageRoutes } from './web/routes/jobsPages.js'
import { labelRoutes } from './web/routes/label.js'
import { leadDropRoutes } from './web/routes/leadDrop.js'
import { mainsRoutes } from './web/routes/mains.js'
import { matchingApiRoutes } from './web/routes/matchingApi.js'
import { openApiRoutes } from './web/routes/openapi.js'
import { photoRoutes } from './web/routes/photos.js'
import { recordsPageRoutes } from './web/routes/recordsPage.js'
import { referencePageRoutes } from './web/routes/referencePages.js'
import { seriesLampRoutes } from './web/routes/seriesLamp.js'
import { shelfApiRoutes } from './web/routes/shelfApi.js'
import { shelfPageRoutes } from './web/routes/shelfPages.js'
import { sameOrigin } from './web/sameOrigin.js'
import { shelfMatching } from './web/shelfMatching.js'
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
