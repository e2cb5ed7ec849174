import type { TopicName } from '../finding.js'

/** What kills or destroys at once, first; then what the person came to ask; the rest is of one rank. */
const first: readonly TopicName[] = [
  'mains-voltage',
  'isolation',
  'output-kind',
  'output-voltage',
  'polarity',
  'earthing',
  'output-current',
  'socket',
  'inlet',
  'dc-plug',
]

/** The rank of the topic among some at which most is at stake; 0 is the first. */
export const stakes = (among: readonly TopicName[]): number =>
  Math.min(...among.map((topic) => (first.includes(topic) ? first.indexOf(topic) : first.length)))
