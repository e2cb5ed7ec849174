import { Pool } from 'undici'
import type { Load, Loaded } from './load.js'

/** The second process: keeps some connections busy for a while, each asking again as soon as it is answered. */
const { address, requests, connections, seconds } = JSON.parse(process.argv[2] as string) as Load

const pool = new Pool(address, { connections })
const tookMs: number[] = []
let refused = 0
const begun = performance.now()
const end = begun + 1000 * seconds

async function ask(connection: number): Promise<void> {
  for (let count = connection; performance.now() < end; count += connections) {
    const { path, method = 'GET', headers = {}, body = null } = requests[count % requests.length] as Load['requests'][0]
    const asked = performance.now()
    const answer = await pool.request({ path, method, headers, body })
    await answer.body.dump({ limit: 10_000_000 })
    tookMs.push(performance.now() - asked)
    if (answer.statusCode !== 200) refused += 1
  }
}

await Promise.all(Array.from({ length: connections }, (_, connection) => ask(connection)))
const took = (performance.now() - begun) / 1000
await pool.close()
tookMs.sort((one, other) => one - other)
const percentile = (share: number): number => tookMs[Math.floor(tookMs.length * share)] ?? Number.NaN
const loaded: Loaded = {
  perSecond: tookMs.length / took,
  medianMs: percentile(0.5),
  slowestOfHundredMs: percentile(0.99),
  refused,
}
console.log(JSON.stringify(loaded))
