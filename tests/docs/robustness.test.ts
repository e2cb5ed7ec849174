import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { connectionTimes } from '../../server/connections.js'

const root = join(import.meta.dirname, '../..')
const text = readFileSync(join(root, 'docs/robustness.md'), 'utf8')
const scripts = (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> })
  .scripts
const claims = text.split('\n').filter((line) => line.startsWith('| ') && !line.startsWith('| claim'))

describe('the claims on robustness', () => {
  it('each come with a command', () => {
    expect(claims.length).toBeGreaterThan(6)
    for (const claim of claims) expect(claim).toMatch(/`(npm run|npx vitest run) [^`]+`/)
  })

  it.each([...new Set([...text.matchAll(/\b(?:tests|server)\/[\w./]+\.ts/g)].map(([file]) => file))])(
    'name %s, which is there',
    (file) => {
      expect(existsSync(join(root, file))).toBe(true)
    },
  )

  it.each([...new Set([...text.matchAll(/npm run (\w+)/g)].map(([, name]) => name ?? ''))])(
    'name the script %s',
    (name) => {
      expect(scripts).toHaveProperty(name)
    },
  )

  it('give the times that connections have', () => {
    expect(text).toContain(`${connectionTimes.headersTimeout / 1000} s for the headers`)
    expect(text).toContain(`${connectionTimes.requestTimeout / 60_000} minutes for the whole`)
    expect(text).toContain(`${connectionTimes.keepAliveTimeout / 1000} s open without a request`)
  })
})
