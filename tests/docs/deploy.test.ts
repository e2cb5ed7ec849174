import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { readConfig } from '../../server/config.js'

const top = join(import.meta.dirname, '../..')
const read = (name: string): string => readFileSync(join(top, 'docs/deploy', name), 'utf8')

const { scripts } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8')) as { scripts: Record<string, string> }

interface Service {
  build?: { context: string; dockerfile: string }
  image?: string
  environment: Record<string, string>
  ports?: string[]
  volumes: string[]
  depends_on?: Record<string, { condition: string }>
  healthcheck?: { test: string[] }
}
interface Compose {
  services: Record<string, Service>
  volumes: Record<string, unknown>
}

/** Dockerfile instructions with continuation lines joined. */
const instructions = read('Dockerfile')
  .replace(/\\\n/g, ' ')
  .split('\n')
  .filter((line) => line.trim() && !line.startsWith('#'))
  .map((line) => /^([A-Z]+)\s+(.*)$/.exec(line))

describe('the Dockerfile', () => {
  it('holds only instructions that exist, starting with FROM', () => {
    const known = ['FROM', 'ENV', 'WORKDIR', 'COPY', 'RUN', 'VOLUME', 'USER', 'EXPOSE', 'HEALTHCHECK', 'CMD']
    expect(instructions.map((match) => match?.[1]).filter((name) => !known.includes(name ?? ''))).toEqual([])
    expect(instructions[0]?.[1]).toBe('FROM')
  })

  it('copies only what is there', () => {
    const sources = instructions
      .filter((match) => match?.[1] === 'COPY')
      .flatMap((match) => (match?.[2] ?? '').split(/\s+/).slice(0, -1))
    expect(sources.length).toBeGreaterThan(4)
    expect(sources.filter((name) => !existsSync(join(top, name)))).toEqual([])
  })

  it('compiles before it gives up the right to write, and starts what `npm start` starts', () => {
    const [compile, user] = ['RUN npm run prestart', 'USER '].map((part) => read('Dockerfile').indexOf(part))
    expect(compile).toBeGreaterThan(0)
    expect(compile).toBeLessThan(user ?? 0)
    const command = instructions.find((match) => match?.[1] === 'CMD')?.[2] ?? ''
    expect((JSON.parse(command) as string[]).join(' ')).toBe(scripts.start)
  })

  it('gives up root before it starts the app, and asks the health address', () => {
    const names = instructions.map((match) => match?.[1])
    expect(names.indexOf('USER')).toBeLessThan(names.indexOf('CMD'))
    expect(read('Dockerfile')).toContain('/healthz')
  })

  it('sets an environment the app accepts once a passphrase is added', () => {
    const env = instructions.filter((match) => match?.[1] === 'ENV').map((match) => match?.[2] ?? '')
    const pairs = env.flatMap((line) => line.split(/\s+/)).map((pair) => pair.split('=') as [string, string])
    const config = readConfig({ ...Object.fromEntries(pairs), PASSPHRASE: 'three dry lamps' })
    expect(config).toMatchObject({ host: '0.0.0.0', port: 8080, dataDir: '/data' })
  })
})

describe.each(['compose.yaml', 'compose.postgres.yaml'])('%s', (name) => {
  const compose = parse(read(name)) as Compose

  it('builds the app from the Dockerfile, asks for a passphrase and keeps the data folder in a volume', () => {
    const app = compose.services.lampline
    expect(existsSync(join(top, 'docs/deploy', app?.build?.context ?? '', app?.build?.dockerfile ?? ''))).toBe(true)
    expect(app?.environment.PASSPHRASE).toMatch(/^\$\{PASSPHRASE:\?/)
    expect(app?.volumes.some((volume) => volume.endsWith(':/data'))).toBe(true)
  })

  it('declares every named volume and service it refers to', () => {
    for (const service of Object.values(compose.services)) {
      for (const volume of service.volumes) expect(compose.volumes).toHaveProperty([volume.split(':')[0] ?? ''])
      for (const other of Object.keys(service.depends_on ?? {})) expect(compose.services).toHaveProperty([other])
    }
  })
})

it('the compose file with PostgreSQL points the app at that database and waits until it answers', () => {
  const { services } = parse(read('compose.postgres.yaml')) as Compose
  const url = new URL((services.lampline?.environment.DATABASE_URL ?? '').replace(/\$\{[^}]*\}/, 'secret'))
  expect(url.protocol).toBe('postgres:')
  expect(services).toHaveProperty([url.hostname])
  expect(services.lampline?.depends_on?.[url.hostname]?.condition).toBe('service_healthy')
  expect(services[url.hostname]?.healthcheck?.test.join(' ')).toContain('pg_isready')
})

describe('the systemd unit', () => {
  const lines = read('lampline.service').split('\n')

  it('has the three sections and only comment, key or empty lines', () => {
    expect(lines.filter((line) => line.startsWith('['))).toEqual(['[Unit]', '[Service]', '[Install]'])
    expect(lines.filter((line) => line && !/^(#|\[|[A-Z][A-Za-z]+=)/.test(line))).toEqual([])
  })

  it('starts what `npm start` starts, under an environment the app accepts', () => {
    expect(lines.find((line) => line.startsWith('ExecStart='))).toBe(`ExecStart=/usr/bin/${scripts.start}`)
    const pairs = lines
      .filter((line) => line.startsWith('Environment='))
      .map((line) => line.slice(12).split('=') as [string, string])
    expect(readConfig(Object.fromEntries(pairs))).toMatchObject({ host: '127.0.0.1', dataDir: '/var/lib/lampline' })
  })
})
