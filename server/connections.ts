import type { Server } from 'node:http'

/** How long a connection may take for what it does [ms]; given to `createServer`. */
export const connectionTimes = {
  /** from the first byte of a request to the end of its headers: a browser sends them in one piece */
  headersTimeout: 10_000,
  /** for a whole request: 64 MB, the largest file that is brought in, at 2 Mbit/s */
  requestTimeout: 300_000,
  /** open without a request: long enough for the next click, and dropped before a phone changes its network */
  keepAliveTimeout: 20_000,
  /** how often the times above are looked at; Node's own 30 s would let a client hold on four times as long */
  connectionsCheckingInterval: 2_000,
} as const

/** Without a byte in either direction: a client that went away, or one that asks and never reads the answer [ms]. */
const silentMs = 60_000

/**
 * More than a workshop opens, and a bound on what connections can hold: a thousand take some 30 MB. Those beyond it are
 * closed at once instead of waiting for an answer that cannot come.
 */
const mostConnections = 1000

/** What a server lets its clients hold, whatever they send or leave out. */
export function limitConnections(server: Server, { silent = silentMs, most = mostConnections } = {}): void {
  server.timeout = silent
  server.maxConnections = most
}
