import type { networkInterfaces } from 'node:os'
import { isLoopback } from '../../config.js'

type Interfaces = ReturnType<typeof networkInterfaces>

/** 192.168/16, 10/8 and 172.16/12: what a workshop's own network gives its machines (RFC 1918). */
const privateAddress = /^(192\.168\.|10\.|172\.(1[6-9]|2\d|3[01])\.)/

/** This machine's address on the network it stands in, IPv4; null where it has none. */
export function lanAddress(interfaces: Interfaces): string | null {
  const found = Object.values(interfaces)
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal, address }) => family === 'IPv4' && !internal && !address.startsWith('169.254.'))
    .map(({ address }) => address)
  return found.find((address) => privateAddress.test(address)) ?? found[0] ?? null
}

interface Asked {
  /** the address the server listens on */
  listensOn: string
  protocol: string
  /** the Host header: what the browser that asks reached this server under */
  host: string | undefined
  /** this machine's address on its network */
  lan: string | null
  path: string
}

/**
 * The address under which a phone on the same network opens a page of this server: the host the browser used, unless
 * only this machine itself knows it by that name; then the machine's own address.
 *
 * @returns null where the server listens on loopback only, and where no address is known
 */
export function phoneAddress({ listensOn, protocol, host, lan, path }: Asked): string | null {
  if (isLoopback(listensOn)) return null
  const parts = /^(\[[\da-f:.]+\]|[\w.-]+)(:\d{1,5})?$/i.exec(host ?? '')
  if (!parts) return null
  const [, name = '', port = ''] = parts
  const reached = isLoopback(name.replace(/^\[|\]$/g, '').toLowerCase()) ? lan : name
  return reached === null ? null : `${protocol}://${reached}${port}${path}`
}
