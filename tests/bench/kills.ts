import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import Database from 'libsql'
import { expect } from 'vitest'
import { databaseFile, openStore } from '../../server/store/openStore.js'

/** Programs loaded ahead, so that one is ready when the one before is killed. */
const ahead = 3

/** The writer as one plain file: programs that compile themselves take long to start. */
async function compiledWriter(folder: string): Promise<string> {
  const outfile = join(folder, 'writer.mjs')
  await build({
    entryPoints: [join(import.meta.dirname, 'writer.ts')],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    // packages with binaries stay packages; the file lies in the project so that they are found
    external: ['libsql', 'pg'],
  })
  return outfile
}

interface Loaded {
  process: ChildProcess
  /** all it wrote so far */
  output: () => string
  loaded: Promise<void>
  ended: Promise<void>
}

function load(writer: string): Loaded {
  const child = spawn(process.execPath, [writer], { stdio: ['pipe', 'pipe', 'inherit'] })
  let text = ''
  child.stdout.setEncoding('utf8')
  const loaded = new Promise<void>((resolve) => {
    child.stdout.on('data', (chunk: string) => {
      text += chunk
      resolve()
    })
  })
  const ended = new Promise<void>((resolve) => child.on('close', () => resolve()))
  return { process: child, output: () => text, loaded, ended }
}

/** The versions that were acknowledged, by id; a line that was cut off was not. */
const acknowledged = (output: string): Map<string, number> =>
  new Map(
    output
      .split('\n')
      .slice(1, -1)
      .map((line) => line.split(' '))
      .map(([id = '', version]) => [id, Number(version)]),
  )

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

/** Kills a process so many times while it writes, and expects no acknowledged write to be lost. */
export async function surviveKills(kills: number): Promise<void> {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-kill-'))
  const all = new Map<string, number>()
  const compiled = mkdtempSync(join(import.meta.dirname, '../../node_modules/.lampline-kill-'))
  const writer = await compiledWriter(compiled)
  const queue = Array.from({ length: ahead }, () => load(writer))
  let withWrites = 0
  for (let kill = 0; kill < kills; kill += 1) {
    const next = queue.shift() as Loaded
    if (kill + ahead < kills) queue.push(load(writer))
    await next.loaded
    next.process.stdin?.write(`${dataDir}\n`)
    // every tenth while the file is being opened, the others at some moment of the writing
    if (kill % 10 > 0) while (acknowledged(next.output()).size === 0) await pause(2)
    await pause((kill * 7) % 30)
    next.process.kill('SIGKILL')
    await next.ended
    const writes = acknowledged(next.output())
    if (writes.size > 0) withWrites += 1
    for (const [id, version] of writes) all.set(id, version)
  }

  const store = openStore({ dataDir, databaseUrl: undefined, now: Date.now })
  const kept = new Map((await store.held([...all.keys()])).map(({ id, version }) => [id, version]))
  const lost = [...all].filter(([id, version]) => (kept.get(id) ?? 0) < version)
  await store.close()
  const database = new Database(join(dataDir, databaseFile))
  const [check] = database.prepare('pragma integrity_check').all([])
  database.close()
  rmSync(dataDir, { recursive: true })
  rmSync(compiled, { recursive: true })

  expect(check).toEqual({ integrity_check: 'ok' })
  expect(lost).toEqual([])
  // the kills must have met writing, or nothing was proved
  expect(withWrites).toBeGreaterThanOrEqual(kills * 0.9)
  expect(all.size).toBeGreaterThan(kills)
}
