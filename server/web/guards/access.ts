import { createHmac, randomBytes, scrypt, timingSafeEqual } from 'node:crypto'
import { promisify } from 'node:util'
import type { Request, RequestHandler, Response } from 'express'
import type { Context } from '../context.js'
import { madeOnce } from '../parts/madeOnce.js'
import { requestId } from '../requestLog.js'
import { refuseTooMany } from './rateLimits.js'
import { newSession, sessionHolds, sessionS } from './session.js'
import { clientKey, WindowCount } from './windowCount.js'

const cookieName = 'lampline-access'

/** Wrong tries of one client in a quarter of an hour, and of all clients together in an hour. */
export const mostTries = 10
export const mostTriesOfAll = 100
const triesMs = 15 * 60_000
const triesOfAllMs = 60 * 60_000

/** Clients remembered as having given the right passphrase. */
const mostTrusted = 1000

/** scrypt with 32 MB and three passes, about a third of a second (RFC 7914; OWASP Password Storage Cheat Sheet). */
const cost = { N: 2 ** 15, r: 8, p: 3, maxmem: 64 * 1024 * 1024 }

const stretch = promisify<string, Buffer, number, typeof cost, Buffer>(scrypt)

export interface Access {
  /** false where no passphrase is set, and everybody who reaches the server is let in */
  asks: boolean
  /** whether a request carries the passphrase or a session */
  admits(request: Request, response: Response): Promise<boolean>
  /** whether the request carries a session */
  remembers(request: Request): Promise<boolean>
  /** whether this is the passphrase; a wrong one counts, and after too many none is looked at for a while */
  matches(request: Request, response: Response, given: string): boolean
  /** the header that makes a browser remembered */
  remember(request: Request): Promise<string>
}

/** The header that makes a browser forget. */
export const forget = `${cookieName}=; Path=/; Max-Age=0; HttpOnly; SameSite=Lax`

const cookieOf = (header: string | undefined): string | undefined =>
  header
    ?.split(';')
    .map((pair) => pair.trim().split('='))
    .find(([name]) => name === cookieName)?.[1]

/**
 * Who is let in. The key of the sessions is made from the passphrase once, slowly, so that neither a session nor a copy
 * of the salt leads back to the passphrase, and a new passphrase ends all sessions. A try is only compared, in constant
 * time: stretching each would let anybody keep the processor busy, and it is the count of tries that stops guessing.
 */
export function passphraseAccess({ config, now, salt, elapsed, logger }: Context & { elapsed: () => number }): Access {
  const { passphrase } = config
  if (passphrase === undefined)
    return {
      asks: false,
      admits: async () => true,
      remembers: async () => false,
      matches: () => true,
      remember: async () => forget,
    }
  const salted = salt ?? randomBytes(32)
  // too little memory at this moment is no reason to refuse everybody from then on
  const key = madeOnce(() => stretch(passphrase, salted, 32, cost))

  const comparing = randomBytes(32)
  const digest = (text: string): Buffer => createHmac('sha256', comparing).update(text).digest()
  const wanted = digest(passphrase)

  const tries = new WindowCount(triesMs, elapsed)
  const triesOfAll = new WindowCount(triesOfAllMs, elapsed)
  const trusted = new Set<string>()

  const matches: Access['matches'] = (request, response, given) => {
    const client = clientKey(request.ip)
    const tooMany = 'The passphrase was wrong too often.'
    if (tries.count(client) >= mostTries) refuseTooMany(response, tries.leftMs(client), tooMany)
    if (triesOfAll.count('all') >= mostTriesOfAll && !trusted.has(client))
      refuseTooMany(response, triesOfAll.leftMs('all'), tooMany)
    if (timingSafeEqual(digest(given), wanted)) {
      if (trusted.size < mostTrusted) trusted.add(client)
      return true
    }
    tries.add(client)
    triesOfAll.add('all')
    logger.warn({ id: requestId(response), client }, 'a wrong passphrase')
    return false
  }
  const remembers: Access['remembers'] = async (request) => {
    const session = cookieOf(request.headers.cookie)
    return session !== undefined && sessionHolds(await key(), session, now() / 1000)
  }
  return {
    asks: true,
    matches,
    remembers,
    async admits(request, response) {
      if (await remembers(request)) return true
      const bearer = request.headers.authorization?.match(/^Bearer (.+)$/)?.[1]
      return bearer !== undefined && matches(request, response, bearer)
    },
    async remember({ secure }) {
      const session = newSession(await key(), now() / 1000)
      // Lax: a link to a page here works from anywhere, and no other site can send a change along with it
      return `${cookieName}=${session}; Path=/; Max-Age=${sessionS}; HttpOnly; SameSite=Lax${secure ? '; Secure' : ''}`
    },
  }
}

const openPaths = new Set(['/healthz', '/readyz', '/enter'])

/** The page to go to after /enter: the one asked for; of a form that was sent, the page it stands on. */
function pageOf(request: Request): string {
  if (request.method === 'GET' || request.method === 'HEAD') return request.originalUrl
  const from = request.get('Referer') ?? ''
  const { host, pathname, search } = URL.canParse(from) ? new URL(from) : { host: '', pathname: '/', search: '' }
  return host === request.get('Host') ? pathname + search : '/'
}

/**
 * With a passphrase set, lets nobody further who has not given it: browsers by the cookie of the page /enter,
 * scripts by the header `Authorization: Bearer …`.
 */
export function requirePassphrase(access: Access): RequestHandler {
  if (!access.asks) return (_request, _response, next) => next()
  return async (request, response, next) => {
    // a proxy in front must not hand one person's page to another
    response.set('Cache-Control', 'private, no-cache')
    if (openPaths.has(request.path) || (await access.admits(request, response))) {
      next()
      return
    }
    if (request.path.startsWith('/api/')) {
      response
        .status(401)
        .set('WWW-Authenticate', 'Bearer')
        .json({ error: { message: 'This server asks for its passphrase: send it as "Authorization: Bearer …".' } })
      return
    }
    response.redirect(303, `/enter?to=${encodeURIComponent(pageOf(request))}`)
  }
}
