import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { facts } from '../../server/facts/boxes.js'
import { glossary, type Word } from '../../server/web/glossary.js'
import { tell } from '../../server/words/tell.js'
import { testApp } from './testApp.js'

const views = join(import.meta.dirname, '../../views')
const texts = readdirSync(views, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.pug'))
  .map((name) => readFileSync(join(views, name), 'utf8'))
const used = [
  ...texts.flatMap((text) =>
    [...text.matchAll(/\+term\('([^']+)'|\bterm: '([^']+)'/g)].map(([, inText, atField]) => inText ?? atField ?? ''),
  ),
  ...facts.flatMap(({ fact }) => fact.term ?? []),
]

describe('the glossary', { timeout: 30_000 }, () => {
  it.each(Object.entries<Word>(glossary))('%s is explained in two sentences', (_name, { word, text }) => {
    expect(word).not.toBe('')
    expect(tell(text).match(/[.!?](?= |$)/g)?.length).toBe(2)
  })

  it('has every word that a page explains', () => {
    expect(used.length).toBeGreaterThan(15)
    expect(used.filter((name) => !Object.hasOwn(glossary, name))).toEqual([])
  })

  it.each([
    '/?at=supply',
    '/fuse?marking=T2AL250V&prescribed=T2AL250V&position=mains&volts=230&watts=60',
    '/first-power',
  ])('%s explains each word once, by a button that needs no script, and leads to the rest', async (address) => {
    const { text } = await request(testApp().app).get(address).set('Accept', 'text/html')
    const targets = [...text.matchAll(/type="button" popovertarget="([^"]+)"/g)].map(([, id = '']) => id)
    expect(targets.length).toBeGreaterThan(3)
    expect(new Set(targets).size).toBe(targets.length)
    for (const id of targets) {
      expect(text.split(`id="${id}"`)).toHaveLength(2)
      expect(text).toContain(`href="/reference/words#${id.replace('term-', '')}"`)
    }
  })
})
