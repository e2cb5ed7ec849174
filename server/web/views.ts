import { fileURLToPath } from 'node:url'
import express, { type Express, type RequestHandler } from 'express'
import { glossary } from './glossary.js'
import { language } from './language.js'
import { outcomeWords } from './viewModels/verdictWords.js'

const root = (folder: string): string => fileURLToPath(new URL(`../../${folder}`, import.meta.url))

export function setUpViews(app: Express): void {
  app.set('views', root('views'))
  app.set('view engine', 'pug')
  app.set('view cache', true)
  app.locals.language = language
  app.locals.glossary = glossary
  app.locals.outcomeWords = outcomeWords
}

export const staticFiles = (): RequestHandler => express.static(root('static'), { index: false })
