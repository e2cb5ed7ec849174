import type { PairSituation } from './case/situation.js'

/** Whether a dc rail is, or may be, what joins the two: false only where all that is known of the machine, else of the supply, is ac. */
export function dcInvolved({ supply, device }: PairSituation): boolean {
  const rails = device.rails.some(({ kind }) => kind !== null) ? device.rails : supply.rails
  return rails.length === 0 || rails.some(({ kind }) => kind !== 'ac')
}
