import type { Logger } from 'pino'
import type { Config } from '../config.js'

/** What every route module is given. Nothing in web/ reaches for a singleton. */
export interface Context {
  config: Config
  logger: Logger
  /** the current time [ms since 1970] */
  now: () => number
}
