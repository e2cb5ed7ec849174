import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import request from 'supertest'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let dataDir: string
let id: string

const picture = (width = 600, height = 400) => sharp({ create: { width, height, channels: 3, background: '#b45f06' } })

/** A camera's file: taken lying on its side, with the place it was taken at. */
const withPlace = () =>
  picture()
    .withExif({ IFD0: { Copyright: 'hidden words' }, IFD3: { GPSLatitude: '54/1 0/1 0/1' } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer()

const send = (bytes: Buffer, name = 'plate.jpg', caption = 'supply plate') =>
  request(test.app).post(`/api/shelf/supplies/${id}/photos`).field('caption', caption).attach('photo', bytes, name)

beforeEach(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-photos-'))
  test = testApp(dataDir)
  id = (await request(test.app).post('/api/shelf/supplies').send({ name: 'Brick', supply: {} })).body.id
})

afterEach(async () => {
  await test.store.close()
  rmSync(dataDir, { recursive: true })
})

describe('a photo', () => {
  it.each([
    ['JPEG', () => picture().jpeg().toBuffer(), 'image/jpeg'],
    ['PNG', () => picture().png().toBuffer(), 'image/png'],
    ['WebP', () => picture().webp().toBuffer(), 'image/webp'],
  ])('in %s is kept and shown large and small', async (_name, make, type) => {
    const answer = await send(await make())
    expect(answer.status).toBe(201)
    expect(answer.body).toMatchObject({ caption: 'supply plate', type, widthPx: 600, heightPx: 400 })
    const large = await request(test.app).get(answer.body.large)
    expect([large.status, large.headers['content-type']]).toEqual([200, type])
    const small = await request(test.app).get(answer.body.small)
    const shown = await sharp(small.body as Buffer).metadata()
    expect(small.headers['content-type']).toBe('image/webp')
    expect(Math.max(shown.width ?? 0, shown.height ?? 0)).toBe(360)
  })

  it('is stripped of the place it was taken at and of every other hidden word, and turned upright', async () => {
    const sent = await withPlace()
    expect(sent.includes('hidden words')).toBe(true)
    const { body } = await send(sent)
    const kept = (await request(test.app).get(body.large)).body as Buffer
    const { exif, orientation } = await sharp(kept).metadata()
    expect(exif).toBeUndefined()
    expect(orientation).toBeUndefined()
    expect(kept.includes('hidden words')).toBe(false)
    expect(body).toMatchObject({ widthPx: 400, heightPx: 600 })
  })

  it.each([
    [
      'a page with a script named .jpg',
      () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>'),
      'x.jpg',
    ],
    ['half a picture', async () => (await picture(2000, 2000).png().toBuffer()).subarray(0, 3000), 'x.png'],
    ['a GIF', () => picture().gif().toBuffer(), 'x.gif'],
    ['nothing', () => Buffer.alloc(0), 'x.jpg'],
  ])('that is %s is refused with words and leaves no file', async (_what, make, name) => {
    const answer = await send(Buffer.from(await make()), name)
    expect(answer.status).toBe(422)
    expect(answer.body.error.message).toMatch(/JPEG, PNG or WebP/)
    expect(existsSync(join(dataDir, 'photos'))).toBe(false)
  })

  it('larger than 8 MB is refused', async () => {
    const answer = await send(Buffer.alloc(8 * 1024 * 1024 + 1))
    expect(answer.status).toBe(422)
    expect(answer.body.error.message).toMatch(/8 MB/)
  })

  it('beyond the twelfth is refused and leaves no file', { timeout: 30_000 }, async () => {
    const bytes = await picture(20, 20).jpeg().toBuffer()
    for (let count = 0; count < 12; count += 1) expect((await send(bytes)).status).toBe(201)
    const answer = await send(bytes)
    expect(answer.status).toBe(422)
    expect(answer.body.error.message).toMatch(/12 can be kept/)
    const files = readdirSync(join(dataDir, 'photos'), { recursive: true, encoding: 'utf8' })
    expect(files.filter((name) => name.endsWith('.jpg'))).toHaveLength(12)
  })

  it('asked for beyond its end is refused as a page, not as a picture', async () => {
    const { body } = await send(await picture().png().toBuffer())
    const answer = await request(test.app).get(body.large).set('Range', 'bytes=9999999-')
    expect(answer.status).toBe(416)
    expect(answer.headers['content-type']).toMatch(/^text\/html/)
    expect(answer.headers['cache-control'] ?? '').not.toMatch(/max-age=[1-9]/)
  })

  it('sent again where it can no longer be written stays as it is kept', async () => {
    const bytes = await picture().png().toBuffer()
    const again = () => send(bytes).set('Idempotency-Key', 'the-same-photo-again')
    const { body } = await again()
    // a folder where the unfinished file would be written: writing fails
    const folder = join(dataDir, 'photos', body.id.slice(0, 2))
    mkdirSync(join(folder, `${body.id}.png.part`))
    const answer = await again()
    expect([answer.status, answer.body.id]).toEqual([201, body.id])
    expect((await request(test.app).get(body.large)).status).toBe(200)
  })

  it('of no record is refused with 404', async () => {
    id = 'none'
    expect((await send(await picture(20, 20).jpeg().toBuffer())).status).toBe(404)
  })

  it('can be deleted and brought back', async () => {
    const { body } = await send(await picture(20, 20).jpeg().toBuffer())
    expect((await request(test.app).delete(`/api/photos/${body.id}`)).status).toBe(204)
    expect((await request(test.app).get(body.large)).status).toBe(404)
    expect((await request(test.app).post(`/api/photos/${body.id}/restore`)).status).toBe(200)
    expect((await request(test.app).get(body.large)).status).toBe(200)
  })
})
