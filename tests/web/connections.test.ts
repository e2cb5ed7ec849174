import { createServer, type Server } from 'node:http'
import { type AddressInfo, connect, type Socket } from 'node:net'
import { afterEach, expect, it } from 'vitest'
import { connectionTimes, limitConnections } from '../../server/connections.js'

const opened: (Server | Socket)[] = []

afterEach(() => {
  for (const one of opened.splice(0)) {
    if ('destroy' in one) one.destroy()
    else {
      one.closeAllConnections()
      one.close()
    }
  }
})

/** A server with the same kinds of limits, short enough to wait for. */
async function listening(times: Partial<typeof connectionTimes>, limits: { silent?: number; most?: number }) {
  const short = { ...connectionTimes, connectionsCheckingInterval: 20, ...times } as typeof connectionTimes
  const server = createServer(short, (request, response) => {
    request.resume()
    if (request.url === '/large') response.end(Buffer.alloc(64 * 2 ** 20))
    else request.on('end', () => response.end('read'))
  })
  limitConnections(server, limits)
  opened.push(server)
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return (server.address() as AddressInfo).port
}

/** Opens a connection; `ended` tells how long it was held and what came. */
function client(port: number) {
  const socket = connect(port, '127.0.0.1')
  opened.push(socket)
  let came = ''
  socket.on('data', (part) => {
    came += part
  })
  socket.on('error', () => undefined)
  const began = performance.now()
  const ended = new Promise<{ ms: number; came: string }>((resolve) =>
    socket.on('close', () => resolve({ ms: performance.now() - began, came })),
  )
  return { socket, ended }
}

it('ends a request whose headers come byte by byte', async () => {
  const port = await listening({ headersTimeout: 200 as never }, {})
  const { socket, ended } = client(port)
  const dribble = setInterval(() => socket.write('x'), 20)
  socket.write('GET / HTTP/1.1\r\nX: ')
  const { ms, came } = await ended
  clearInterval(dribble)
  expect(came).toMatch(/^HTTP\/1\.1 408 /)
  expect(ms).toBeGreaterThan(150)
})

it('ends a request whose body comes byte by byte', async () => {
  const port = await listening({ headersTimeout: 200 as never, requestTimeout: 400 as never }, {})
  const { socket, ended } = client(port)
  socket.write('POST / HTTP/1.1\r\nHost: x\r\nContent-Length: 100000\r\n\r\n')
  const dribble = setInterval(() => socket.write('x'), 20)
  const { ms, came } = await ended
  clearInterval(dribble)
  expect(came).toMatch(/^HTTP\/1\.1 408 /)
  expect(ms).toBeGreaterThan(350)
})

it('drops a client that asks and never reads the answer', async () => {
  const port = await listening({}, { silent: 200 })
  const { socket, ended } = client(port)
  socket.pause()
  socket.write('GET /large HTTP/1.1\r\nHost: x\r\n\r\n')
  // what lies in between was read by nobody: the connection's end is seen once reading begins
  await new Promise((resolve) => setTimeout(resolve, 1500))
  socket.resume()
  const { came } = await ended
  expect(came.length).toBeLessThan(64 * 2 ** 20)
})

it('closes connections beyond the most at once, and goes on with those it has', async () => {
  const port = await listening({}, { most: 2 })
  const first = client(port)
  const second = client(port)
  await Promise.all([first, second].map(({ socket }) => new Promise((resolve) => socket.once('connect', resolve))))
  expect((await client(port).ended).came).toBe('')
  first.socket.write('GET / HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n')
  expect((await first.ended).came).toMatch(/^HTTP\/1\.1 200 /)
})
