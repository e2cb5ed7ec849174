import { Agent } from 'node:http'
import fc from 'fast-check'
import sharp from 'sharp'
import { type Memory, type ServerProcess, startServer } from '../serverProcess.js'
import { type Answer, faultOf } from './answers.js'
import { type Sent, send, sendRaw } from './client.js'
import { Pool } from './pool.js'
import { type Draft, drafts, pathOf } from './requests.js'

/** No answer may take longer [ms]. */
export const longestMs = 1000
/** Calls that took longer among others are asked again alone [ms]. */
const noticedMs = 250
const chunk = 400

export interface Fault {
  what: string
  request: string
}

export interface Outcome {
  seed: number
  count: number
  statuses: Record<string, number>
  p50Ms: number
  p99Ms: number
  slowest: { ms: number; request: string }
  /** calls that took longer than noticed, with the least they took alone */
  slowAlone: { ms: number; request: string }[]
  /** what each route took in all [ms] */
  byRoute: Record<string, number>
  faults: Fault[]
  memory: { sent: number; memory: Memory }[]
  /** growth of the heap from the first quarter of the run to its end [bytes] */
  heapGrowth: number
  seconds: number
}

const shown = ({ method, path, headers, body }: Sent): string =>
  `${method} ${path.slice(0, 300)} ${JSON.stringify(headers).slice(0, 200)} ${String(body ?? '').slice(0, 600)}`

/** Header values go over the wire as Latin-1. */
const wireQuery = (path: string, query: string): string => (query === '' ? path : `${path}?${query}`)

function sentOf(draft: Draft, pool: Pool): Sent {
  const path = wireQuery(
    pathOf(draft, (name, pick, route) => pool.fill(name, pick, route)),
    draft.query,
  )
  let body = draft.body
  if ('json' in draft && draft.json !== undefined) {
    const json = draft.json as { version?: unknown } | null
    const version = pool.version(path)
    if (
      draft.fresh &&
      version !== undefined &&
      json !== null &&
      typeof json === 'object' &&
      typeof json.version === 'number'
    )
      json.version = version
    body = JSON.stringify(json)
  } else if (draft.fresh && typeof body === 'string') {
    const version = pool.version(path)
    if (version !== undefined) body = body.replace(/(^|&)version=\w+/, `$1version=${version}`)
    if (pool.tokens.length > 0) body = body.replace(/token=\w+/, `token=${pool.tokens[0]}`)
  }
  const sent: Sent = { method: draft.method, path, headers: draft.headers }
  if (body !== undefined && draft.method !== 'TRACE') {
    sent.body = body
    sent.headers = { ...sent.headers, 'Content-Length': String(Buffer.byteLength(body)) }
  }
  return sent
}

async function photoFiles(): Promise<Buffer[]> {
  const plain = sharp({ create: { width: 9, height: 7, channels: 3, background: '#456' } })
  const whole = await Promise.all([
    plain.clone().png().toBuffer(),
    plain.clone().jpeg().toBuffer(),
    plain.clone().webp().toBuffer(),
  ])
  const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')
  return [...whole, ...whole, (whole[0] as Buffer).subarray(0, 40), svg, Buffer.alloc(0), Buffer.from('GIF89a')]
}

/** Keeps a few records of each kind, so that the first requests are about something. */
async function firstRecords(agent: Agent, port: number, pool: Pool, photo: Buffer): Promise<void> {
  const post = async (path: string, body: unknown): Promise<void> => {
    const headers = { 'Content-Type': 'application/json' }
    const answer = await send(agent, port, { method: 'POST', path, headers, body: JSON.stringify(body) })
    if (answer.status !== 201) throw new Error(`${path}: ${answer.status} ${answer.text}`)
    pool.learn(path, answer.status, String(answer.headers.location ?? ''), answer.text)
  }
  const supply = { label: 'INPUT: 100-240V~ 50/60Hz 0.8A OUTPUT: 12V ⎓ 2.0A 24W' }
  const device = { inputs: [{ kind: 'dc', voltageV: 12, currentA: 1.2 }] }
  for (let count = 0; count < 3; count += 1) {
    await post('/api/shelf/supplies', { name: `Brick ${count}`, supply })
    await post('/api/shelf/devices', { name: `Recorder ${count}`, device })
    await post('/api/jobs', { name: `Job ${count}`, check: { site: { country: 'DE' }, supply, device } })
  }
  for (const { id } of pool.kept.jobs) {
    await post(`/api/jobs/${id}/parts`, { name: 'Cord set', state: 'wanted' })
    const headers = { 'Content-Type': 'multipart/form-data; boundary=b' }
    const head =
      '--b\r\nContent-Disposition: form-data; name="photo"; filename="p.png"\r\nContent-Type: image/png\r\n\r\n'
    const body = Buffer.concat([Buffer.from(head), photo, Buffer.from('\r\n--b--\r\n')])
    await send(agent, port, { method: 'POST', path: `/api/jobs/${id}/photos`, headers, body })
    const page = await send(agent, port, { method: 'GET', path: `/jobs/${id}`, headers: {} })
    pool.learn(`/jobs/${id}`, page.status, undefined, page.text)
  }
}

