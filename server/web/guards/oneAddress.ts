import type { RequestHandler } from 'express'
import { hostName } from './knownHost.js'

const loopbackV4 = /^(?:::ffff:)?127(\.\d{1,3}){3}$/

/**
 * Browsers keep what waits for the server under the address it was typed at, and take `localhost` and 127.0.0.1 for two. A page asked
 * for under the name says the number, which static/keep.js goes to unless something waits under the name. Said only where the
 * connection itself came in at the IPv4 loopback, so that the number is known to lead here.
 */
export const oneAddress: RequestHandler = (request, response, next) => {
  const name = hostName(request.headers.host)
  const isHere = loopbackV4.test(request.socket.localAddress ?? '')
  if (name === 'localhost' && isHere && !request.secure)
    response.locals.oneAddress = `http://127.0.0.1${/:\d+$/.exec(request.headers.host ?? '')?.[0] ?? ''}`
  next()
}
