import type { NextFunction, Request, Response } from 'express'
import { Unprocessable } from '../errors.js'

const refused = new Set(['__proto__', 'constructor', 'prototype'])

/** Names a key that would touch an object's prototype, as a path; null if there is none. Depth is limited to 64. */
function findRefused(value: unknown, path: string, depth: number): string | null {
  if (value === null || typeof value !== 'object') return null
  if (depth > 64) return path
  for (const [key, inner] of Object.entries(value)) {
    const at = path ? `${path}.${key}` : key
    if (refused.has(key)) return at
    const found = findRefused(inner, at, depth + 1)
    if (found !== null) return found
  }
  return null
}

/**
 * Refuses what was sent with keys such as `__proto__`, or nested deeper than 64 levels.
 *
 * @throws Unprocessable with the path of the first
 */
export function refuseKeysIn(sent: unknown): void {
  const path = findRefused(sent, '', 0)
  if (path === null) return
  const last = path.split('.').pop() ?? path
  throw new Unprocessable([
    {
      path,
      message: refused.has(last)
        ? `The field name "${last}" is not accepted; use only the field names of the documented request.`
        : 'The request is nested more than 64 levels deep; the documented requests need fewer than 10.',
    },
  ])
}

/** The same of the body of a request. */
export function refusePrototypeKeys(request: Request, _response: Response, next: NextFunction): void {
  refuseKeysIn(request.body)
  next()
}
