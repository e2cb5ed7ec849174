import { createHmac, timingSafeEqual } from 'node:crypto'
import type { Request, RequestHandler } from 'express'
import type { Config } from '../config.js'

const cookieName = 'lampline-access'
const monthS = 30 * 24 * 3600

/** The cookie's value: proves that the passphrase was known without carrying it. */
const token = (passphrase: string): string =>
  createHmac('sha256', passphrase).update('lampline access, first form').digest('base64url')

/** Compares in constant time, whatever the lengths. */
export function sameSecret(given: string, wanted: string): boolean {
  const digest = (text: string): Buffer => createHmac('sha256', 'compare').update(text).digest()
  return timingSafeEqual(digest(given), digest(wanted))
}

const cookieOf = (header: string | undefined): string | undefined =>
  header
    ?.split(';')
    .map((pair) => pair.trim().split('='))
    .find(([name]) => name === cookieName)?.[1]

export const accessCookie = (passphrase: string): string =>
  `${cookieName}=${token(passphrase)}; Path=/; Max-Age=${monthS}; HttpOnly; SameSite=Lax`

/** Pages and files that can be had without the passphrase: they hold nothing that is kept. */
const open = (path: string): boolean => path === '/healthz' || path === '/enter' || path.startsWith('/static/')

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
export function requirePassphrase({ passphrase }: Config): RequestHandler {
  if (passphrase === undefined) return (_request, _response, next) => next()
  const wanted = token(passphrase)
  return (request, response, next) => {
    const bearer = request.headers.authorization?.match(/^Bearer (.+)$/)?.[1]
    const cookie = cookieOf(request.headers.cookie)
    if (open(request.path) || (bearer && sameSecret(bearer, passphrase)) || (cookie && sameSecret(cookie, wanted))) {
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
