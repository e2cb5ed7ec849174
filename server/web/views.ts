import { join } from 'node:path'
import express, { type Express, type RequestHandler } from 'express'
import { topicTag } from '../chain/topicTag.js'
import { root } from '../root.js'
import { language } from './language.js'
import { day } from './parts/dates.js'
import { outcomeWords } from './parts/verdictWords.js'

/** Views, and the words all of them share; `now` tells the day that stands on paper. */
export function setUpViews(app: Express, now: () => number = Date.now): void {
  app.set('views', join(root, 'views'))
  app.set('view engine', 'pug')
  app.set('view cache', true)
  // a view that notes each of its lines, for messages about it, takes longer to print
  app.locals.compileDebug = false
  app.locals.language = language
  app.locals.outcomeWords = outcomeWords
  app.locals.topicTag = topicTag
  app.locals.today = () => day(now()).text
}

export const staticFiles = (): RequestHandler =>
  express.static(join(root, 'static'), {
    index: false,
    setHeaders(response, path) {
      // it lies among the other files, and answers for the pages of jobs
      if (path.endsWith('offline.js')) response.setHeader('Service-Worker-Allowed', '/jobs/')
    },
  })
