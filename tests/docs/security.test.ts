import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { largestFile } from '../../server/web/calls/exchange.js'
import { mostTries, mostTriesOfAll } from '../../server/web/guards/access.js'
import { mostInAMinute } from '../../server/web/guards/rateLimits.js'
import { sessionS } from '../../server/web/guards/session.js'
import { largestPhoto } from '../../server/web/parts/photoImage.js'

const top = join(import.meta.dirname, '../..')
const read = (path: string): string => readFileSync(join(top, path), 'utf8')
const page = read('docs/security.md')

const section = (title: string): string => (page.split(`\n## ${title}\n`)[1] ?? '').split('\n## ')[0] ?? ''
const threats = section('Threats')
  .split('\n')
  .filter((line) => line.startsWith('| ') && !line.startsWith('| threat'))
  .map((line) => line.slice(2, -2).split(' | ') as [threat: string, stopped: string, tests: string])

/** A test with the files beside it that it uses: a short and a long one share what they expect. */
const withHelpers = (name: string): string => {
  const text = read(name)
  const beside = [...text.matchAll(/from '\.\/(\w+)\.js'/g)].map(([, file]) => `${dirname(name)}/${file}.ts`)
  return [text, ...beside.map(read)].join('\n')
}

describe('docs/security.md', () => {
  it('names for every threat what stops it and a test', () => {
    expect(threats.length).toBeGreaterThan(20)
    for (const cells of threats) {
      expect(cells).toHaveLength(3)
      const [, stopped, tests] = cells
      expect(stopped.length).toBeGreaterThan(20)
      expect(tests).toMatch(/^`tests\/[\w/.]+\.test\.ts`(, `tests\/[\w/.]+\.test\.ts`)*$/)
    }
  })

  it('names only files that exist, and tests that hold at least one expectation', () => {
    const names = [...page.matchAll(/`((?:tests|server|\.ci)\/[\w./-]+)`/g)].map(([, name]) => name ?? '')
    expect(names.length).toBeGreaterThan(25)
    expect(names.filter((name) => !existsSync(join(top, name)))).toEqual([])
    const tests = names.filter((name) => name.endsWith('.test.ts'))
    expect(tests.filter((name) => !withHelpers(name).includes('expect('))).toEqual([])
  })

  it('lists what a request passes through before the routes, as server/app.ts has it', () => {
    const listed = [...section('What a request passes through').matchAll(/^\d+\. `([\w.]+)`/gm)].map(([, name]) => name)
    const used = [...read('server/app.ts').matchAll(/app\.use\((?:'[^']*', )?([\w.]+)/g)].map(([, name]) => name)
    expect(listed).toEqual(used.slice(0, listed.length))
    // after these come only modules of routes
    expect(used.slice(listed.length).filter((name) => !name?.endsWith('Routes'))).toEqual(['notFound', 'handleErrors'])
  })

  it('gives the limits that are in the code', () => {
    for (const claim of [
      `${mostTries} wrong tries per address in 15 minutes`,
      `${mostTriesOfAll} of all addresses in an hour`,
      `${mostInAMinute.requests} requests a minute per address, ${mostInAMinute.heavy} of those`,
      `${sessionS / 86_400} days`,
      `${largestPhoto / 2 ** 20} MB and 100 megapixels for photos`,
      `${largestFile.replace('mb', ' MB')} for files in`,
    ])
      expect(page).toContain(claim)
    expect(page).toContain(`${mostTriesOfAll * 24} tries a day`)
    const [, n, r, p] = /scrypt \(N (\d+), r (\d+), p (\d+)\)/.exec(page) ?? []
    expect(read('server/web/guards/access.ts')).toContain(`{ N: 2 ** ${Math.log2(Number(n))}, r: ${r}, p: ${p},`)
    expect(page).toContain(`for up to ${Number(/stopWithinMs = (\d+)/.exec(read('server/main.ts'))?.[1]) / 1000} s`)
  })
})

it('README lists every setting that the app reads, and no other', () => {
  const taken = [...read('server/config.ts').matchAll(/^ {2}([A-Z_]+): z/gm)].map(([, name]) => name)
  const listed = [...read('README.md').matchAll(/^\| `([A-Z_]+)` \|/gm)].map(([, name]) => name)
  expect(taken.length).toBeGreaterThan(6)
  expect(listed.toSorted()).toEqual(taken.toSorted())
})
