import type { Request, Response } from 'express'
import { mainsOf } from '../../../tables/mains.js'

const cookieName = 'lampline-place'
const yearS = 365 * 24 * 3600

/** The country of the last check of this browser, by its code; null where none is remembered. */
export function lastPlace(request: Request): string | null {
  const found = new RegExp(`(?:^|; )${cookieName}=([A-Z]{2})(?:;|$)`).exec(request.headers.cookie ?? '')?.[1]
  return found !== undefined && mainsOf(found) ? found : null
}

/** Remembers where things are used, so that it is not asked for again. */
export function rememberPlace(response: Response, country: string): void {
  response.append(
    'Set-Cookie',
    `${cookieName}=${country.toUpperCase()}; Path=/; Max-Age=${yearS}; HttpOnly; SameSite=Lax`,
  )
}
