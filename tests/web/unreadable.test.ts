import { createServer } from 'node:http'
import { type AddressInfo, connect } from 'node:net'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { answerUnreadable, longestHeader } from '../../server/web/unreadable.js'

describe('what cannot be read as a request', () => {
  const server = createServer({ maxHeaderSize: longestHeader }, (_request, response) => response.end('read'))
  server.on('clientError', answerUnreadable)
  beforeAll(() => new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve)))
  afterAll(() => new Promise((resolve) => server.close(resolve)))

  const send = (text: string): Promise<string> =>
    new Promise((resolve, reject) => {
      const socket = connect((server.address() as AddressInfo).port, '127.0.0.1')
      let answer = ''
      socket.setEncoding('utf8')
      socket.on('data', (part) => {
        answer += part
      })
      socket.on('end', () => resolve(answer))
      socket.on('error', (error) => (answer ? resolve(answer) : reject(error)))
      socket.write(text)
    })

  it('gets plain words when the address is too long', async () => {
    const answer = await send(`GET /?supply=${'x'.repeat(longestHeader + 1000)} HTTP/1.1\r\nHost: localhost\r\n\r\n`)
    expect(answer).toMatch(/^HTTP\/1\.1 431 /)
    expect(answer).toContain('The address is longer than the 128 kB accepted here.')
  })

  it('gets a bad request when it is no request at all', async () => {
    expect(await send('12 V\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 /)
  })

  it('a long check goes through: two plates of 1500 characters of three bytes each, twice', async () => {
    const plate = encodeURIComponent('出'.repeat(1500))
    const address = `/?supply=${plate}&machine=${plate}`
    const answer = await send(
      `GET ${address} HTTP/1.1\r\nHost: localhost\r\nHX-Current-URL: ${address}\r\nConnection: close\r\n\r\n`,
    )
    expect(answer).toMatch(/^HTTP\/1\.1 200 /)
  })
})
