import type { Link } from '../facts/fact.js'

/** The links of the power chain from the wall to the machine, in the order in which they are plugged together: key and name. */
export const chainLinks: Readonly<Record<Link, string>> = {
  source: 'Site mains',
  socket: 'Socket',
  adapter: 'Adapter',
  converter: 'Converter',
  cord: 'Cord',
  inlet: 'Inlet',
  fuse: 'Fuse',
  supply: 'Supply',
  lead: 'Lead',
  plug: 'Plug',
  jack: 'Jack',
  machine: 'Machine',
}

/** The same, keys alone. */
export const linkOrder = Object.keys(chainLinks) as readonly Link[]
