import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import request from 'supertest'
import { describe, expect, it, vi } from 'vitest'
import { language } from '../../server/web/language.js'
import { exampleRows } from '../../server/web/parts/examples.js'
import { testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

const { app } = testApp()
const text = async (path: string): Promise<string> => (await request(app).get(path)).text

describe('the language of the pages', () => {
  it.each(['/', '/first-power', '/fuse', '/jobs', '/shelf', '/records', '/reference', '/enter', '/nowhere'])(
    'is said by the page %s',
    async (path) => {
      expect(await text(path)).toMatch(/^<!DOCTYPE html><html lang="en">/)
    },
  )

  it('stands in one place: names and orders take it from there', () => {
    const folder = join(import.meta.dirname, '../../server')
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))
    const uses = files.flatMap((name) =>
      readFileSync(join(folder, name), 'utf8')
        .split('\n')
        .filter((line) => /Intl\.|toLocale|localeCompare\([^)]*,/.test(line))
        .map((line) => ({ name, line })),
    )
    expect(uses.length).toBeGreaterThan(3)
    for (const { name, line } of uses) {
      // the reader's sign is asked of the platform by the tags the browser sends
      if (name === 'web/decimalSign.ts') continue
      // a land is understood under its name in any language
      if (line.includes('[tongue]')) continue
      expect(line, name).toMatch(/\b(language|ours)\b/)
    }
    expect(language).toBe('en')
  })

  it('is marked where words are in another: words of plates, and words to search for', async () => {
    const words = await text('/reference/plate-words?q=netzteil')
    expect(words).toMatch(/<th role="rowheader" scope="row" lang="de"[^>]*><a href="[^"]+">[^<]*NETZTEIL/)
    const row = (
      await request(app)
        .post('/shelf/devices')
        .type('form')
        .send({ ...exampleRows.device, need1: '12' })
    ).headers.location
    const machine = await text(`${row}?country=DE`)
    expect(machine).toMatch(/<li lang="de">NETZTEIL 12 V/)
    expect(machine).toMatch(/<li>AC ADAPT[EO]R 12 V/)
  })
})
