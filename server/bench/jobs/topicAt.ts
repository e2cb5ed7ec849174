import type { TopicName } from '../../chain/finding.js'
import type { Link } from '../../facts/fact.js'

/** What a step without a number tells about. */
const seenAt: Readonly<Record<Link, TopicName>> = {
  source: 'mains-voltage',
  socket: 'socket',
  adapter: 'socket',
  converter: 'converter',
  cord: 'cord',
  inlet: 'inlet',
  fuse: 'fuse',
  supply: 'output-voltage',
  lead: 'lead-drop',
  plug: 'polarity',
  jack: 'polarity',
  machine: 'output-current',
}

const onTheMains: readonly Link[] = ['source', 'socket', 'adapter', 'converter', 'cord', 'inlet', 'fuse']
const earthed: readonly Link[] = ['source', 'socket', 'adapter', 'cord']
const insulated: readonly Link[] = ['converter', 'inlet', 'fuse', 'supply']

/**
 * The topic that an entry of the bench tells about: by where in the power chain its step is, and by what it measures.
 *
 * @param link  of its step; undefined where the plan has no such step
 * @param unit  of the reading, without a prefix or with one: "V", "mA", "kΩ"; null where nothing is read
 */
export function topicAt(link: Link | undefined, unit: string | null): TopicName {
  const isOneOf = (links: readonly Link[]): boolean => link !== undefined && links.includes(link)
  if (unit === null) return link === undefined ? 'output-current' : seenAt[link]
  if (unit === 'mm') return 'dc-plug'
  if (unit.endsWith('Ω')) return isOneOf(earthed) ? 'earthing' : isOneOf(insulated) ? 'isolation' : 'output-current'
  if (unit.endsWith('V')) return isOneOf(onTheMains) ? 'mains-voltage' : 'output-voltage'
  return 'output-current'
}
