import type { Logger } from 'pino'
import type { Config } from '../config.js'
import type { Store } from '../store/store.js'

/** What every route module is given. Nothing in web/ reaches for a singleton. */
export interface Context {
  config: Config
  logger: Logger
  /** where records are kept */
  store: Store
  /** the current time [ms since 1970] */
  now: () => number
  /** this machine's address on the network it stands in; null where it has none */
  lan: () => string | null
  /** what the key of the sessions is salted with; without one, browsers are forgotten when the process ends */
  salt?: Buffer
  /** time that only goes forward [ms], for limits; the process's own unless given */
  elapsed?: () => number
  /** whether the process is about to stop */
  stopping?: () => boolean
}
