import { type Agent, request } from 'node:http'
import { connect } from 'node:net'
import { brotliDecompressSync, gunzipSync } from 'node:zlib'
import type { Answer } from './answers.js'

export interface Sent {
  method: string
  path: string
  headers: Record<string, string>
  body?: string | Buffer
}

/** How long a call may take before it is given up [ms]. */
const patienceMs = 30_000

const decoded = (bytes: Buffer, encoding: string | undefined): string => {
  if (bytes.length === 0 || encoding === undefined) return bytes.toString('utf8')
  return (encoding === 'br' ? brotliDecompressSync(bytes) : gunzipSync(bytes)).toString('utf8')
}

/** Sends one request over a connection that stays open, and reads the answer whole. */
export function send(agent: Agent, port: number, { method, path, headers, body }: Sent): Promise<Answer> {
  return new Promise((resolve, reject) => {
    // an address that is sent on may be as long as the one that came
    const options = {
      agent,
      host: '127.0.0.1',
      port,
      method,
      path,
      headers,
      timeout: patienceMs,
      maxHeaderSize: 2 ** 18,
    }
    const call = request(options, (answer) => {
      const parts: Buffer[] = []
      answer.on('data', (part) => parts.push(part))
      answer.on('error', reject)
      answer.on('end', () => {
        try {
          const text = decoded(Buffer.concat(parts), answer.headers['content-encoding'])
          resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text })
        } catch (error) {
          reject(error)
        }
      })
    })
    call.on('timeout', () => call.destroy(new Error(`no answer within ${patienceMs} ms`)))
    call.on('error', reject)
    call.end(body)
  })
}

/** Sends bytes as they are; the answer's status, or 0 where the connection was closed without one. */
export function sendRaw(port: number, bytes: string): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1')
    let text = ''
    const done = (): void => {
      socket.destroy()
      const status = Number(/^HTTP\/1\.1 (\d{3})/.exec(text)?.[1] ?? 0)
      resolve({ status, headers: {}, text })
    }
    socket.setEncoding('utf8')
    socket.setTimeout(patienceMs, () => reject(new Error(`no answer within ${patienceMs} ms to ${bytes.slice(0, 80)}`)))
    socket.on('data', (part) => {
      text += part
    })
    socket.on('end', done)
    socket.on('error', done)
    // half a request waits for its other half: this side has said all it has to say
    socket.end(Buffer.from(bytes, 'latin1'))
  })
}
