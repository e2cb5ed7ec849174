import type { Arrangement } from '../../facts/check.js'
import { isPlugIn } from '../protectionClass.js'
import type { CheckRequest } from './request.js'

export type { Arrangement }

/** What there is: as stated; where it is not, a separate supply, or a block by the pins on it. */
export const arrangementOf = ({ arrangement, supply }: Pick<CheckRequest, 'arrangement' | 'supply'>): Arrangement =>
  arrangement == null || arrangement === 'separate'
    ? isPlugIn(supply.inlet?.trim() ?? null)
      ? 'plug-in'
      : 'separate'
    : arrangement
