import { readFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import compression from 'compression'
import express from 'express'

/** What the bare server answers with; see `bareLike`. */
export interface Bare {
  lines: { kind: string; text: string }[]
  answer: unknown
}

/** The least an express program with one pug view can be: no checks, no logs, no headers, views compiled once. */
const [, , file = '', gzip] = process.argv
const { lines, answer } = JSON.parse(readFileSync(file, 'utf8')) as Bare
const app = express()
app.set('views', import.meta.dirname)
app.set('view engine', 'pug')
app.set('view cache', true)
app.locals.compileDebug = false
if (gzip) app.use(compression())
app.get('/', (_request, response) => response.render('bare', { lines }))
app.post('/api/check', express.json(), (_request, response) => {
  response.json(answer)
})
const server = app.listen(0, '127.0.0.1', () => {
  console.log(`listening on http://127.0.0.1:${(server.address() as AddressInfo).port}`)
})
process.on('SIGTERM', () => process.exit(0))
