import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import sharp from 'sharp'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { photoPath } from '../../server/store/photoFiles.js'
import { type TestApp, testApp } from './testApp.js'

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 })

const secret = 'what nobody may read'
let test: TestApp
let dataDir: string
let server: Server
let owner: string

beforeAll(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-paths-'))
  writeFileSync(join(dataDir, 'secret.txt'), secret)
  mkdirSync(join(dataDir, 'photos'), { recursive: true })
  writeFileSync(join(dataDir, 'photos', '.hidden'), secret)
  test = testApp(dataDir)
  owner = (await request(test.app).post('/api/shelf/supplies').send({ name: 'Brick', supply: {} })).body.id
  server = test.app.listen(0, '127.0.0.1')
  await new Promise((resolve) => server.once('listening', resolve))
})

afterAll(async () => {
  server.closeAllConnections()
  server.close()
  await test.store.close()
  rmSync(dataDir, { recursive: true })
})

/** Asks for a path exactly as it is written: other clients tidy it up first. */
const raw = (path: string): Promise<string> =>
  new Promise((resolve, reject) => {
    const { port } = server.address() as AddressInfo
    const socket = connect(port, '127.0.0.1', () =>
      socket.write(`GET ${path} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`),
    )
    let answer = ''
    socket.setEncoding('utf8')
    socket.on('data', (part) => {
      answer += part
    })
    socket.on('end', () => resolve(answer))
    socket.on('error', reject)
  })

describe('a path out of the folder of files', () => {
  it.each([
    '/static/../package.json',
    '/static/..%2fpackage.json',
    '/static/%2e%2e/package.json',
    '/static/%2e%2e%2fpackage.json',
    '/static/..%5cpackage.json',
    '/static/....//package.json',
    '/static//../../package.json',
    '/static/%252e%252e/package.json',
    '/static/..;/package.json',
    '/static/vendor/../../package.json',
    '/static/%00',
    '/static/lampline.css%00.png',
    '/static/%c0%ae%c0%ae/package.json',
    '/static/%',
    '/static//etc/passwd',
    '/static/../../../../../../etc/passwd',
    '/static/.gitignore',
    '/static/',
    '/static',
    '/static/vendor/',
    '/package.json',
    '/.git/config',
    '/server/main.ts',
    '/data/lampline.sqlite',
    '/photos/../secret.txt',
    '/photos/..%2fsecret.txt',
    '/photos/%2e%2e%2f%2e%2e%2fsecret.txt',
    '/photos/%2e%2e%2f%2e%2e%2fsecret.txt/small',
    '/photos/.hidden',
    '/photos/..%2f..%2f..%2f..%2fetc%2fpasswd',
    '/photos/%00',
    '/photos/',
    '/reference/..%2f..%2fpackage.json',
    '/reference/__proto__',
    '/reference/constructor.csv',
    'http://127.0.0.1/../package.json',
    '//elsewhere.example/%2e%2e/package.json',
  ])('%s gives no file, and no fault', async (path) => {
    const answer = await raw(path)
    expect(answer).toMatch(/^HTTP\/1\.1 (30[13]|40[0-4]|422) /)
    for (const inside of [secret, '"lampline"', 'root:', 'repositoryformatversion', 'SQLite format'])
      expect(answer).not.toContain(inside)
    // sent on, it stays here
    expect(answer).not.toMatch(/^location: (https?:)?\/\//im)
  })
})

describe('a photo', () => {
  const sent = async (bytes: Buffer, name: string, type: string) =>
    request(test.app)
      .post(`/api/shelf/supplies/${owner}/photos`)
      .attach('photo', bytes, { filename: name, contentType: type })
  const png = (): Promise<Buffer> =>
    sharp({ create: { width: 8, height: 8, channels: 3, background: '#b45f06' } })
      .png()
      .toBuffer()

  it.each([
    [
      'a drawing with a script',
      '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>',
      'image/svg+xml',
    ],
    ['a page', '<!doctype html><script>alert(1)</script>', 'text/html'],
    [
      'a drawing that says it is a JPEG',
      '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>',
      'image/jpeg',
    ],
    ['a moving picture', 'GIF89a\u0001\u0000\u0001\u0000\u0000\u0000\u0000;', 'image/gif'],
    ['a document', '%PDF-1.4 %%EOF', 'image/png'],
  ])('that is %s is refused', async (_name, content, type) => {
    const answer = await sent(Buffer.from(content, 'latin1'), 'plate.jpg', type)
    expect(answer.status).toBe(422)
    expect(answer.body.error.message).toMatch(/JPEG, PNG or WebP/)
  })

  it.each(['../../secret.txt', '..\\..\\secret.png', '/etc/passwd', '.htaccess', 'x.html', `${'a'.repeat(300)}.png`])(
    'named %s is kept under a name of ours, as the picture it is',
    async (name) => {
      const answer = await sent(await png(), name, 'text/html')
      expect(answer.status).toBe(201)
      expect(answer.body.large).toMatch(/^\/photos\/[\w-]{22,64}$/)
      const shown = await request(test.app).get(answer.body.large)
      expect(shown.headers).toMatchObject({
        'content-type': 'image/png',
        'x-content-type-options': 'nosniff',
        'cache-control': 'private, max-age=2592000',
      })
      expect(shown.headers['content-security-policy']).toContain("default-src 'none'")
      await request(test.app).delete(`/api/photos/${answer.body.id}`)
    },
  )

  it('with bytes of a page after its picture is written anew without them', async () => {
    const answer = await sent(
      Buffer.concat([await png(), Buffer.from('<script>alert(1)</script>')]),
      'x.png',
      'image/png',
    )
    const shown = await request(test.app).get(answer.body.large)
    expect((shown.body as Buffer).includes('<script>')).toBe(false)
  })

  it('whose file was replaced by a folder or a link that leads nowhere is not there', async () => {
    const { body } = await sent(await png(), 'x.png', 'image/png')
    const path = photoPath(dataDir, { id: body.id, type: 'image/png' }, 'large')
    rmSync(path)
    symlinkSync(join(dirname(path), 'nowhere'), path)
    expect((await request(test.app).get(body.large)).status).toBe(404)
    rmSync(path)
    mkdirSync(path)
    expect((await request(test.app).get(body.large)).status).toBe(404)
  })

  it.each(['../../../secret', '', 'short', 'a/b/c/d/e/f/g/h/i/j', '.'.repeat(20), `${'a'.repeat(20)}\u0000`])(
    'can have no id that would be a path: %j',
    (id) => {
      expect(() => photoPath(dataDir, { id, type: 'image/png' }, 'large')).toThrow(RangeError)
    },
  )
})

describe('a file to take away', () => {
  it.each(['/api/export', '/api/shelf.csv', '/reference/awg.csv'])('%s is saved, not shown', async (path) => {
    const { status, headers } = await request(test.app).get(path)
    expect(status).toBe(200)
    expect(headers['content-disposition']).toMatch(/^attachment; filename="?[\w-]+\.(json|csv)"?$/)
    expect(headers['x-content-type-options']).toBe('nosniff')
  })
})
