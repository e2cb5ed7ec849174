import { randomUUID } from 'node:crypto'
import type { Request, RequestHandler, Response } from 'express'
import type { Logger } from 'pino'

const plainId = /^[\w.-]{1,64}$/

/** The name of a request in the log; given to it by {@link requestLog}. */
export const requestId = (response: Response): string => String(response.locals.requestId)

/** The path alone: what was typed stands in the query. */
export const pathOf = (request: Request): string => request.originalUrl.split('?', 1)[0] ?? ''

/**
 * Names each request, in the header X-Request-Id of its answer as well, and writes one line about it at level info when
 * it is over: method, path, status, time taken. Nothing else of a request is ever written: no query, no body, no header.
 * A name that was sent along is kept where it is of 1 to 64 letters, figures and . _ -
 */
export function requestLog(logger: Logger): RequestHandler {
  return (request, response, next) => {
    const sent = request.get('X-Request-Id') ?? ''
    const id = plainId.test(sent) ? sent : randomUUID().slice(-12)
    response.locals.requestId = id
    response.set('X-Request-Id', id)
    if (logger.isLevelEnabled('info')) {
      const began = performance.now()
      response.on('close', () => {
        const line = { id, method: request.method, path: pathOf(request), status: response.statusCode }
        const ms = Math.round((performance.now() - began) * 10) / 10
        logger.info(response.writableFinished ? { ...line, ms } : { ...line, ms, cutOff: true }, 'request')
      })
    }
    next()
  }
}
