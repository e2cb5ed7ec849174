import { createHash, randomUUID } from 'node:crypto'
import type { Request } from 'express'
import { newId } from '../store/openStore.js'
import { Unprocessable } from './errors.js'

const keyForm = /^[\w-]{16,64}$/

const keyOf = (sent: unknown): string | null => (typeof sent === 'string' && keyForm.test(sent) ? sent : null)

/** The once-key that a form brought in its field "once"; null where there is none that can be used. */
export const onceField = ({ body }: Request): string | null => keyOf((body as { once?: unknown } | undefined)?.once)

/** The key for the forms of a page: that which a refused form brought, so that it stays the same form; else a random UUID. */
export const onceForPage = (request: Request): string => onceField(request) ?? randomUUID()

/** The once-key of a call, in its header `Idempotency-Key`; null where there is none. */
export function onceHeader(request: Request): string | null {
  const sent = request.get('Idempotency-Key')
  if (sent === undefined) return null
  const key = keyOf(sent.replace(/^"(.*)"$/, '$1'))
  if (key === null)
    throw new Unprocessable([
      { path: 'Idempotency-Key', message: 'Idempotency-Key must be 16 to 64 letters, figures, _ and -.' },
    ])
  return key
}

/**
 * The id of an entry that is to be kept once however often it is sent: a digest of the once-key and of everything that
 * was sent with it. The same form sent again gives the same id; the same form with something else typed in it, as after
 * going back, is another entry and gives another id.
 *
 * @returns 22 characters; as unguessable as the key, and fresh where there is no key
 */
export function entryId(once: string | null, ...sent: (string | Uint8Array)[]): string {
  if (once === null) return newId()
  const hash = createHash('sha256').update(once)
  // the length before each part keeps "ab", "c" apart from "a", "bc"
  for (const part of sent) hash.update(`\n${part.length} `).update(part)
  return hash.digest('base64url').slice(0, 22)
}

/** The id of what a call adds: the same for the same call sent again with its key, so that it is added once. */
export const newEntry = (request: Request, ...sent: unknown[]): string =>
  entryId(
    onceHeader(request),
    request.path,
    ...sent.map((part) => (part instanceof Uint8Array || typeof part === 'string' ? part : JSON.stringify(part))),
  )
