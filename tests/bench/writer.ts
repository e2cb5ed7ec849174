import { createInterface } from 'node:readline'
import { openStore } from '../../server/store/openStore.js'

/**
 * A program that is killed while it writes: told a folder on its input, it adds and changes records there without end
 * and writes a line for each change once the store has acknowledged it.
 */
const draft = (name: string) => ({
  name,
  search: name,
  state: null,
  summary: null,
  body: { name, fill: 'x'.repeat(3000) },
})

const write = async (dataDir: string): Promise<void> => {
  const store = openStore({ dataDir, databaseUrl: undefined, now: Date.now })
  for (let count = 0; ; count += 1) {
    const { id } = await store.add('job', draft(`job ${count}`))
    process.stdout.write(`${id} 1\n`)
    await store.change('job', id, 1, () => draft(`job ${count}, changed`))
    process.stdout.write(`${id} 2\n`)
    await new Promise((resolve) => setImmediate(resolve))
  }
}

process.stdout.write('loaded\n')
createInterface({ input: process.stdin }).once('line', (dataDir) => void write(dataDir))
