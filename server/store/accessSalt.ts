import { randomBytes } from 'node:crypto'
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

export const accessSaltFile = 'access-salt'
const saltBytes = 32

/**
 * The salt under which the passphrase becomes the key of the sessions, from the data folder; made there once, readable
 * by its owner only, so that browsers stay remembered when Lampline is started again. Deleting the file forgets all.
 *
 * @throws where the folder can neither be read nor written to
 */
export async function accessSalt(dataDir: string): Promise<Buffer> {
  const path = join(dataDir, accessSaltFile)
  const kept = await readFile(path).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return null
    throw error
  })
  if (kept?.length === saltBytes) return kept
  const made = randomBytes(saltBytes)
  await mkdir(dataDir, { recursive: true })
  const unfinished = `${path}.${process.pid}.part`
  await writeFile(unfinished, made, { mode: 0o600 })
  await rename(unfinished, path)
  return made
}
