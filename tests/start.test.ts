import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { expect, it, vi } from 'vitest'
import type { Outcome } from '../server/chain/finding.js'

/** More than is judged without a thread: supplies of 5, 12 and 19 V, and a machine of 12 V. */
const shelf = [
  'kind,name,plate',
  ...Array.from({ length: 420 }, (_, row) => `supply,Supply ${row},OUTPUT ${[5, 12, 19][row % 3]}V ⎓ 2A`),
  'machine,Recorder,DC IN 12V ⎓ 1A',
].join('\n')

async function finishedMatrix(address: string): Promise<{ cells: Outcome[][]; supplies: { name: string }[] }> {
  for (;;) {
    const answer = await fetch(`${address}/api/shelf/matrix?country=DE`)
    if (answer.status === 200) return (await answer.json()) as Awaited<ReturnType<typeof finishedMatrix>>
    expect(answer.status).toBe(202)
    await wait(200)
  }
}

it('npm start compiles, serves, judges a large shelf in threads, and stops when told to', {
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
    expect(await brought.text()).toContain('"adds":421')
    const { cells, supplies } = await finishedMatrix(address)
    const outcomes = [0, 1, 2].map((row) => cells[supplies.findIndex(({ name }) => name === `Supply ${row}`)]?.[0])
    expect(outcomes).toEqual(['stop', 'unknown', 'stop'])
  } finally {
    process.kill(-(child.pid as number), 'SIGINT')
    await ended
    await vi.waitFor(() => expect(fetch(address)).rejects.toThrow('fetch failed'), 20_000)
    rmSync(dataDir, { recursive: true, force: true })
  }
})
