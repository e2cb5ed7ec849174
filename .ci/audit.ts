import { execFile } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

/** A known weakness that may stay for a while: which, why, and the day it must be looked at again. */
export interface Allowed {
  /** as in the address of the advisory: "GHSA-…" */
  advisory: string
  reason: string
  /** the last day on which this holds, "2026-01-31" */
  until: string
}

interface Via {
  url?: string
  title?: string
  severity?: string
}
interface Report {
  message?: string
  vulnerabilities?: Record<string, { via: (Via | string)[] }>
}

const refused = new Set(['high', 'critical'])

export interface Verdict {
  passes: boolean
  lines: string[]
}

/**
 * What the report of `npm audit --json` means for this project: a weakness of level high or critical fails unless it is
 * in the list and its day has not passed; an entry that names nothing any more fails as well. A report that could not be
 * made, because the registry was not reached or does not answer this question, passes and says so.
 *
 * @param today  "2026-01-31"
 */
export function auditVerdict(text: string, allowed: Allowed[], today: string): Verdict {
  let report: Report
  try {
    report = JSON.parse(text)
  } catch {
    report = { message: 'no report' }
  }
  if (report.vulnerabilities === undefined)
    return { passes: true, lines: [`audit: NOT DONE, the registry could not be asked: ${report.message ?? 'no report'}`] }
  const found = new Map<string, string>()
  for (const [name, { via }] of Object.entries(report.vulnerabilities))
    for (const one of via) {
      if (typeof one === 'string' || !refused.has(one.severity ?? '')) continue
      const advisory = one.url?.split('/').pop() ?? `${name}: ${one.title}`
      found.set(advisory, `${name}: ${one.title} (${one.severity}, ${advisory})`)
    }
  const lines = [...found].flatMap(([advisory, words]) => {
    const entry = allowed.find((one) => one.advisory === advisory)
    if (entry === undefined) return [`audit: ${words}`]
    return entry.until < today ? [`audit: ${words}: allowed until ${entry.until}, which has passed`] : []
  })
  const stale = allowed
    .filter(({ advisory }) => !found.has(advisory))
    .map(({ advisory }) => `audit: ${advisory} is allowed but not found any more; take it out of .ci/audit-allow.json`)
  const faults = [...lines, ...stale]
  if (faults.length > 0) return { passes: false, lines: faults }
  return { passes: true, lines: [`audit: nothing of level high or critical, ${allowed.length} allowed`] }
}

if (process.argv[1] === import.meta.filename) {
  const allowed: Allowed[] = JSON.parse(readFileSync(join(import.meta.dirname, 'audit-allow.json'), 'utf8'))
  // npm leaves with an error where it finds something; what it found stands in its report all the same
  execFile('npm', ['audit', '--json'], { maxBuffer: 64 * 1024 * 1024, timeout: 60_000 }, (_error, report) => {
    const { passes, lines } = auditVerdict(report, allowed, new Date().toISOString().slice(0, 10))
    for (const line of lines) console.log(line)
    process.exitCode = passes ? 0 : 1
  })
}
