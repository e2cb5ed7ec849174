import type { Sourced } from './sourced.js'

export interface FitRow extends Sourced {
  /** names of plugTypes.ts */
  readonly plugs: readonly string[]
  /** IEC letters of the socket */
  readonly letters: readonly string[]
  /** which sockets of that letter */
  readonly socket: string
  /** ISO 3166-1 alpha-2 where the row holds for these countries' sockets only */
  readonly countries?: readonly string[]
  /** 'rare': an old or special socket that does not decide for the letter */
  readonly commonness: 'usual' | 'rare'
  readonly fits: 'yes' | 'forced' | 'no'
  readonly earth: 'made' | 'lost' | 'not applicable' | 'depends'
  readonly note: string
}

export const plugFits: readonly FitRow[] = []
