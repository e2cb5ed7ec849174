import type { Case } from '../chain/case/case.js'
import type { KindSeen } from '../tables/whatWasSeen.js'

/** Whether a row is about a case: what is not known may be so. */
export type Applies = 'yes' | 'maybe' | 'no'

const yesNo = (is: boolean): Applies => (is ? 'yes' : 'no')
const known = (is: boolean | null): Applies => (is === null ? 'maybe' : yesNo(is))

const means: Readonly<Record<KindSeen, (of: Case) => Applies>> = {
  any: () => 'yes',
  'switch-mode': ({ supply: { technology } }) => known(technology && technology === 'switch-mode'),
  transformer: ({ supply: { technology } }) => known(technology && technology === 'transformer'),
  'ac-output': ({ supply: { technology, rails } }) => {
    if (technology === 'switch-mode' || (rails.length > 0 && rails.every(({ kind }) => kind === 'dc'))) return 'no'
    return rails.some(({ kind }) => kind === 'ac') ? 'yes' : 'maybe'
  },
  'constant-voltage': ({ supply: { technology } }) => (technology === 'switch-mode' ? 'no' : 'maybe'),
  charging: ({ device: { facts } }) => {
    const { battery } = facts
    if (battery == null || battery === 'unknown') return 'maybe'
    return yesNo(battery !== 'none' && battery !== 'primary')
  },
  adapter: ({ arrangement }) => yesNo(arrangement !== 'built-in'),
  machine: ({ arrangement }) => yesNo(arrangement !== 'supply-only'),
  'class-i': ({ supply: { protectionClass } }) => known(protectionClass && protectionClass === 'I'),
  'class-ii': ({ supply: { protectionClass } }) => known(protectionClass && protectionClass === 'II'),
  'picture-tube': ({ device }) => known(device.facts.mains?.pictureTube ?? null),
}

/** Whether rows of these kinds are about this case: as well as the best of them. */
export function applies(kinds: readonly KindSeen[], of: Case): Applies {
  const all = kinds.map((kind) => means[kind](of))
  return all.includes('yes') ? 'yes' : all.includes('maybe') ? 'maybe' : 'no'
}
