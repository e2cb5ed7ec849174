import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { strToU8, unzipSync, zipSync } from 'fflate'
import sharp from 'sharp'
import request from 'supertest'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let folders: string[]
let apps: TestApp[]
let test: TestApp

/** A server with records of its own. */
const another = (): TestApp => {
  const folder = mkdtempSync(join(tmpdir(), 'lampline-zip-'))
  folders.push(folder)
  const app = testApp(folder)
  apps.push(app)
  return app
}
const picture = (background = '#7a6a58') =>
  sharp({ create: { width: 60, height: 40, channels: 3, background } })
    .jpeg()
    .toBuffer()
const exported = async (from = test): Promise<Buffer> =>
  (await request(from.app).get('/api/export.zip').buffer(true).parse(binary)).body
const binary = (answer: request.Response, done: (error: Error | null, body: Buffer) => void): void => {
  const pieces: Buffer[] = []
  const stream = answer as unknown as NodeJS.ReadableStream
  stream.on('data', (piece: Buffer) => pieces.push(piece))
  stream.on('end', () => done(null, Buffer.concat(pieces)))
}
const bringIn = (to: TestApp, zip: Uint8Array, apply = true) =>
  request(to.app)
    .post(`/api/import.zip${apply ? '?apply=1' : ''}`)
    .type('application/zip')
    .send(Buffer.from(zip))
const asJson = async (of: TestApp) => (await request(of.app).get('/api/export')).text
const words = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ')

/** A job with a photo, a supply, and what is at hand. */
const fill = async (): Promise<string> => {
  const { id } = (await request(test.app).post('/api/jobs').send({ name: 'Recorder', check: matching })).body
  await request(test.app)
    .post(`/api/jobs/${id}/photos`)
    .field('caption', 'machine plate')
    .attach('photo', await picture(), 'plate.jpg')
  await request(test.app).post('/api/shelf/supplies').send({ name: 'Brick', supply: {} })
  await request(test.app)
    .put('/api/at-hand')
    .send({ country: 'DE', lamps: [{ ratedV: 230, ratedW: 60, count: 2 }] })
  return id
}

beforeEach(() => {
  folders = []
  apps = []
  test = another()
})

afterEach(async () => {
  for (const { store } of apps) await store.close()
  for (const folder of folders) rmSync(folder, { recursive: true })
})

describe('one file with everything', () => {
  it('brings jobs, shelf, what is at hand and photos to another place, and nothing twice', async () => {
    const id = await fill()
    const zip = await exported()
    const other = another()
    const looked = (await bringIn(other, zip, false)).body
    expect(looked).toMatchObject({ applied: false, adds: 3, photos: { adds: 1, same: 0, refused: [] } })
    expect((await request(other.app).get('/api/jobs')).body.total).toBe(0)
    expect((await bringIn(other, zip)).body).toMatchObject({ applied: true, adds: 3, photos: { adds: 1 } })
    expect(await asJson(other)).toBe(await asJson(test))
    expect((await request(other.app).get('/api/at-hand')).body.lamps).toEqual([{ ratedV: 230, ratedW: 60, count: 2 }])
    const [photo] = (await request(other.app).get(`/api/jobs/${id}`)).body.photos
    expect(photo).toMatchObject({ caption: 'machine plate', widthPx: 60, heightPx: 40 })
    expect((await request(other.app).get(photo.large)).headers['content-type']).toBe('image/jpeg')
    expect((await bringIn(other, zip)).body).toMatchObject({ adds: 0, same: 3, photos: { adds: 0, same: 1 } })
  })

  it('is the same file for the same records, and holds the JSON of everything', async () => {
    await fill()
    const zip = await exported()
    expect((await exported()).equals(zip)).toBe(true)
    const files = unzipSync(zip)
    expect(Buffer.from(files['records.json'] ?? []).toString()).toBe(await asJson(test))
    expect(Object.keys(files).filter((name) => name.startsWith('photos/'))).toHaveLength(1)
  })

  it('is looked at and brought in on the page, the photos that cannot be used named', async () => {
    await fill()
    const { 'photos.json': list = new Uint8Array(), ...files } = unzipSync(await exported())
    const [listed] = JSON.parse(Buffer.from(list).toString())
    const bad = { ...listed, id: 'a-photo-cut-off-01', file: 'photos/a-photo-cut-off-01.jpg', caption: 'inside' }
    const stray = { ...listed, id: 'a-photo-of-none-01', owner: 'no-such-record-0001' }
    const gone = { ...listed, id: 'a-photo-not-there-1', file: 'photos/a-photo-not-there-1.jpg' }
    const zip = zipSync({
      ...files,
      [bad.file]: (await picture()).subarray(0, 200),
      'photos.json': strToU8(JSON.stringify([bad, listed, stray, gone])),
    })
    const other = another()
    const preview = await request(other.app).post('/records').attach('file', Buffer.from(zip), 'records.zip')
    expect(words(preview.text)).toContain('3 added. Nothing was changed yet. Photos: 1 to be added, 3 not taken')
    const token = /name="token" value="([^"]+)"/.exec(preview.text)?.[1] ?? ''
    const done = words((await request(other.app).post('/records/apply').type('form').send({ token })).text)
    expect(done).toContain('Photos: 1 added, 3 not taken')
    expect(done).toMatch(/photos\/a-photo-cut-off-01\.jpg \(inside\) : The file is no whole JPEG/)
    expect(done).toMatch(/The record it belongs to is not there/)
    expect(done).toMatch(/It is listed, and not in the file/)
    expect((await request(other.app).get('/api/jobs')).body.total).toBe(1)
  })

  it.each<[string, (zip: Buffer) => Uint8Array, RegExp]>([
    ['cut off', (zip) => zip.subarray(0, zip.length - 30), /cannot be read; it may be cut off or damaged/],
    ['no ZIP file', () => Buffer.from('kind,name'), /is no ZIP file/],
    ['another ZIP file', () => zipSync({ 'notes.txt': strToU8('x') }), /has no “records.json”/],
    ['records that are none', () => zipSync({ 'records.json': strToU8('{"format":"x"}') }), /format/],
    ['records that are no JSON', () => zipSync({ 'records.json': strToU8('{') }), /cannot be read/],
    ['a key of its own', () => zipSync({ 'records.json': strToU8('{"__proto__":{}}') }), /is not accepted/],
    [
      'a photo outside its folder',
      (zip) =>
        zipSync({
          ...unzipSync(zip),
          'photos.json': strToU8(
            JSON.stringify([
              { id: 'a'.repeat(22), owner: 'b'.repeat(22), caption: '', createdAt: 1, file: '../x.jpg' },
            ]),
          ),
        }),
      /must be a file of the folder photos/,
    ],
  ])('that is %s is refused with words, and nothing is changed', async (_what, damage, message) => {
    await fill()
    const answer = await bringIn(another(), damage(await exported()))
    expect(answer.status).toBe(422)
    expect(JSON.stringify(answer.body.error)).toMatch(message)
    expect((await request(apps[1]?.app ?? test.app).get('/api/jobs')).body.total).toBe(0)
  })
})
