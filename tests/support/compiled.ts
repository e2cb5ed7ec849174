import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, renameSync, rmdirSync } from 'node:fs'
import { join } from 'node:path'

const top = join(import.meta.dirname, '../..')
let program: string | undefined

/**
 * Compiles as `npm start` does, once a process, and answers with the program's file. What is there is replaced whole, so
 * that others may start it at the same moment.
 */
export function compiled(): string {
  program ??= compile()
  return program
}

function compile(): string {
  const built = join(top, 'built')
  mkdirSync(built, { recursive: true })
  const own = mkdtempSync(join(built, 'part-'))
  execFileSync('npm', ['run', 'prestart', '--silent', '--', `--outdir=${own}`], { cwd: top })
  for (const file of readdirSync(own)) renameSync(join(own, file), join(built, file))
  rmdirSync(own)
  return join(built, 'main.js')
}
