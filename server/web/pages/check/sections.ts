import { boxOf } from '../../../facts/boxes.js'
import type { Link } from '../../../facts/fact.js'

/** The things whose facts have a place of their own on the page, in the order of the chain. */
export const sectionNames = ['site', 'converter', 'cord', 'supply', 'device'] as const

export type SectionName = (typeof sectionNames)[number]

/** The section that an address asks for; null for none that there is. */
export const sectionNamed = (name: unknown): SectionName | null =>
  sectionNames.find((section) => section === name) ?? null

const byLink: Readonly<Record<Link, SectionName>> = {
  source: 'site',
  socket: 'site',
  adapter: 'cord',
  converter: 'converter',
  cord: 'cord',
  inlet: 'supply',
  fuse: 'supply',
  supply: 'supply',
  lead: 'supply',
  plug: 'supply',
  jack: 'device',
  machine: 'device',
}

/** Where the facts of a link stand. */
export const sectionAt = (link: Link): SectionName => byLink[link]

/** The section of a box, by its name; null where it has none. */
export const sectionOf = (box: string): SectionName | null => sectionNamed(boxOf(box)?.key.split('.')[0])

/** The address of the same check with the facts of one thing laid open. */
export const factsAddress = (query: string, section: SectionName): string =>
  `/?${query === '' ? '' : `${query}&`}at=${section}#facts`
