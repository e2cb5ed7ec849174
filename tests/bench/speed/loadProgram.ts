import { Pool } from 'undici'
import type { Asked, Load, Loaded } from './load.js'

/** The second process: keeps some connections busy for a while, each asking again as soon as it is answered. */
const { sides, connections, seconds, rounds } = JSON.parse(process.argv[2] as string) as Load

let number = 0

async function loadOnce(pool: Pool, requests: Asked[]): Promise<Loaded> {
  let answered = 0
  let refused = 0
  const begun = performance.now()
  const end = begun + 1000 * seconds
  const ask = async (connection: number): Promise<void> => {
    for (let count = connection; performance.now() < end; count += connections) {
      const { path, method = 'GET', headers = {}, body = null } = requests[count % requests.length] as Asked
      const answer = await pool.request({ path: path.replaceAll('{n}', String(number++)), method, headers, body })
      await answer.body.dump({ limit: 10_000_000 })
      answered += 1
      if (answer.statusCode !== 200) refused += 1
    }
  }
  await Promise.all(Array.from({ length: connections }, (_, connection) => ask(connection)))
  const took = (performance.now() - begun) / 1000
  return { perSecond: answered / took, refused }
}

const pools = sides.map(({ address, requests }) => ({ pool: new Pool(address, { connections }), requests }))
const loaded: Loaded[][] = []
for (let round = 0; round < rounds; round += 1) {
  const turn: Loaded[] = []
  for (const { pool, requests } of pools) turn.push(await loadOnce(pool, requests))
  loaded.push(turn)
}
await Promise.all(pools.map(({ pool }) => pool.close()))
console.log(JSON.stringify(loaded))
