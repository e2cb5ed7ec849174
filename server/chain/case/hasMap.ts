import type { PairSituation } from './situation.js'

/** Whether the contacts of either side were told one by one: their topic then stands in place of the barrel plug's. */
export const hasMap = ({ supply, device }: PairSituation): boolean =>
  (supply.facts.pins?.length ?? 0) + (device.facts.pins?.length ?? 0) > 0
