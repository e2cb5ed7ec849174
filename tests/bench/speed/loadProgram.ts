import { Pool } from 'undici'
import type { Load, Loaded } from './load.js'
import { median } from './measured.js'

/** The second process: keeps some connections busy for a while, each asking again as soon as it is answered. */
const { address, paths, connections, seconds } = JSON.parse(process.argv[2] as string) as Load

const pool = new Pool(address, { connections })
const took: number[] = []
let refused = 0
const begun = performance.now()
const end = begun + 1000 * seconds

async function ask(connection: number): Promise<void> {
  for (let count = connection; performance.now() < end; count += connections) {
    const sent = performance.now()
    const answer = await pool.request({ path: paths[count % paths.length] as string, method: 'GET' })
    await answer.body.dump({ limit: 10_000_000 })
    took.push(performance.now() - sent)
    if (answer.statusCode !== 200) refused += 1
  }
}

await Promise.all(Array.from({ length: connections }, (_, connection) => ask(connection)))
const perSecond = (1000 * took.length) / (performance.now() - begun)
await pool.close()
console.log(JSON.stringify({ perSecond, middleMs: median(took), refused } satisfies Loaded))
