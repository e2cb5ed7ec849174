import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from '../root.js'

/** What decides a judgement: the tables, and the rules that read them. */
const folders = ['reference', 'plate', 'physics', 'chain']

let known: string | undefined

/**
 * Names the tables and rules that judge: equal names judge alike. Twelve hexadecimal figures of a digest over the
 * sources of both, worked out once.
 */
export function dataVersion(): string {
  known ??= digest()
  return known
}

function digest(): string {
  const hash = createHash('sha256')
  for (const folder of folders) {
    const path = join(root, 'server', folder)
    const files = readdirSync(path, { recursive: true, encoding: 'utf8' }).filter((name) => /\.[jt]s$/.test(name))
    for (const file of files.sort()) hash.update(`${folder}/${file}\n`).update(readFileSync(join(path, file)))
  }
  return hash.digest('hex').slice(0, 12)
}
