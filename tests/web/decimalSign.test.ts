import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { tables } from '../../server/web/pages/reference/pageTables.js'
import { exampleRows, examples } from '../../server/web/parts/examples.js'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 })

let test: TestApp
let dataDir: string

/** what a person may type with a point in it; none of it may change */
const typed = {
  name: 'Deck no. 7.5 of box 12.5 V',
  part: 'Belt 1.5 mm, 6.3 x 0.5',
  note: 'see manual 4.2, hums at 49.5 Hz',
  log: 'Bulged at 16.5 V, page 3.14',
  read: 'heater 6.3 V tap',
  caption: 'meter at 11.9 V',
  plate: 'MODEL 2.4\nOUTPUT 12.5 V DC 1.25 A',
  marking: 'T 1.25 A 250 V',
  plugName: 'barrel 5.5 / 2.1',
  place: 'shelf 3.2',
}

const get = (path: string, language?: string, headers: Record<string, string> = {}) =>
  request(test.app)
    .get(path)
    .set({ ...(language === undefined ? {} : { 'Accept-Language': language }), ...headers })
const post = (path: string, fields: Record<string, string>) => request(test.app).post(path).type('form').send(fields)

const query = (index: number): string => (examples[index]?.address ?? '').slice(2)
const pages: Record<string, string> = {
  'a check': `/?${query(0)}`,
  'a check with stops': `/?${query(3)}`,
  'a check with faults': '/?plugouter=1.500&mains=12.5.3&plugname=2.5',
  'a check of typed names': `/?${new URLSearchParams({ supply: typed.plate, fuse: typed.marking, plugname: typed.plugName, machine: typed.plate })}`,
  'a first power-up': `/first-power?${query(0)}&lamp1v=230&lamp1w=60&lamp1n=2&years=20&bulk=68&bulkv=400&ohm=3.5`,
  'a fuse': `/fuse?${new URLSearchParams({ marking: typed.marking, prescribed: 'F 1.6 A 250 V', position: 'mains', volts: '230', watts: '60.5', peak: '20', pulse: '1.5 ms', shape: 'exponential', a: 'T2.5AL250V' })}`,
  'a first power-up of typed names': `/first-power?${new URLSearchParams({ country: 'DE', supply: `${typed.plate}\nINPUT 230V`, machine: typed.plate, fuse: typed.marking, plugname: typed.plugName, lamp1v: '230', lamp1w: '60' })}`,
  'a checklist of typed names': `/checklist?${new URLSearchParams({ country: 'DE', supply: `${typed.plate}\nINPUT 230V`, fuse: typed.marking, plugname: typed.plugName })}`,
  'a fuse whose rating is not read': `/fuse?${new URLSearchParams({ marking: 'reads 1.7 or 7.7, 2.5 x', prescribed: typed.marking, position: 'mains', volts: '230' })}`,
  'a checklist': `/checklist?${query(0)}&lamp1v=230&lamp1w=60&lamp1n=2`,
  'what is not there': '/nowhere',
  ...Object.fromEntries(tables.map(({ name }) => [`the table ${name}`, `/reference/${name}`])),
}

beforeAll(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-sign-'))
  test = testApp(dataDir)
  const job = (await post('/jobs', { plan: `${query(0)}&lamp1v=230&lamp1w=60&lamp1n=2` })).headers.location as string
  await post(job, {
    name: typed.name,
    note: typed.note,
    drawn: '0,85 A',
    seen: /name="seen" value="([^"]+)"/.exec((await get(job)).text)?.[1] ?? '',
  })
  // what needs no power is taken before the gates
  await post(`${job}/bench?step=look.discharge`, { value: '12,25 V' })
  await post(`${job}/readings`, { what: typed.read, value: '6.25', unit: 'V' })
  await post(`${job}/parts`, { part: typed.part, state: 'wanted', partnote: typed.note })
  await post(`${job}/log`, { text: typed.log })
  const picture = await sharp({ create: { width: 30, height: 20, channels: 3, background: '#777' } })
    .jpeg()
    .toBuffer()
  await request(test.app).post(`${job}/photos`).field('caption', typed.caption).attach('photo', picture, 'a.jpg')
  const supply = (
    await post('/shelf/supplies', {
      ...exampleRows.supply,
      name: typed.name,
      place: typed.place,
      rownote: typed.note,
      supply: typed.plate,
      fuse: typed.marking,
      plugname: typed.plugName,
      in: '100-127,5',
      offload: '12.75',
    })
  ).headers.location as string
  const { jackouter: _outer, jackinner: _inner, ...machine } = exampleRows.device
  const named = { ...machine, name: typed.name, jackname: typed.plugName, need1: '12.5', need1a: '1.25' }
  const device = (await post('/shelf/devices', named)).headers.location as string
  Object.assign(pages, {
    'a job': job,
    'a job judged again': `${job}/rejudge`,
    'the checklist of a job': `${job}/checklist`,
    'the jobs': '/jobs',
    'a supply': `${supply}?country=DE`,
    'a supply being changed': `${supply}/edit`,
    'a machine': `${device}?country=DE`,
    'the shelf': '/shelf?country=DE',
    'the matrix': '/shelf/matrix?country=DE',
  })
})

