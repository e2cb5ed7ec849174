import type { NextFunction, Request, Response } from 'express'

const reading = new Set(['GET', 'HEAD', 'OPTIONS'])

/** A request that another site made a browser send: status 403. */
export class CrossSite extends Error {
  readonly status = 403
  constructor() {
    super('This came from a page of another site, so nothing was changed. Open the page here and send it from there.')
  }
}

const hostOf = (origin: string): string | null => (URL.canParse(origin) ? new URL(origin).host : null)

/**
 * Lets a change through only from pages of this server and from programs that are no browsers. Browsers say where a
 * request comes from in `Sec-Fetch-Site`, on a plain http address beyond loopback in `Origin`, very old ones in
 * `Referer`; a program sends none of them. Forms with files count as well: it stands before every parser of bodies.
 */
export function sameOrigin(request: Request, _response: Response, next: NextFunction): void {
  if (reading.has(request.method)) {
    next()
    return
  }
  const site = request.get('Sec-Fetch-Site')
  const origin = request.get('Origin') ?? request.get('Referer')
  const own =
    site !== undefined
      ? site === 'same-origin' || site === 'none'
      : origin === undefined || hostOf(origin) === request.get('Host')
  if (!own) throw new CrossSite()
  next()
}
