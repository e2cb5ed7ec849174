import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type Allowed, auditVerdict } from '../../.ci/audit.js'

const top = join(import.meta.dirname, '../..')
const today = '2026-03-01'

/** A report in the form of npm's version 2 ("auditReportVersion": 2), as its documentation describes it; invented. */
const report = (severity: string): string =>
  JSON.stringify({
    auditReportVersion: 2,
    vulnerabilities: {
      inner: {
        name: 'inner',
        severity,
        via: [
          {
            source: 1,
            name: 'inner',
            title: 'A hole',
            url: 'https://advisories.example/GHSA-aaaa-bbbb-cccc',
            severity,
          },
        ],
        effects: ['outer'],
      },
      outer: { name: 'outer', severity, via: ['inner'], effects: [] },
    },
  })

const allowed = (until: string, advisory = 'GHSA-aaaa-bbbb-cccc'): Allowed[] => [{ advisory, reason: 'why', until }]

describe('the audit of dependencies', () => {
  it.each(['high', 'critical'])(
    'fails on a weakness of level %s that is not in the list, once, by its name',
    (level) => {
      const { passes, lines } = auditVerdict(report(level), [], today)
      expect(passes).toBe(false)
      expect(lines).toEqual([`audit: inner: A hole (${level}, GHSA-aaaa-bbbb-cccc)`])
    },
  )

  it.each(['info', 'low', 'moderate'])('passes on one of level %s', (level) => {
    expect(auditVerdict(report(level), [], today).passes).toBe(true)
  })

  it('passes on one in the list to its last day, and fails the day after', () => {
    expect(auditVerdict(report('high'), allowed(today), today).passes).toBe(true)
    const late = auditVerdict(report('high'), allowed('2026-02-28'), today)
    expect(late.passes).toBe(false)
    expect(late.lines[0]).toContain('allowed until 2026-02-28, which has passed')
  })

  it('fails on an entry of the list that names nothing any more', () => {
    const { passes, lines } = auditVerdict(report('low'), allowed(today, 'GHSA-gone'), today)
    expect(passes).toBe(false)
    expect(lines[0]).toContain('GHSA-gone is allowed but not found any more')
  })

  it.each([
    ['the registry does not answer this question', '{"message":"405 Method Not Allowed","statusCode":405}', '405'],
    ['there is no network', '{"message":"request failed","error":{"code":"ENOTFOUND"}}', 'request failed'],
    ['there is no report', '', 'no report'],
  ])('passes where %s, and says that it was not done', (_name, text, words) => {
    const { passes, lines } = auditVerdict(text, allowed(today), today)
    expect(passes).toBe(true)
    expect(lines[0]).toMatch(/NOT DONE/)
    expect(lines[0]).toContain(words)
  })

  it('is part of the gate, between installing and the tests', () => {
    const gate = readFileSync(join(top, '.ci/run'), 'utf8')
    const order = ['npm install\n', 'npx tsx .ci/audit.ts\n', 'npm test\n'].map((line) => gate.indexOf(line))
    expect(order.every((at) => at > 0)).toBe(true)
    expect(order).toEqual(order.toSorted((one, other) => one - other))
  })

  it('has a list in which every entry has a reason and a day', () => {
    const entries: Allowed[] = JSON.parse(readFileSync(join(top, '.ci/audit-allow.json'), 'utf8'))
    expect(Array.isArray(entries)).toBe(true)
    for (const { advisory, reason, until } of entries) {
      expect(advisory).toMatch(/^GHSA(-[\da-z]{4}){3}$/)
      expect(reason.length).toBeGreaterThan(20)
      expect(until).toMatch(/^20\d\d-\d\d-\d\d$/)
    }
  })
})
