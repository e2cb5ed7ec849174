import { Agent } from 'node:http'
import { type Sent, send } from '../fuzz/client.js'

/** One kind of request in the mix. */
export interface LoadKind {
  name: string
  /** share of all requests */
  weight: number
  /** sends one and throws where its answer is not as it should be */
  once: (ask: Ask) => Promise<void>
}

export type Ask = (sent: Sent) => Promise<{ status: number; text: string }>

/** How long one request took from the moment it was due [ms]: a server that stalls delays all that were due meanwhile. */
export interface Timed {
  kind: string
  ms: number
}

/** Draws kinds in proportion to their weights, the same way for the same seed. */
export function drawing(kinds: readonly LoadKind[], seed: number): () => LoadKind {
  const total = kinds.reduce((sum, { weight }) => sum + weight, 0)
  let state = seed >>> 0
  return () => {
    // a linear congruential generator of 32 bits (multiplier and increment of Numerical Recipes, from memory)
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    let at = (state / 2 ** 32) * total
    for (const kind of kinds) {
      at -= kind.weight
      if (at < 0) return kind
    }
    return kinds[kinds.length - 1] as LoadKind
  }
}

export interface Load {
  port: number
  kinds: readonly LoadKind[]
  perSecond: number
  seconds: number
  seed: number
  timed: (one: Timed) => void
  failed: (kind: string, error: Error) => void
}

/** Sends requests at a steady rate whatever the answers take, and returns when all are answered. */
export async function steadyLoad({ port, kinds, perSecond, seconds, seed, timed, failed }: Load): Promise<number> {
  const agent = new Agent({ keepAlive: true, maxSockets: 256 })
  const ask: Ask = async (sent) => {
    const { status, text } = await send(agent, port, sent)
    return { status, text }
  }
  const draw = drawing(kinds, seed)
  const count = Math.round(perSecond * seconds)
  const began = performance.now()
  const all: Promise<void>[] = []
  for (let index = 0; index < count; index += 1) {
    const due = began + (index * 1000) / perSecond
    const wait = due - performance.now()
    if (wait > 1) await new Promise((resolve) => setTimeout(resolve, wait))
    const kind = draw()
    all.push(
      kind
        .once(ask)
        .catch((error: Error) => failed(kind.name, error))
        .then(() => timed({ kind: kind.name, ms: performance.now() - due })),
    )
  }
  await Promise.all(all)
  agent.destroy()
  return count
}
