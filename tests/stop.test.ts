import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:http'
import { type AddressInfo, connect, type Socket } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { finishRequests } from '../server/stop.js'
import { compiled } from './support/compiled.js'

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 })

const top = join(import.meta.dirname, '..')

interface Client {
  socket: Socket
  /** what came so far */
  read: () => string
  closed: Promise<unknown>
}

function client(port: number): Client {
  const socket = connect(port, '127.0.0.1')
  let text = ''
  socket.setEncoding('utf8')
  socket.on('data', (part) => {
    text += part
  })
  socket.on('error', () => undefined)
  return { socket, read: () => text, closed: new Promise((resolve) => socket.on('close', resolve)) }
}

/** Whether a new connection is taken. */
const tried = (port: number): Promise<string> =>
  new Promise((resolve) => {
    const late = client(port)
    late.socket.on('connect', () => {
      resolve('taken')
      late.socket.destroy()
    })
    late.socket.on('error', () => resolve('refused'))
  })

const body = '{"text":"OUTPUT 12V 2A"}'
/** A call with a part of its body still to come. */
const begun = `POST /api/label HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n${body.slice(0, 5)}`

describe('the server told to stop', () => {
  let dataDir: string
  let child: ChildProcess
  let port: number

  beforeEach(async () => {
    dataDir = mkdtempSync(join(tmpdir(), 'lampline-stop-'))
    child = spawn(process.execPath, [compiled()], {
      cwd: top,
      env: { PATH: process.env.PATH, HOST: '127.0.0.1', PORT: '0', DATA_DIR: dataDir },
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    let printed = ''
    for await (const part of child.stdout as NodeJS.ReadableStream) {
      printed += part
      if (printed.includes('listening on')) break
    }
    port = Number(/:(\d+)\s*$/.exec(printed)?.[1])
  })

  afterEach(() => {
    child.kill('SIGKILL')
    rmSync(dataDir, { recursive: true, force: true })
  })

  it('finishes the request under way, takes no new connection, and ends with code 0', async () => {
    const idle = client(port)
    idle.socket.write('GET /healthz HTTP/1.1\r\nHost: localhost\r\n\r\n')
    await vi.waitFor(() => expect(idle.read()).toContain('{"status":"ok"}'), 10_000)
    const slow = client(port)
    slow.socket.write(begun)
    await wait(300)

    const ended = once(child, 'exit')
    child.kill('SIGTERM')
    // what waits for nothing is closed at once
    await idle.closed
    // the waiting connections are closed a moment before the door is
    await vi.waitFor(async () => expect(await tried(port)).toBe('refused'), 2000)
    expect(child.exitCode).toBeNull()

    slow.socket.write(body.slice(5))
    await slow.closed
    const [head = '', answer = ''] = slow.read().split('\r\n\r\n')
    expect(head).toMatch(/^HTTP\/1\.1 200 OK\r\n/)
    expect(Buffer.byteLength(answer)).toBe(Number(/\r\nContent-Length: (\d+)/i.exec(head)?.[1]))
    expect(JSON.parse(answer)).toBeTypeOf('object')
    expect(await ended).toEqual([0, null])
  })

  it('ends at once when told twice, whatever is under way', async () => {
    const slow = client(port)
    slow.socket.write(begun)
    await wait(300)
    const ended = once(child, 'exit')
    child.kill('SIGINT')
    await wait(200)
    expect(child.exitCode).toBeNull()
    child.kill('SIGINT')
    expect(await ended).toEqual([0, null])
  })
})

describe('finishing requests', () => {
  const listening = async (handle: Parameters<typeof createServer>[1]) => {
    const server = createServer(handle)
    server.listen(0, '127.0.0.1')
    await once(server, 'listening')
    return { server, port: (server.address() as AddressInfo).port }
  }

  it('gives up at the deadline on one that never ends', async () => {
    const { server, port } = await listening(() => undefined)
    const stuck = client(port)
    stuck.socket.write('GET / HTTP/1.1\r\nHost: localhost\r\n\r\n')
    await once(server, 'request')
    const began = performance.now()
    expect(await finishRequests(server, 200)).toBe(false)
    expect(performance.now() - began).toBeGreaterThan(190)
    await stuck.closed
    expect(stuck.read()).toBe('')
  })

  it('gives up at the deadline on a client that sends its header a letter at a time', async () => {
    const { server, port } = await listening((_request, response) => response.end('answered'))
    const slow = client(port)
    await once(slow.socket, 'connect')
    slow.socket.write('GET / HT')
    await wait(100)
    await finishRequests(server, 200)
    await slow.closed
    expect(slow.read()).not.toContain('answered')
  })

  it('is done as soon as the last answer is out, also on a connection that would be kept open', async () => {
    const { server, port } = await listening((_request, response) => {
      setTimeout(() => response.end('answered'), 300)
      response.writeHead(200, { 'Content-Length': 8 })
      response.flushHeaders()
    })
    const kept = client(port)
    kept.socket.write('GET / HTTP/1.1\r\nHost: localhost\r\n\r\n')
    await once(server, 'request')
    expect(await finishRequests(server, 60_000)).toBe(true)
    await kept.closed
    expect(kept.read()).toMatch(/answered$/)
  })
})
