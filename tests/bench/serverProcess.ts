import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { compiled } from '../support/compiled.js'

const root = join(import.meta.dirname, '../..')

/** What a server holds, in bytes; the heap after collecting. */
export interface Memory {
  heapUsed: number
  rss: number
  external: number
}

export interface ServerProcess {
  /** `http://127.0.0.1:…` */
  address: string
  port: number
  process: ChildProcess
  /** what it wrote to its error output so far */
  said: () => string
  memory: () => Promise<Memory>
  /** tells it to stop and answers with its exit code */
  stop: () => Promise<number | null>
}

/** Starts what `npm start` starts as a process of its own on a free port, and returns when it listens. */
export async function startServer(
  dataDir: string,
  environment: Record<string, string> = {},
  { wrapper, ...account }: { wrapper?: string; uid?: number; gid?: number } = {},
): Promise<ServerProcess> {
  const probe = pathToFileURL(join(import.meta.dirname, 'memoryProbe.js')).href
  const given = ['--expose-gc', '--import', probe, compiled()]
  const [command, ...parts] = wrapper
    ? ['/bin/bash', '-c', `${wrapper}; exec "$0" "$@"`, process.execPath, ...given]
    : [process.execPath, ...given]
  const child = spawn(command as string, parts, {
    cwd: root,
    ...account,
    env: { ...process.env, HOST: '127.0.0.1', PORT: '0', DATA_DIR: dataDir, LOG_LEVEL: 'error', ...environment },
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
  })
  let said = ''
  child.stderr?.on('data', (chunk) => {
    said += chunk
  })
  const address = await new Promise<string>((resolve, reject) => {
    let printed = ''
    child.stdout?.on('data', (chunk) => {
      printed += chunk
      const found = /listening on (http:\S+)/.exec(printed)
      if (found?.[1]) resolve(found[1])
      // log lines: only those that tell of a fault come at this level
      if (printed.length < 100_000) return
      printed = printed.slice(-10_000)
    })
    child.stdout?.on('data', (chunk) => {
      if (/"level":(50|60)/.test(String(chunk))) said += chunk
    })
    child.once('exit', (code) => reject(new Error(`the server ended with ${code}: ${said}`)))
  })
  child.channel?.unref()
  return {
    address,
    port: Number(new URL(address).port),
    process: child,
    said: () => said,
    async memory() {
      const answer = once(child, 'message')
      child.send({})
      return (await answer)[0] as Memory
    },
    async stop() {
      if (child.exitCode !== null) return child.exitCode
      const ended = once(child, 'exit')
      child.kill('SIGTERM')
      return (await ended)[0] as number | null
    },
  }
}
