import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { connect, type Socket } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import { connectionTimes } from '../../server/connections.js'
import { databaseFile } from '../../server/store/openStore.js'
import { inLongRun } from '../support/long.js'
import { type ServerProcess, startServer } from './serverProcess.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 90_000, hookTimeout: 90_000 })

let server: ServerProcess
let dataDir: string
const sockets: Socket[] = []

beforeAll(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-slow-'))
  server = await startServer(dataDir)
})

afterAll(async () => {
  for (const socket of sockets) socket.destroy()
  // requests that never end must not keep the process from stopping
  expect(await server.stop()).toBe(0)
  rmSync(dataDir, { recursive: true, force: true })
})

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

async function client(): Promise<{ socket: Socket; came: () => string; closed: Promise<void> }> {
  const socket = connect(server.port, '127.0.0.1')
  sockets.push(socket)
  let came = ''
  socket.on('data', (part) => {
    came += part
  })
  socket.on('error', () => undefined)
  const closed = new Promise<void>((resolve) => socket.once('close', () => resolve()))
  await new Promise((resolve, reject) => socket.once('connect', resolve).once('error', reject))
  return { socket, came: () => came, closed }
}

const post = (path: string, body: unknown): Promise<Response> =>
  fetch(server.address + path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(body),
  })

const counted = (table: 'record' | 'photo'): number => {
  const database = new Database(join(dataDir, databaseFile))
  const { total } = database.prepare(`select count(*) as total from ${table}`).get([]) as { total: number }
  database.close()
  return total
}

const filesUnder = (folder: string): string[] => readdirSync(folder, { recursive: true }).map(String).sort()

inLongRun('ends a request whose headers never end, and serves others meanwhile', async () => {
  const slow = await Promise.all(Array.from({ length: 20 }, client))
  const began = performance.now()
  for (const { socket } of slow) socket.write('GET / HTTP/1.1\r\nHost: localhost\r\nX-Slow: ')
  const dribble = setInterval(() => {
    for (const { socket } of slow) socket.write('x')
  }, 200)
  expect((await fetch(`${server.address}/healthz`)).status).toBe(200)
  await Promise.all(slow.map(({ closed }) => closed))
  clearInterval(dribble)
  const tookMs = performance.now() - began
  expect(tookMs).toBeGreaterThan(connectionTimes.headersTimeout - 500)
  expect(tookMs).toBeLessThan(connectionTimes.headersTimeout * 2)
  for (const { came } of slow) expect(came()).toMatch(/^HTTP\/1\.1 408 Request Timeout[\s\S]+nothing was changed/)
})

it('keeps a whole record whose body came byte by byte, while others are served', async () => {
  const body = JSON.stringify({ name: 'sent slowly', supply: {} })
  const slow = await client()
  slow.socket.write(
    `POST /api/shelf/supplies HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n`,
  )
  for (const letter of body) {
    slow.socket.write(letter)
    await pause(10)
  }
  expect((await fetch(`${server.address}/healthz`)).status).toBe(200)
  await slow.closed
  expect(slow.came()).toMatch(/^HTTP\/1\.1 201 /)
})

it('goes on serving while clients ask for long answers and never read them', async () => {
  const deaf = await Promise.all(Array.from({ length: 15 }, client))
  for (const { socket } of deaf) {
    socket.pause()
    for (let count = 0; count < 10; count += 1) socket.write('GET /api/mains HTTP/1.1\r\nHost: localhost\r\n\r\n')
  }
  await pause(500)
  const before = await server.memory()
  expect((await fetch(`${server.address}/`)).status).toBe(200)
  // the answers of a connection are held one at a time
  expect(before.heapUsed + before.external).toBeLessThan(400 * 2 ** 20)
  for (const { socket } of deaf) socket.destroy()
})

it('serves others while 500 connections are open', async () => {
  const open = await Promise.all(Array.from({ length: 500 }, client))
  for (const { socket } of open) socket.write('GET /healthz HTTP/1.1\r\nHost: localhost\r\n')
  const answers = await Promise.all(
    ['/', '/jobs', '/shelf', '/fuse', '/healthz'].map((path) =>
      fetch(server.address + path).then(({ status }) => status),
    ),
  )
  expect(answers).toEqual([200, 200, 200, 200, 200])
  // and each of the 500 still gets its own answer
  for (const { socket } of open) socket.write('Connection: close\r\n\r\n')
  await Promise.all(open.map(({ closed }) => closed))
  expect(open.filter(({ came }) => came().startsWith('HTTP/1.1 200 ')).length).toBe(500)
})

it('keeps nothing of an upload that is broken off: photo, CSV, file of records, form', async () => {
  const { id } = (await (
    await post('/api/jobs', { name: 'J', check: { site: {}, supply: {}, device: {} } })
  ).json()) as {
    id: string
  }
  const before = { records: counted('record'), photos: counted('photo') }
  const files = filesUnder(dataDir)
  const multipart = (field: string): string =>
    `--b\r\nContent-Disposition: form-data; name="${field}"; filename="x"\r\nContent-Type: image/png\r\n\r\n`
  const uploads: [string, string, string][] = [
    [`/api/jobs/${id}/photos`, 'multipart/form-data; boundary=b', multipart('photo')],
    [`/jobs/${id}/photos`, 'multipart/form-data; boundary=b', multipart('photo')],
    ['/records', 'multipart/form-data; boundary=b', `${multipart('file')}kind,name\nsupply,Cut off\n`],
    ['/api/shelf.csv?apply=1', 'text/csv', 'kind,name\nsupply,Cut off\nsupply,Cut'],
    ['/api/import?apply=1', 'application/json', '{"format":"lampline records","formatVersion":1,"supplies":['],
    ['/api/shelf/supplies', 'application/json', '{"name":"Cut off","supply":{}'],
    ['/shelf/supplies', 'application/x-www-form-urlencoded', 'name=Cut+off'],
  ]
  for (const [path, type, begun] of uploads) {
    const { socket, closed } = await client()
    socket.write(
      `POST ${path} HTTP/1.1\r\nHost: localhost\r\nContent-Type: ${type}\r\nContent-Length: 500000\r\n\r\n${begun}`,
    )
    await pause(100)
    socket.destroy()
    await closed
  }
  await pause(500)
  expect((await fetch(`${server.address}/healthz`)).status).toBe(200)
  expect({ records: counted('record'), photos: counted('photo') }).toEqual(before)
  expect(filesUnder(dataDir)).toEqual(files)
  expect(server.said()).not.toMatch(/"level":50/)
})
