import type { Socket } from 'node:net'

/** Room for the address of a check with two long plates, which htmx sends once more as a header [bytes]. */
export const longestHeader = 131_072

/**
 * Answers what came over the wire but is no request the server can read, before any route sees it: an address that is
 * too long in plain words, anything else as a bad request. For the server's `clientError` event.
 */
export function answerUnreadable(error: Error & { code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy()
    return
  }
  const tooLong = error.code === 'HPE_HEADER_OVERFLOW'
  const status = tooLong ? '431 Request Header Fields Too Large' : '400 Bad Request'
  const body = tooLong
    ? `The address is longer than the ${longestHeader / 1024} kB accepted here. Go back and shorten the words of each plate to 1500 characters.\n`
    : 'This is not a request that can be read here.\n'
  socket.end(
    `HTTP/1.1 ${status}\r\nContent-Type: text/plain; charset=utf-8\r\nContent-Length: ${Buffer.byteLength(body)}\r\nConnection: close\r\n\r\n${body}`,
  )
}
