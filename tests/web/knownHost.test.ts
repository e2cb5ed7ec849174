import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { readConfig } from '../../server/config.js'
import { hostName } from '../../server/web/guards/knownHost.js'
import { testApp } from './testApp.js'

const passphrase = 'three dry lamps'
const network = { HOST: '0.0.0.0', PASSPHRASE: passphrase }
const names = { ...network, ALLOWED_HOSTS: 'Workshop.local, lampline.example' }

const status = async (environment: Record<string, string>, host: string): Promise<number> =>
  (
    await request(testApp(null, { environment }).app)
      .get('/api/mains')
      .set({ Host: host, Authorization: `Bearer ${passphrase}` })
  ).status

describe('a server on loopback', () => {
  it.each([
    'localhost:8080',
    '127.0.0.1:8080',
    '[::1]:8080',
    'LOCALHOST',
    'localhost.:8080',
    '127.0.0.1:49152',
    '127.1.2.3',
  ])('answers as %s', async (host) => {
    expect(await status({}, host)).toBe(200)
  })

  it.each([
    'rebound.example:8080',
    '192.168.1.20:8080',
    'localhost.rebound.example',
    '127.0.0.1.rebound.example',
    'xn--localhost-:8080',
    '0x7f000001',
    '[::ffff:192.168.1.20]',
    'localhost:8080@rebound.example',
    'two words',
    '',
  ])('does not answer as %j', async (host) => {
    expect(await status({}, host)).toBe(421)
  })

  it('answers neither pages, files nor the health check under a name that is not its own', async () => {
    const { app } = testApp()
    for (const path of ['/', '/jobs', '/api/export', '/static/lampline.css', '/healthz', '/photos/x'])
      expect([path, (await request(app).get(path).set('Host', 'rebound.example')).status]).toEqual([path, 421])
    expect((await request(app).post('/api/jobs').set('Host', 'rebound.example').send({})).status).toBe(421)
  })

  it('says which setting lets the name in, and tells nothing else', async () => {
    const answer = await request(testApp().app).get('/api/export').set('Host', 'bench.example:8080')
    expect(answer.body).toEqual({
      error: {
        message:
          'This server does not answer under the name bench.example. If it is meant to, start it with ALLOWED_HOSTS=bench.example (several names with commas between).',
      },
    })
  })
})

describe('a server on a network', () => {
  it.each(['192.168.1.20:8080', '10.0.0.7', '[fd00::12]:8080', 'localhost:8080', '127.0.0.1:8080'])(
    'answers as the address %s, since the trick needs a name',
    async (host) => {
      expect(await status(network, host)).toBe(200)
    },
  )

  it.each(['workshop.local:8080', 'LAMPLINE.example', 'lampline.example.'])(
    'answers as %s where ALLOWED_HOSTS has it, and only there',
    async (host) => {
      expect(await status(names, host)).toBe(200)
      expect(await status(network, host)).toBe(421)
    },
  )

  it('does not answer under other names', async () => {
    expect(await status(names, 'rebound.example')).toBe(421)
    expect(await status(names, 'x.lampline.example')).toBe(421)
  })

  it('answers as the name it was told to listen on', async () => {
    expect(await status({ HOST: 'bench-pc', PASSPHRASE: passphrase }, 'bench-pc:8080')).toBe(200)
  })
})

describe('the setting ALLOWED_HOSTS', () => {
  it.each(['http://lampline.example', 'lampline.example:8080', '*', 'two words'])('refuses %j in words', (name) => {
    expect(() => readConfig({ ALLOWED_HOSTS: name })).toThrow(/ALLOWED_HOSTS holds names/)
  })

  it('may be empty', () => {
    expect(readConfig({ ALLOWED_HOSTS: '' }).allowedHosts).toEqual([])
    expect(readConfig({ ALLOWED_HOSTS: 'a.example,,B.example ,' }).allowedHosts).toEqual(['a.example', 'b.example'])
  })
})

it.each([
  ['localhost:80', 'localhost'],
  ['[::1]:80', '::1'],
  ['[::1]', '::1'],
  ['Bench.Example.', 'bench.example'],
  ['a:b', null],
  ['a/b', null],
  ['::1', null],
  [undefined, null],
])('the name in the header Host: %j is %j', (header, name) => {
  expect(hostName(header)).toBe(name)
})
