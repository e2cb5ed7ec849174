import { spawn } from 'node:child_process'
import { text } from 'node:stream/consumers'

export interface Asked {
  /** `{n}` in it is another number in each request */
  path: string
  method?: 'GET' | 'POST'
  headers?: Record<string, string>
  body?: string
}

/** A server, and what it is asked in turn. */
export interface Side {
  address: string
  requests: Asked[]
}

export interface Load {
  /** loaded one after the other in each round */
  sides: Side[]
  connections: number
  /** of each side in each round */
  seconds: number
  rounds: number
}

export interface Loaded {
  perSecond: number
  /** answers other than 200 */
  refused: number
}

/** Loads servers in turn from a second process; answers with each round, and in it each side. */
export async function load(how: Load): Promise<Loaded[][]> {
  const program = new URL('./loadProgram.ts', import.meta.url).pathname
  const child = spawn(process.execPath, ['--import', 'tsx', program, JSON.stringify(how)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const loaded = JSON.parse(await text(child.stdout)) as Loaded[][]
  for (const [index, { address }] of how.sides.entries()) {
    const refused = loaded.reduce((sum, round) => sum + (round[index]?.refused ?? 0), 0)
    if (refused > 0) throw new Error(`${refused} requests to ${address} were not answered with 200`)
  }
  return loaded
}