afterAll(async () => {
  await test.store.close()
  rmSync(dataDir, { recursive: true })
})

/** what differs each time a page is made */
const steady = (html: string): string => html.replace(/(name="once" value=")[^"]+/g, '$1')

/** what was printed elsewhere, and what was typed */
const withoutKept = (html: string): string =>
  html.replace(/<(ul|ol) class="sources"[\s\S]*?<\/\1>|<cite>[\s\S]*?<\/cite>|<textarea[\s\S]*?<\/textarea>/g, ' ')
const texts = (html: string): string => withoutKept(html).replace(/<head>[\s\S]*?<\/head>|<[^>]+>/g, '\n')
const tagsOf = (html: string): string[] =>
  (html.match(/<[^>]+>/g) ?? []).map((tag) => tag.replace(/ (aria-label|title|alt|data-label)="[^"]*"/g, ''))

describe('a page for a reader who writes a decimal comma', () => {
  const both = async (path: string) => {
    const [point, comma] = [await get(path, 'en'), await get(path, 'de-DE,de;q=0.9,en;q=0.8')]
    return { status: comma.status, point: steady(point.text), comma: steady(comma.text) }
  }

  const ofAJob = ['a job', 'a job judged again', 'the checklist of a job']

  // a list of names, as what is kept gets its address later
  const names = [
    ...Object.keys(pages),
    'a job',
    'a job judged again',
    'the checklist of a job',
    'the jobs',
    'a supply',
    'a supply being changed',
    'a machine',
    'the shelf',
    'the matrix',
  ]

  it.each(names)('%s: differs in decimal signs alone, and no quantity keeps its point', async (name) => {
    const { point, comma } = await both(pages[name] ?? '')
    expect(comma.replace(/(\d),(?=\d)/g, '$1.')).toBe(point.replace(/(\d),(?=\d)/g, '$1.'))
    // “ ” holds what was typed or printed; what a job keeps of its judgement and plan stands as it was written
    if (!ofAJob.includes(name))
      expect(
        texts(comma)
          .replace(/“[^”]*”/g, '')
          .match(/(?<![\d.])\d+\.\d+\u00a0\S+/g) ?? [],
      ).toEqual([])
    // boxes of what is kept are filled in by the program; every other tag stays
    if (!name.endsWith('being changed') && name !== 'a job') expect(tagsOf(comma)).toEqual(tagsOf(point))
    const sources = /<(ul|ol) class="sources"[\s\S]*?<\/\1>|<cite>[\s\S]*?<\/cite>/g
    expect(comma.match(sources)).toEqual(point.match(sources))
  })

  it('does change pages: a check, a plan, a fuse, a checklist, a table, a job', async () => {
    for (const name of [
      'a check',
      'a first power-up',
      'a fuse',
      'a checklist',
      'the table dc-plugs',
      'a job',
      'a supply',
    ]) {
      const { point, comma } = await both(pages[name] ?? '')
      expect(point, name).toMatch(/\d\.\d+\u00a0[A-ZΩµmk]|>\d\.\d/)
      expect(comma, name).not.toBe(point)
    }
  })

  it('shows what was read for a job in the reader’s sign, also in what is heard', async () => {
    const job = (await both(pages['a job'] ?? '')).comma
    expect(job).toContain('12,25\u00a0V')
    expect(job).toContain('850\u00a0mA')
    expect((await both(pages['a check'] ?? '')).comma).toMatch(/aria-label="Plug: sleeve 5,5\u00a0mm outside/)
    expect((await both(pages['a first power-up'] ?? '')).comma).toMatch(/<desc id="[^"]+">[^<]*\d,\d+\u00a0V/)
  })

  it('keeps everything that was typed', async () => {
    const escaped = (text: string): string => text.replace(/\n/g, ' ')
    const job = escaped((await both(pages['a job'] ?? '')).comma)
    for (const text of [typed.name, typed.part, typed.note, typed.log, typed.read, typed.caption])
      expect(job).toContain(text)
    const supply = escaped((await both(pages['a supply'] ?? '')).comma)
    for (const text of [
      typed.name,
      typed.place,
      typed.note,
      typed.marking,
      typed.plugName,
      typed.plate.replace('\n', ' '),
    ])
      expect(supply).toContain(text)
    for (const name of ['the jobs', 'the shelf', 'the matrix', 'a job judged again', 'the checklist of a job'])
      expect((await both(pages[name] ?? '')).comma, name).toContain(typed.name)
    const check = escaped((await both(pages['a check of typed names'] ?? '')).comma)
    for (const text of [typed.plate.replace('\n', ' '), typed.marking, typed.plugName])
      expect(check.split(text).length).toBeGreaterThan(2)
    expect((await both(pages['a fuse'] ?? '')).comma).toContain(`<bdi>${typed.marking}</bdi>`)
  })

  it.each(names)('%s: shows nothing that was typed with another sign', async (name) => {
    const { comma } = await both(pages[name] ?? '')
    for (const text of Object.values(typed))
      for (const line of text.split('\n').filter((part) => /\d\.\d/.test(part)))
        expect(comma).not.toContain(line.replace(/(\d)\.(?=\d)/g, '$1,'))
  })

  it('keeps a refused entry as it was typed, and says in the reader’s sign what can be written', async () => {
    const { status, comma } = await both('/?plugouter=1.500')
    expect(status).toBe(422)
    expect(comma).toContain('value="1.500"')
    expect(comma).toContain('“1.500” can be read two ways: write 1500 or 1,5.')
  })

  it('says back what was understood where it reads otherwise than what was typed, in either sign', async () => {
    const shown = async (typedValue: string, language: string): Promise<string | undefined> =>
      /Taken as <strong>([^<]+)/.exec(
        (await get(`/?plugouter=${encodeURIComponent(typedValue)}&at=supply`, language)).text,
      )?.[1]
    expect(await shown('5,5', 'de')).toBeUndefined()
    expect(await shown('5.5', 'en')).toBeUndefined()
    expect(await shown('5,5', 'en')).toBe('5.5\u00a0mm')
    expect(await shown('.55 cm', 'de')).toBe('5,5\u00a0mm')
  })

  it('fills the boxes of what is kept with the reader’s sign, and takes them back as they stand', async () => {
    const edit = pages['a supply being changed'] ?? ''
    const { comma } = await both(edit)
    const boxes = Object.fromEntries(
      [...comma.matchAll(/<input type="text" id="\w+" name="(\w+)" value="([^"]*)"/g)].map(
        ([, name = '', value = '']) => [name, value],
      ),
    )
    expect(boxes).toMatchObject({
      plugouter: '5,5',
      in: '100-127,5',
      offload: '12,75',
      name: typed.name,
      plugname: typed.plugName,
    })
    const api = `/api${edit.replace('/edit', '')}`
    const before = (await request(test.app).get(api)).body
    const [, version = ''] = /name="version" value="(\d+)"/.exec(comma) ?? []
    const selected = { type: 'switch-mode', inlet: 'C8', supply: typed.plate, rownote: typed.note }
    expect((await post(edit.replace('/edit', ''), { ...boxes, ...selected, version })).status).toBe(303)
    expect((await request(test.app).get(api)).body.supply).toEqual(before.supply)
    expect((await both(pages['a job'] ?? '')).comma).toContain('name="drawn" value="0,85 A"')
  })

  it('gets the parts of a page likewise, and the errors', async () => {
    const part = await get(`/?${query(0)}`, 'de', { 'HX-Request': 'true' })
    expect(part.text).not.toContain('<html')
    expect(part.text).toContain('2,5\u00a0A')
    expect(texts(part.text)).not.toMatch(/(?<![\d.])\d+\.\d+\u00a0V/)
  })

  it('is kept apart from others by caches', async () => {
    for (const path of ['/', '/jobs', '/nowhere', '/reference/lamps', '/enter'])
      expect((await get(path, 'de')).headers.vary).toContain('Accept-Language')
  })
})

describe('what machines read', () => {
  it('has the point whatever the reader’s sign: JSON, CSV and files', async () => {
    const check = async (language: string) =>
      (await request(test.app).post('/api/check').set('Accept-Language', language).send(matching)).text
    expect(await check('de')).toBe(await check('en'))
    for (const path of ['/reference/lamps.csv', '/api/shelf.csv', '/api/export', '/api/mains/DE'])
      expect((await get(path, 'de')).text.replace(/"exportedAt":[^,]+/, '')).toBe(
        (await get(path, 'en')).text.replace(/"exportedAt":[^,]+/, ''),
      )
  })
})

describe('a number typed with either sign', () => {
  const shown = (html: string): string =>
    html.replace(
      /<p class="shown"[\s\S]*?<\/p>|<input type="text"[^>]*>|<textarea[\s\S]*?<\/textarea>|(?:href|value)="[^"]*"/g,
      '',
    )

  it.each([
    [
      'a check',
      '/',
      'in=100-127.5&inhz=16.7&ina=0.5&inva=50.5&inw=40.5&out1=12.5&out1kind=dc&out1a=1.5&out1w=18.5&need1=12.5&need1kind=dc&need1a=1.25&need1tol=5.5&plugouter=5.5&pluginner=2.1&jackouter=5.5&jackinner=2.5&leadm=1.5&leadmm2=0.75&offload=12.6&loaded=12.4&mains=231.5&hz=50.1&cordv=250&corda=2.5&cordmm2=0.75&converter=isolating&converterv=120.5&converterva=100.5',
    ],
    [
      'a first power-up',
      '/first-power',
      'mains=231.5&hz=50.1&out1=12.5&out1a=1.5&need1=12.5&need1a=1.25&lamp1v=230.5&lamp1w=60.5&years=20.5&bulk=4.7&bulkv=400.5&idle=1.5&ohm=3.3&scheme=vde-2008&class=II&earthohm=0.25&insulation=1.5&touch=0.35',
    ],
    [
      'a fuse',
      '/fuse',
      'marking=T1.6AL250V&prescribed=T1.6AL250V&position=mains&volts=230.5&former=120.5&watts=60.5&amps=0.5&pf=0.65&peak=20.5&pulse=1.5+ms&shape=triangle&ambient=35.5&fault=150.5&lamp=0.45',
    ],
  ])('comes to the same: %s', async (_name, path, fields) => {
    const comma = fields.replace(/=([^&=]*)/g, (part) => (/T1/.test(part) ? part : part.replaceAll('.', '%2C')))
    const [one, other] = [await get(`${path}?${fields}`), await get(`${path}?${comma}`)]
    expect(one.text).toContain('id="result"')
    expect(other.status).toBe(one.status)
    expect(shown(other.text)).toBe(shown(one.text))
  })

  it('is one reading of a job', async () => {
    const job = pages['a job'] ?? ''
    for (const value of ['7,75', '7.75'])
      expect((await post(`${job}/readings`, { what: 'either sign', value, unit: 'V' })).status).toBe(303)
    const { readings } = (await request(test.app).get(`/api${job}`)).body as {
      readings: { key: string; value: number }[]
    }
    const values = readings.filter(({ key }) => key === 'either sign').map(({ value }) => value)
    expect(values).toEqual([7.75, 7.75])
  })

  it('is found in the reference', async () => {
    const rows = async (search: string): Promise<number> =>
      (await get(`/reference/dc-plugs?q=${encodeURIComponent(search)}`)).text.split('<tr role="row" id').length
    expect(await rows('2,35')).toBe(await rows('2.35'))
    expect(await rows('2,35')).toBeGreaterThan(1)
  })
})
