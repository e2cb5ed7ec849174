import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'csv-parse/sync'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { tables } from '../../server/web/pages/reference/pageTables.js'
import { testApp } from './testApp.js'

const { app } = testApp()
const get = (address: string) => request(app).get(address).set('Accept', 'text/html')
const names = tables.map(({ name }) => ({ name }))

describe('the tables of the reference', () => {
  it.each(names)('$name: every row has an id of its own, a name, and at least one source', ({ name }) => {
    const table = tables.find((one) => one.name === name)
    const rows = table?.rows() ?? []
    expect(rows.length).toBeGreaterThan(0)
    const ids = rows.map(({ id }) => id)
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([])
    for (const { id, cells, sources } of rows) {
      expect(id, name).toMatch(/^[\p{L}\p{N}]+(-[\p{L}\p{N}]+)*$/u)
      expect(id).not.toMatch(/^(q|main|live|sources|source-\d+)$/)
      expect(cells.length).toBe(table?.columns.length)
      expect(cells[0]).not.toBeNull()
      expect(cells[0]).not.toBe('')
      expect(sources.length, `${name} ${id}`).toBeGreaterThan(0)
    }
  })

  it('leave out no file of data: each is read by one of them', () => {
    const folder = join(import.meta.dirname, '../../server')
    const views = join(folder, 'web/pages/reference')
    const read = [
      ...readdirSync(views).map((name) => readFileSync(join(views, name), 'utf8')),
      readFileSync(join(folder, 'tables/index.ts'), 'utf8'),
    ]
    // kinds of values, checks, and look-ups over the rows of other files
    const mechanism = [
      // its words stand among those of hazard
      'isolationWords',
      'source',
      'sourced',
      'frozen',
      'table',
      'faults',
      'validate',
      'values',
      'index',
      'plugSources',
      'examineSources',
      'contactFaces',
      'socketLetters',
    ]
    const lookUps = ['cords', 'dcPlugs', 'inlets', 'sockets', 'mainsCountries']
    const unread = readdirSync(join(folder, 'tables'))
      .map((file) => file.replace(/\.ts$/, ''))
      .filter(
        (file) => ![...mechanism, ...lookUps].includes(file) && !read.some((text) => text.includes(`/${file}.js'`)),
      )
    expect(unread).toEqual([])
  })

  it('stand under names of their own', () => {
    expect(new Set(names.map(({ name }) => name)).size).toBe(names.length)
  })
})

describe('the pages of the reference', () => {
  it.each(names)('/reference/$name shows every row and its sources', async ({ name }) => {
    const { status, text } = await get(`/reference/${name}`)
    expect(status).toBe(200)
    const table = tables.find((one) => one.name === name)
    for (const { id, sources } of table?.rows() ?? []) {
      expect(text).toContain(`id="${id}"`)
      expect(text).toContain(`(${sources[0]?.kind})`)
    }
    expect(text).not.toMatch(/undefined|NaN|\[object/)
  })

  it.each(names)(
    '$name as CSV holds the same rows, in UTF-8, and no cell a spreadsheet would run',
    async ({ name }) => {
      const { status, headers, text } = await request(app).get(`/reference/${name}.csv`)
      expect(status).toBe(200)
      expect(headers['content-type']).toBe('text/csv; charset=utf-8')
      expect(headers['content-disposition']).toContain(`lampline-${name}.csv`)
      const [heading, ...records] = parse(text, { bom: true }) as string[][]
      const table = tables.find((one) => one.name === name)
      expect(heading?.slice(-3)).toEqual(['sources', 'standing', 'doubt'])
      expect(records.map(([id]) => id)).toEqual(table?.rows().map(({ id }) => id))
      for (const cell of records.flat()) if (Number.isNaN(Number(cell))) expect(cell).not.toMatch(/^[=+\-@\t\r\n]/)
    },
  )

  it('/reference lists every table', async () => {
    const { status, text } = await get('/reference')
    expect(status).toBe(200)
    for (const { name } of names) expect(text).toContain(`href="/reference/${name}"`)
  })

  it('a search over everything leads to the row, whatever the case, the accents and the kind of space', async () => {
    for (const [search, href] of [
      ['germany', '/reference/countries#de'],
      ['CURACAO', '/reference/countries#cw'],
      ['schuko', '/reference/plugs#cee-7-4'],
      ['awg 18', '/reference/awg#awg-18'],
      ['träge', '/reference/fuse-words#trage'],
      ['red is earth', '/reference/conductor-colours#germany-austria-old'],
    ] as const) {
      const { text } = await get(`/reference?q=${encodeURIComponent(search)}`)
      expect(text, search).toContain(`href="${href}"`)
    }
  })

  it('a search in a table leaves the rows that hold every word, and says how many of how many', async () => {
    const { text } = await get('/reference/countries?q=japan+100')
    expect(text).toContain('id="jp"')
    expect(text).not.toContain('id="de"')
    expect(text).toMatch(/1 of \d+ rows hold “japan 100”/)
  })

  it('a search that finds nothing says so, and shows what was typed as text', async () => {
    const { status, text } = await get(`/reference?q=${encodeURIComponent('<b>zzz')}`)
    expect(status).toBe(200)
    expect(text).toContain('Nothing holds “&lt;b&gt;zzz”')
    expect((await get('/reference/awg?q=zzz')).text).toContain('0 of')
    expect((await get('/reference?q=a&q=b')).status).toBe(200)
  })

  it.each(['/reference/no-such-table', '/reference/no-such-table.csv', '/reference/__proto__', '/reference/awg/18'])(
    '%s is not there, and is said so plainly',
    async (address) => {
      const { status, text } = await get(address)
      expect(status).toBe(404)
      expect(text).toContain('Not found')
    },
  )

  it('draws a face for every socket whose form is known, and says in words what is seen of each', async () => {
    const { text } = await get('/reference/sockets')
    expect(text.match(/class="socket-face"/g)?.length).toBe(14)
    expect(text).toContain('half-round earth')
    expect(text).toContain('The shape proves neither voltage nor earth')
  })

  it('warns before the table of conductor colours that colour proves nothing', async () => {
    const { text } = await get('/reference/conductor-colours')
    expect(text.indexOf('Colour proves nothing')).toBeGreaterThan(0)
    expect(text.indexOf('Colour proves nothing')).toBeLessThan(text.indexOf('<table'))
  })
})

describe('docs/reference.md', () => {
  it.each(tables)('lists $name', ({ name, title }) => {
    const text = readFileSync(join(import.meta.dirname, '../../docs/reference.md'), 'utf8')
    expect(text).toContain(`| ${title} | \`/reference/${name}\` |`)
  })
})
