import { Agent } from 'node:http'
import { send } from '../fuzz/client.js'
import { startServer } from '../serverProcess.js'
import { Ledger, lostOf, workshop } from './kept.js'
import { steadyLoad } from './load.js'
import type { SoakResult } from './report.js'

export interface Soak {
  dataDir: string
  seconds: number
  perSecond: number
  seed: number
  /** how often memory is measured [s] */
  every?: number
  progress?: (second: number, heapUsed: number) => void
}

/** Runs the mixed load on a server of its own, stops it, starts it again and looks for every acknowledged write. */
export async function soak({ dataDir, seconds, perSecond, seed, every = 30, progress }: Soak): Promise<SoakResult> {
  const server = await startServer(dataDir)
  const ledger = new Ledger()
  const result: SoakResult = {
    seconds,
    perSecond,
    count: 0,
    timed: [],
    measured: [],
    failed: [],
    lost: [],
    acknowledged: 0,
  }
  // the first of each kind compiles its view; what the mix is about must be there before it begins
  const warming = new Agent({ keepAlive: true })
  const kinds = workshop(ledger)
  for (const { once } of [...kinds, ...kinds].reverse())
    await once(async (sent) => {
      const { status, text } = await send(warming, server.port, sent)
      return { status, text }
    })
  warming.destroy()
  const began = performance.now()
  const measure = async (): Promise<void> => {
    const memory = await server.memory()
    const second = Math.round((performance.now() - began) / 1000)
    result.measured.push({ second, memory })
    progress?.(second, memory.heapUsed)
  }
  await measure()
  const measuring = setInterval(() => void measure(), every * 1000)
  result.count = await steadyLoad({
    port: server.port,
    kinds,
    perSecond,
    seconds,
    seed,
    timed: (one) => result.timed.push(one),
    failed: (kind, error) => result.failed.push(`${kind}: ${error.message}`),
  })
  clearInterval(measuring)
  await measure()
  const code = await server.stop()
  if (code !== 0) result.failed.push(`the server ended with ${code}: ${server.said()}`)

  const again = await startServer(dataDir)
  const agent = new Agent({ keepAlive: true })
  result.lost = await lostOf(ledger, async (sent) => {
    const { status, text } = await send(agent, again.port, sent)
    return { status, text }
  })
  agent.destroy()
  await again.stop()
  result.acknowledged = ledger.records.size + [...ledger.entries.values()].flat().length
  return result
}
