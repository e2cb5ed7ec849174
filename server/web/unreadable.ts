import type { Socket } from 'node:net'

/** Room for the address of a check with two long plates, which htmx sends once more as a header [bytes]. */
export const longestHeader = 131_072

const answers: Record<string, { status: string; body: string }> = {
  HPE_HEADER_OVERFLOW: {
    status: '431 Request Header Fields Too Large',
    body: `The address is longer than the ${longestHeader / 1024} kB accepted here. Go back and shorten the words of each plate to 1500 characters.\n`,
  },
  ERR_HTTP_REQUEST_TIMEOUT: {
    status: '408 Request Timeout',
    body: 'The request did not arrive whole in the time it may take; nothing was changed. Send it again.\n',
  },
}

const unreadable = { status: '400 Bad Request', body: 'This is not a request that can be read here.\n' }

/** How long a client may take to read why its connection ends [ms]; one that goes on sending does not hold it open. */
const lingerMs = 1000

/**
 * Answers what came over the wire but is no request the server can read, before any route sees it: an address that is
 * too long in plain words, anything else as a bad request, and what did not arrive in time as that. For the server's `clientError` event.
 */
export function answerUnreadable(error: Error & { code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy()
    return
  }
  const { status, body } = answers[error.code ?? ''] ?? unreadable
  socket.end(
    `HTTP/1.1 ${status}\r\nContent-Type: text/plain; charset=utf-8\r\nContent-Length: ${Buffer.byteLength(body)}\r\nConnection: close\r\n\r\n${body}`,
  )
  socket.once('finish', () => setTimeout(() => socket.destroy(), lingerMs).unref())
}
