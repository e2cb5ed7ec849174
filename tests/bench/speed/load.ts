import { spawn } from 'node:child_process'
import { text } from 'node:stream/consumers'

export interface Load {
  address: string
  /** asked in turn */
  paths: string[]
  connections: number
  seconds: number
}

export interface Loaded {
  perSecond: number
  /** how long an answer took in the middle [ms] */
  middleMs: number
  /** answers other than 200 */
  refused: number
}

/** Loads a server from a second process. */
export async function load(how: Load): Promise<Loaded> {
  const program = new URL('./loadProgram.ts', import.meta.url).pathname
  const child = spawn(process.execPath, ['--import', 'tsx', program, JSON.stringify(how)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const loaded = JSON.parse(await text(child.stdout)) as Loaded
  if (loaded.refused > 0) throw new Error(`${loaded.refused} requests to ${how.address} were not answered with 200`)
  return loaded
}