const quantile = (sorted: number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0

/** Least-squares growth of the heap over the run, its first quarter left out [bytes]. */
function growth(samples: Outcome['memory']): number {
  const last = samples[samples.length - 1]?.sent ?? 0
  const settled = samples.filter(({ sent }) => sent >= last / 4)
  const n = settled.length
  const meanX = settled.reduce((sum, { sent }) => sum + sent, 0) / n
  const meanY = settled.reduce((sum, { memory }) => sum + memory.heapUsed, 0) / n
  const xy = settled.reduce((sum, { sent, memory }) => sum + (sent - meanX) * (memory.heapUsed - meanY), 0)
  const xx = settled.reduce((sum, { sent }) => sum + (sent - meanX) ** 2, 0)
  const [first] = settled
  return xx === 0 ? 0 : (xy / xx) * (last - (first?.sent ?? 0))
}

export interface Run {
  dataDir: string
  seed: number
  count: number
  environment?: Record<string, string>
  /** requests under way at once */
  atOnce?: number
  /** false where others may use the machine, too: an answer is then late only if it is late when asked for alone */
  quiet?: boolean
  progress?: (sent: number, memory: Memory) => void
}

/** Sends generated requests to a server of its own and tells what was wrong with its answers. */
export async function fuzz({
  dataDir,
  seed,
  count,
  environment,
  atOnce = 6,
  quiet = true,
  progress,
}: Run): Promise<Outcome> {
  const began = performance.now()
  const server = await startServer(dataDir, environment)
  const agent = new Agent({ keepAlive: true, maxSockets: atOnce })
  const pool = new Pool()
  const photos = await photoFiles()
  const arbitrary = drafts({ photos })
  await firstRecords(agent, server.port, pool, photos[0] as Buffer)
  const times: number[] = []
  const outcome: Outcome = {
    seed,
    count,
    statuses: {},
    p50Ms: 0,
    p99Ms: 0,
    slowest: { ms: 0, request: '' },
    slowAlone: [],
    byRoute: {},
    faults: [],
    memory: [],
    heapGrowth: 0,
    seconds: 0,
  }
  const fault = (what: string, request: string): void => {
    outcome.faults.push({ what, request })
  }

  const ask = async (server: ServerProcess, draft: Draft, slow: Sent[]): Promise<void> => {
    const sent = sentOf(draft, pool)
    const asked = performance.now()
    let answer: Answer
    try {
      answer = draft.raw === undefined ? await send(agent, server.port, sent) : await sendRaw(server.port, draft.raw)
    } catch (error) {
      fault(`no answer: ${(error as Error).message}`, shown(sent))
      return
    }
    const ms = performance.now() - asked
    times.push(ms)
    outcome.byRoute[draft.route] = (outcome.byRoute[draft.route] ?? 0) + ms
    const name = draft.raw === undefined ? String(answer.status) : `raw ${answer.status}`
    outcome.statuses[name] = (outcome.statuses[name] ?? 0) + 1
    if (ms > outcome.slowest.ms) outcome.slowest = { ms, request: shown(sent) }
    if (ms > longestMs && quiet) fault(`${Math.round(ms)} ms`, draft.raw?.slice(0, 200) ?? shown(sent))
    if (draft.raw !== undefined) {
      if (answer.status >= 500 || /\n\s+at .+:\d+:\d+/.test(answer.text))
        fault(`status ${answer.status}`, draft.raw.slice(0, 200))
      return
    }
    if (ms > noticedMs) slow.push(sent)
    const all = `${sent.path} ${decodeURIComponentSoftly(sent.path)} ${JSON.stringify(sent.headers)} ${String(sent.body ?? '')}`
    try {
      const what = faultOf(sent.method, sent.path, all, answer)
      if (what) fault(`${what}: ${answer.text.slice(0, 300)}`, shown(sent))
    } catch (error) {
      fault(`cannot be read: ${(error as Error).message}`, shown(sent))
    }
    const { location } = answer.headers
    pool.learn(sent.path, answer.status, typeof location === 'string' ? location : undefined, answer.text)
  }

  const measure = async (sent: number): Promise<void> => {
    const memory = await server.memory()
    outcome.memory.push({ sent, memory })
    progress?.(sent, memory)
  }

  const between = Math.max(chunk, Math.floor(count / 40))
  let measuredAt = 0
  for (let sent = 0; sent < count; sent += chunk) {
    const some = fc.sample(arbitrary, { seed: seed + sent, numRuns: Math.min(chunk, count - sent) })
    const slow: Sent[] = []
    const queue = some[Symbol.iterator]()
    const worker = async (): Promise<void> => {
      for (const draft of queue) await ask(server, draft, slow)
    }
    await Promise.all(Array.from({ length: atOnce }, worker))
    for (const one of slow) {
      let least = Number.POSITIVE_INFINITY
      for (let time = 0; time < 2 && least > noticedMs; time += 1) {
        const asked = performance.now()
        await send(agent, server.port, one).catch(() => undefined)
        least = Math.min(least, performance.now() - asked)
      }
      if (least > noticedMs) outcome.slowAlone.push({ ms: Math.round(least), request: shown(one) })
      if (least > longestMs) fault(`${Math.round(least)} ms alone`, shown(one))
    }
    for (const { kind, id } of pool.surplus.splice(0)) {
      const path = kind === 'jobs' ? `/api/jobs/${id}` : `/api/shelf/${kind}/${id}`
      await send(agent, server.port, { method: 'DELETE', path, headers: {} }).catch(() => undefined)
    }
    if (sent - measuredAt >= between || sent === 0) {
      measuredAt = sent
      await measure(sent)
    }
    if (server.process.exitCode !== null) {
      fault(`the server ended: ${server.said()}`, '')
      break
    }
  }
  await measure(count)
  agent.destroy()
  const code = await server.stop()
  if (code !== 0) fault(`the server ended with ${code}: ${server.said().slice(0, 2000)}`, '')
  if (/unexpected fault/.test(server.said())) fault(`logged: ${server.said().slice(0, 2000)}`, '')
  times.sort((one, other) => one - other)
  outcome.p50Ms = quantile(times, 0.5)
  outcome.p99Ms = quantile(times, 0.99)
  outcome.heapGrowth = growth(outcome.memory)
  outcome.seconds = (performance.now() - began) / 1000
  return outcome
}

function decodeURIComponentSoftly(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}
