import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { renderFile } from 'pug'
import { examples } from '../../../server/web/viewModels/examples.js'
import { startServer } from '../serverProcess.js'
import type { Bare } from './bareServer.js'
import { type Asked, load, type Side } from './load.js'
import { figure, type Measured, median, type Part } from './measured.js'
import { serve } from './served.js'
import { cases } from './situations.js'
import { targets } from './targets.js'

/** Short and many, so that what else the machine does meets both programs alike. */
const rounds = 31
const seconds = 0.4
/** Load before, so that the compiler of Node.js is done with either program: ours has far more code. */
const warmingSeconds = 20
const connections = 8

const pages: Asked[] = examples.map(({ address }) => ({ path: address }))

/** The same checks, but a number stands on both plates that no plate had before. */
const newPlates: Asked[] = pages.map(({ path }) => ({
  path: path.replace(/[?&](supply|machine)=[^&]*/g, '$&%0AS/N+{n}'),
}))

const checks: Asked[] = cases.map((check) => ({
  path: '/api/check',
  method: 'POST',
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify(check),
}))

const withGzip = (asked: Asked[]): Asked[] =>
  asked.map((one) => ({ ...one, headers: { ...one.headers, 'accept-encoding': 'gzip' } }))

const mean = (values: number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

const answers = (address: string, asked: Asked[]): Promise<string[]> =>
  Promise.all(
    asked.map(async ({ path, ...how }) => {
      const answer = await fetch(address + path, how)
      if (answer.status !== 200) throw new Error(`${path} was answered with ${answer.status}`)
      return answer.text()
    }),
  )

/** A page of as many elements and bytes as ours have on average, and an answer in JSON of as many bytes. */
function bareLike(ours: string[], json: string[]): Bare {
  const elements = Math.round(mean(ours.map((page) => page.match(/<[a-z]/g)?.length ?? 0)))
  const bytes = Math.round(mean(ours.map((page) => Buffer.byteLength(page))))
  const empty = renderFile(join(import.meta.dirname, 'bare.pug'), { lines: [] }).length
  const frame = '<p class="plain"></p>'.length
  // our own letters, so that they compress as ours do and take as long to encode
  const words = ours.join(' ').replace(/[<>&"\p{C}]/gu, '')
  const letters = ((bytes - empty - elements * frame) * words.length) / Buffer.byteLength(words)
  const text = (from: number, to: number): string => words.slice(from, to)
  const at = (line: number): number => Math.round((letters * line) / elements)
  const lines = Array.from({ length: elements }, (_, line) => ({ kind: 'plain', text: text(at(line), at(line + 1)) }))
  const fitting = json.toSorted((one, other) => one.length - other.length)[Math.floor(json.length / 2)] as string
  return { lines, answer: JSON.parse(fitting) }
}

/** The ratio of each round, and the middle one of them. */
async function compare(told: Pick<Measured, 'what' | 'target'>, ours: Side, bare: Side): Promise<Measured> {
  const sides = [ours, bare]
  await load({ sides, connections, seconds: warmingSeconds, rounds: 1 })
  const found = (await load({ sides, connections, seconds, rounds })).map((round) => round.map((one) => one.perSecond))
  const ofSide = (side: number): number => median(found.map((round) => round[side] ?? Number.NaN))
  const ratios = found.map(([one = Number.NaN, other = Number.NaN]) => one / other).toSorted((a, b) => a - b)
  const share = (part: number): number => ratios[Math.floor(part * ratios.length)] ?? Number.NaN
  return {
    ...told,
    unit: 'requests per second, ours / bare',
    value: median(ratios),
    note: `${figure(ofSide(0))} / ${figure(ofSide(1))} a second; half of the rounds from ${figure(share(0.25))} to ${figure(share(0.75))}`,
  }
}

async function measure(): Promise<Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), 'lampline-http-'))
  const started: { stop(): Promise<unknown> }[] = []
  const begun: Begun = async (starting) => {
    const server = await starting
    started.push(server)
    return server
  }
  try {
    return await compareAll(folder, begun)
  } finally {
    await Promise.all(started.map((server) => server.stop()))
    rmSync(folder, { recursive: true })
  }
}

type Begun = <Server extends { stop(): Promise<unknown> }>(starting: Promise<Server>) => Promise<Server>

async function compareAll(folder: string, begun: Begun): Promise<Measured[]> {
  const lampline = await begun(startServer(join(folder, 'data')))
  const file = join(folder, 'bare.json')
  const ours = await answers(lampline.address, pages)
  writeFileSync(file, JSON.stringify(bareLike(ours, await answers(lampline.address, checks))))
  const bareProgram = 'tests/bench/speed/bareServer.ts'
  const bare = await begun(serve(bareProgram, [file]))
  const bareGzip = await begun(serve(bareProgram, [file, 'gzip']))
  const [page] = await answers(bare.address, [{ path: '/' }])
  const size = `${figure(Buffer.byteLength(page ?? ''))} bytes`
  const bareGet = [{ path: '/' }]
  const measured = [
    await compare(
      targets.page,
      { address: lampline.address, requests: pages },
      { address: bare.address, requests: bareGet },
    ),
    await compare(
      targets.pageNewPlates,
      { address: lampline.address, requests: newPlates },
      { address: bare.address, requests: bareGet },
    ),
    await compare(
      targets.pageGzip,
      { address: lampline.address, requests: withGzip(pages) },
      { address: bareGzip.address, requests: withGzip(bareGet) },
    ),
    await compare(
      { what: 'a full check as JSON' },
      { address: lampline.address, requests: checks },
      { address: bare.address, requests: checks },
    ),
    await compare(
      { what: 'a full check as JSON, both compressed with gzip' },
      { address: lampline.address, requests: withGzip(checks) },
      { address: bareGzip.address, requests: withGzip(checks) },
    ),
  ].map((row, index) => (index < 3 ? { ...row, note: `${size}; ${row.note}` } : row))
  return measured
}

export const http: Part = {
  name: 'http',
  title: 'A check over HTTP',
  method:
    'Lampline as `npm start` runs it, against an express program with nothing but one pug view, which prints as many elements and bytes, and one route that reads JSON and answers with as much. Both are loaded in turn from a second process over 8 connections, after 20 s of load each; the ratio is the middle of 31 rounds of 0.4 s each.',
  measure,
}
