import { spawn } from 'node:child_process'
import { once } from 'node:events'

/** Starts a TypeScript program that serves, as `npm start` does, and waits until it says where it listens. */
export async function serve(
  program: string,
  given: string[],
): Promise<{ address: string; stop: () => Promise<unknown> }> {
  const child = spawn(process.execPath, ['--import', 'tsx', program, ...given], {
    env: { ...process.env, NODE_ENV: 'production' },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const [said] = (await once(child.stdout, 'data')) as [Buffer]
  const address = /listening on (\S+)/.exec(String(said))?.[1]
  if (!address) throw new Error(`${program} did not say where it listens but: ${said}`)
  return {
    address,
    stop: () => {
      const ended = once(child, 'exit')
      child.kill('SIGTERM')
      return ended
    },
  }
}
