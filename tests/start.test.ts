import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it, vi } from 'vitest'
import type { Outcome } from '../server/chain/finding.js'

const shelf = [
  'kind,name,plate',
  ...[5, 12, 19].map((volts) => `supply,Supply ${volts},OUTPUT ${volts}V ⎓ 2A`),
  'machine,Recorder,DC IN 12V ⎓ 1A',
].join('\n')

it('npm start compiles, serves, judges a shelf, and stops when told to', {
  timeout: 120_000,
}, async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-start-'))
  const child = spawn('npm', ['start'], {
    cwd: join(import.meta.dirname, '..'),
    env: { ...process.env, HOST: '127.0.0.1', PORT: '0', DATA_DIR: dataDir, LOG_LEVEL: 'error' },
    stdio: ['ignore', 'pipe', 'inherit'],
    // a group of its own, which is told to stop as a terminal tells it
    detached: true,
  })
  const ended = new Promise((resolve) => child.on('exit', resolve))
  let address = ''
  try {
    let printed = ''
    address = await new Promise<string>((resolve, reject) => {
      child.stdout.on('data', (part) => {
        printed += part
        const found = /listening on (http:\S+)/.exec(printed)
        if (found?.[1]) resolve(found[1])
      })
      child.on('exit', () => reject(new Error(`npm start ended: ${printed}`)))
    })
    const front = await fetch(`${address}/`)
    expect(front.status).toBe(200)
    expect(await front.text()).toContain('</html>')
    const file = { method: 'POST', headers: { 'content-type': 'text/csv' }, body: shelf }
    const brought = await fetch(`${address}/api/shelf.csv?apply=1`, file)
    expect(await brought.text()).toContain('"adds":4')
    const matrix = await fetch(`${address}/api/shelf/matrix?country=DE`)
    const { cells, supplies } = (await matrix.json()) as { cells: Outcome[][]; supplies: { name: string }[] }
    const outcomes = [5, 12, 19].map(
      (volts) => cells[supplies.findIndex(({ name }) => name === `Supply ${volts}`)]?.[0],
    )
    expect(outcomes).toEqual(['stop', 'unknown', 'stop'])
  } finally {
    process.kill(-(child.pid as number), 'SIGINT')
    await ended
    await vi.waitFor(() => expect(fetch(address)).rejects.toThrow('fetch failed'), 20_000)
    rmSync(dataDir, { recursive: true, force: true })
  }
})
