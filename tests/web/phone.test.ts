import jsqr from 'jsqr'
import sharp from 'sharp'
import request from 'supertest'
import { describe, expect, it, vi } from 'vitest'
import { lanAddress, phoneAddress } from '../../server/web/parts/phoneAddress.js'
import { qr } from '../../server/web/parts/qr.js'
import { matching } from './exampleChecks.js'
import { testApp } from './testApp.js'

// its types describe an ES module, its file is a CommonJS one
const jsQR = jsqr as unknown as typeof jsqr.default

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

const passphrase = 'three dry lamps'
const shared = { HOST: '0.0.0.0', PASSPHRASE: passphrase }
const id = 'Bq3xW_0mZ-8rT1uY5vKc2A'

/** What a reader independent of ours makes of a drawing. */
async function decode(svg: string): Promise<string | undefined> {
  const { data, info } = await sharp(Buffer.from(svg))
    .resize(400, 400, { kernel: 'nearest' })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true })
  return jsQR(new Uint8ClampedArray(data), info.width, info.height, { inversionAttempts: 'dontInvert' })?.data
}

describe('a QR code', () => {
  it.each([
    `http://192.168.1.20:8080/jobs/${id}`,
    `http://workshop.example:8080/jobs/${id}`,
    `http://[fd00::12]/jobs/${id}`,
  ])('of %s is read back by another program', async (address) => {
    const { size, path } = qr(address)
    const drawing = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}"><rect width="${size}" height="${size}" fill="#fff"/><path d="${path}"/></svg>`
    expect(await decode(drawing)).toBe(address)
  })

  it('leaves four light modules free on each side', () => {
    const { size, path } = qr('http://192.168.1.20')
    const runs = [...path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map(([, x, y, length]) => [
      Number(x),
      Number(y),
      Number(length),
    ])
    expect(Math.min(...runs.map(([x = 0]) => x))).toBe(4)
    expect(Math.min(...runs.map(([, y = 0]) => y))).toBe(4)
    expect(Math.max(...runs.map(([x = 0, , length = 0]) => x + length))).toBe(size - 4)
    expect(Math.max(...runs.map(([, y = 0]) => y + 1))).toBe(size - 4)
  })
})

describe('the address for a phone', () => {
  const asked = { listensOn: '0.0.0.0', protocol: 'http', host: 'localhost:8080', lan: '192.168.1.20', path: '/jobs/x' }

  it.each([
    ['is none where the server listens on loopback only', { listensOn: '127.0.0.1' }, null],
    ['is none on the IPv6 loopback either', { listensOn: '::1' }, null],
    ['is the host the browser used', { host: 'bench.example:8080' }, 'http://bench.example:8080/jobs/x'],
    ['is the host without a port where it used none', { host: '10.0.0.7' }, 'http://10.0.0.7/jobs/x'],
    ['is an IPv6 host as it used it', { host: '[fd00::12]:8080' }, 'http://[fd00::12]:8080/jobs/x'],
    ['is the machine’s own where it used localhost', {}, 'http://192.168.1.20:8080/jobs/x'],
    ['is the machine’s own where it used 127.0.0.1', { host: '127.0.0.1:8080' }, 'http://192.168.1.20:8080/jobs/x'],
    ['is the machine’s own where it used ::1', { host: '[::1]:8080' }, 'http://192.168.1.20:8080/jobs/x'],
    ['is none where the machine has none', { lan: null }, null],
    ['is none where the Host header is missing', { host: undefined }, null],
    ['is none where the Host header is no host', { host: 'a"><b:80/' }, null],
  ])('%s', (_rule, over, expected) => {
    expect(phoneAddress({ ...asked, ...over })).toBe(expected)
  })

  const face = (address: string, over: object = {}) => ({
    address,
    netmask: '255.255.255.0',
    family: 'IPv4' as const,
    mac: '02:00:00:00:00:01',
    internal: false,
    cidr: null,
    ...over,
  })

  it.each([
    ['private before public', { a: [face('203.0.113.5')], b: [face('192.168.1.20')] }, '192.168.1.20'],
    ['public where there is no other', { a: [face('203.0.113.5')] }, '203.0.113.5'],
    ['none of loopback', { lo: [face('127.0.0.1', { internal: true })] }, null],
    ['none that the machine gave itself for want of a network', { a: [face('169.254.8.1')] }, null],
    ['172.31 as private and 172.32 not', { a: [face('172.32.0.1')], b: [face('172.31.0.1')] }, '172.31.0.1'],
    ['none where there is nothing', {}, null],
  ])('on a network is %s', (_rule, interfaces, expected) => {
    expect(lanAddress(interfaces)).toBe(expected)
  })
})

describe('the page of a job', () => {
  const page = async (environment: Record<string, string>, host: string, lan: string | null = null) => {
    const { app } = testApp(null, { environment, lan })
    const bearer = { Authorization: `Bearer ${passphrase}` }
    const made = await request(app).post('/api/jobs').set(bearer).send({ name: 'Tape recorder', check: matching })
    const { text } = await request(app)
      .get(`/jobs/${made.body.id}`)
      .set({ ...bearer, Host: host })
    return { text, path: `/jobs/${made.body.id}`, app }
  }

  it('shows the code with its address as a link, and another program reads the same address from it', async () => {
    const { text, path } = await page(shared, '192.168.1.20:8080')
    const address = `http://192.168.1.20:8080${path}`
    expect(text).toContain(`<a href="${address}">${address}</a>`)
    const drawing = /<svg class="qr".*?<\/svg>/s.exec(text)?.[0] ?? ''
    expect(drawing).toContain('role="img"')
    expect(drawing).not.toContain('style=')
    expect(await decode(drawing.replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" '))).toBe(address)
  })

  it('never shows the passphrase', async () => {
    const { text } = await page(shared, '192.168.1.20:8080')
    expect(text).not.toContain(passphrase)
  })

  it('shows no code where the server listens on loopback only', async () => {
    const { text } = await page({}, '192.168.1.20:8080', '192.168.1.20')
    expect(text).not.toContain('class="qr"')
    expect(text).not.toContain('This job on a phone')
  })

  it('says what to do where no address is known', async () => {
    const { text } = await page(shared, 'localhost:8080')
    expect(text).not.toContain('class="qr"')
    expect(text).toContain('Open this page under the address that this machine has')
  })

  it('asks a phone that comes by the code for the passphrase, once, and then shows the job', async () => {
    const { path, app } = await page(shared, '192.168.1.20:8080')
    const asked = await request(app).get(path)
    expect([asked.status, asked.headers.location]).toEqual([303, `/enter?to=${encodeURIComponent(path)}`])
    const phone = request.agent(app)
    const entered = await phone.post('/enter').type('form').send({ passphrase, to: path })
    expect(entered.headers.location).toBe(path)
    expect((await phone.get(path)).status).toBe(200)
  })

  it('leads back to the page, not to the address of its form, when the passphrase is asked for in between', async () => {
    const { path, app } = await page(shared, '192.168.1.20:8080')
    const send = request(app)
      .post(`${path}/readings`)
      .set({ Host: '192.168.1.20:8080', Origin: 'http://192.168.1.20:8080' })
    const answer = await send.set('Referer', `http://192.168.1.20:8080${path}`).type('form').send({ value: '1' })
    expect([answer.status, answer.headers.location]).toEqual([303, `/enter?to=${encodeURIComponent(path)}`])
  })
})
