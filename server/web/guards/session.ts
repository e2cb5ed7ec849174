import { createHmac, timingSafeEqual } from 'node:crypto'

/** How long a browser is remembered [s]: 30 days. */
export const sessionS = 30 * 24 * 3600

/** A clock that was set back a little must not send everybody to the page that asks [s]. */
const clockToleranceS = 24 * 3600

const signature = (key: Buffer, issuedS: number, expiresS: number): Buffer =>
  createHmac('sha256', key).update(`lampline session 1 ${issuedS} ${expiresS}`).digest()

/** What a remembered browser carries: when it was let in, until when, and the proof that this was written here. */
export const newSession = (key: Buffer, nowS: number): string => {
  const [issuedS, expiresS] = [Math.floor(nowS), Math.floor(nowS) + sessionS]
  return `${issuedS}.${expiresS}.${signature(key, issuedS, expiresS).toString('base64url')}`
}

/** Whether a session was written with this key and is still good; the proof is compared in constant time. */
export function sessionHolds(key: Buffer, session: string, nowS: number): boolean {
  const [, issued, expires, proof = ''] = /^(\d{1,12})\.(\d{1,12})\.([\w-]{43})$/.exec(session) ?? []
  const [issuedS, expiresS] = [Number(issued), Number(expires)]
  const given = Buffer.from(proof, 'base64url')
  const wanted = signature(key, issuedS, expiresS)
  if (given.length !== wanted.length || !timingSafeEqual(given, wanted)) return false
  return nowS < expiresS && nowS > issuedS - clockToleranceS
}
