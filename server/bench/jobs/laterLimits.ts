import { linkAt, powerAt } from '../../plan/keptPlan.js'
import { plugPinLimit } from '../../tables/capacitors.js'
import type { Job, ReadingLimits } from './job.js'

/** What steps are held against that were kept before it stood as data: the forms of their keys. */
const later: readonly (readonly [RegExp, (key: string) => Partial<ReadingLimits>])[] = [
  [
    /^(look\.discharge|(bench-supply|together)\.off)$/,
    () => ({ low: -plugPinLimit.limitV, high: plugPinLimit.limitV, strict: true, stopIf: 'it does not fall' }),
  ],
  [/^bench-supply\.step-\d+$/, () => ({ strict: true })],
  [/^(supply-alone|together)\.hold$/, (key) => ({ notAbove: key.replace('hold', 'lamp-volts') })],
  [/^(together|full)\.drawn/, () => ({ stopIf: 'it is more, or climbs' })],
]

const isOpen = ({ low, high }: ReadingLimits): boolean => low === null && high === null

function broughtUp(row: ReadingLimits): ReadingLimits {
  const { key, unit } = row
  if (row.sent) return row
  const power = row.power ?? powerAt(key)
  const held = { link: row.link ?? linkAt(key), ...(power !== undefined && { power }) }
  const added = row.power === undefined ? later.find(([keys]) => keys.test(key))?.[1](key) : undefined
  if (!added || unit === null || (added.low !== undefined && !isOpen(row))) return { ...row, ...held }
  return { ...row, ...added, stopIf: row.stopIf ?? added.stopIf ?? null, ...held }
}

/** The limits of a job's steps, of a job of any version of the program. */
export const limitsOfJob = ({ limits }: Pick<Job, 'limits'>): ReadingLimits[] => limits.map(broughtUp)

/** The limits a reading is held against; null where the plan has no such step. */
export function limitsFor({ limits }: Pick<Job, 'limits'>, key: string): ReadingLimits | null {
  const row = limits.find((one) => one.key === key)
  return row ? broughtUp(row) : null
}

/** What a step is called in a sentence: its words; its key where the plan has no such step. */
export const stepName = (job: Pick<Job, 'limits'>, key: string): string =>
  limitsFor(job, key)?.text.replace(/\.$/, '') ?? key
