import type { Request, RequestHandler, Response } from 'express'
import { type Config, isLoopback } from '../../config.js'
import { clientKey, WindowCount } from './windowCount.js'

/** Too much from one client: status 429. The header Retry-After says when to go on. */
export class TooMany extends Error {
  readonly status = 429
}

/** Refuses with words and the header Retry-After. */
export function refuseTooMany(response: Response, leftMs: number, what: string): never {
  const seconds = Math.max(1, Math.ceil(leftMs / 1000))
  response.set('Retry-After', String(seconds))
  const wait = seconds > 120 ? `${Math.ceil(seconds / 60)} minutes` : seconds === 1 ? 'a second' : `${seconds} seconds`
  throw new TooMany(`${what} Wait ${wait}, then send it again.`)
}

const minuteMs = 60_000

/**
 * What one client may ask for in a minute: far more than a person with several pages open, far less than a flood. Of
 * these heavy ones are what the server computes or decodes for longer than a page: plans, courses over time, matrices,
 * files.
 */
export const mostInAMinute = { requests: 1200, heavy: 240 }

const heavyReads =
  /^\/(first-power|checklist|shelf\/matrix|api\/shelf\/(matrix|[^/]+\/[^/]+\/(matches|wanted))|api\/export)$/i
const heavyWrites =
  /^\/(records(\/apply)?|.+\/photos|.+\/rejudge|api\/(first-power|series-lamp\/transient|inrush|import|shelf\.csv))$/i

export const isHeavy = ({ method, path }: Pick<Request, 'method' | 'path'>): boolean =>
  (method === 'GET' || method === 'HEAD' ? heavyReads : heavyWrites).test(path.replace(/\/$/, ''))

/**
 * Limits on how much one client of a network may ask for. Where only this machine itself reaches the server there are
 * none: who can flood it from here can as well stop it.
 *
 * @param elapsed  time that only goes forward [ms]
 */
export function rateLimits(
  { host }: Pick<Config, 'host'>,
  elapsed: () => number,
  most = mostInAMinute,
): RequestHandler {
  if (isLoopback(host)) return (_request, _response, next) => next()
  const all = new WindowCount(minuteMs, elapsed)
  const heavy = new WindowCount(minuteMs, elapsed)
  return (request, response, next) => {
    const key = clientKey(request.ip)
    if (all.add(key) > most.requests)
      refuseTooMany(response, all.leftMs(key), 'Too many requests came from this address.')
    if (isHeavy(request) && heavy.add(key) > most.heavy)
      refuseTooMany(
        response,
        heavy.leftMs(key),
        'Too many long calculations or files were asked for from this address.',
      )
    next()
  }
}
