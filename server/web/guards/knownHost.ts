import { isIP } from 'node:net'
import type { RequestHandler } from 'express'
import { type Config, isLoopback } from '../../config.js'

/** Asked for under a name this server does not go by: status 421. */
export class UnknownHost extends Error {
  readonly status = 421
  constructor(name: string | null) {
    super(
      name === null
        ? 'The request does not say for which host it is, so it was not answered. Send a Host header.'
        : `This server does not answer under the name ${name}. If it is meant to, start it with ALLOWED_HOSTS=${name} (several names with commas between).`,
    )
  }
}

/** The name in a Host header in small letters, without port and brackets; null where it is none. */
export function hostName(header: string | undefined): string | null {
  const [, name] = /^(\[[\da-f:.]+\]|[\w.-]+)(?::\d{1,5})?$/i.exec(header ?? '') ?? []
  return name === undefined
    ? null
    : name
        .replace(/^\[|\]$/g, '')
        .replace(/\.$/, '')
        .toLowerCase()
}

/**
 * Answers only under a name this server goes by, so that a page of another site cannot read from it by pointing a name
 * of its own at this machine (DNS rebinding). That trick needs a name, never an address: so beyond loopback every
 * address is let in, also one that only the machine around a container knows. The port is left open, for port
 * forwarding.
 */
export function knownHost({ host, allowedHosts }: Pick<Config, 'host' | 'allowedHosts'>): RequestHandler {
  const names = new Set([host.toLowerCase(), ...allowedHosts])
  const known = (name: string): boolean =>
    names.has(name) || isLoopback(name) || (!isLoopback(host) && isIP(name) !== 0)
  return (request, _response, next) => {
    const name = hostName(request.headers.host)
    if (name === null || !known(name)) throw new UnknownHost(name)
    next()
  }
}
