import { existsSync } from 'node:fs'
import { mkdir, readdir, rename, rm, stat, statfs } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'

/** Where copies of the database file lie, under the data folder. */
export const copiesFolder = 'backups'

/** How many daily copies are kept. */
export const mostDaily = 7

/** A copy is made only where so many times the file's size is free, so that copies never fill the disk. */
const leastFree = 3

const daily = /^day-\d{4}-\d{2}-\d{2}\.sqlite$/

/** Copies the file as it is at this moment, in a thread of its own: others go on reading and writing. */
const copying = `
const { workerData } = require('node:worker_threads')
const Database = require(workerData.driver)
const from = new Database(workerData.from)
from.pragma('busy_timeout = 5000')
from.prepare('vacuum into ?').run([workerData.to])
from.close()
const copy = new Database(workerData.to)
const [result] = copy.prepare('pragma quick_check(1)').all([])
copy.close()
if (result.quick_check !== 'ok') throw new Error('the copy is not whole: ' + result.quick_check)
`

const copyWhole = (from: string, to: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const driver = createRequire(import.meta.url).resolve('libsql')
    const thread = new Worker(copying, { eval: true, workerData: { driver, from, to }, execArgv: [] })
    thread.on('error', reject)
    thread.on('exit', () => resolve())
  })

/** The copies there are, the one made last first. */
export async function copiesIn(dataDir: string): Promise<string[]> {
  const folder = join(dataDir, copiesFolder)
  const names = (await readdir(folder).catch(() => [] as string[])).filter((name) => name.endsWith('.sqlite'))
  const made = await Promise.all(names.map(async (name) => ({ name, at: (await stat(join(folder, name))).mtimeMs })))
  return made.sort((one, other) => other.at - one.at).map(({ name }) => `${copiesFolder}/${name}`)
}

/**
 * Makes today's copy of the database file where there is none yet, and takes away the oldest beyond the most that are
 * kept. An unfinished copy never has the name of a whole one.
 *
 * @returns the copy's name; null where today's is there already
 * @throws where there is too little room, or the file cannot be read whole
 */
export async function copyDaily(dataDir: string, file: string, now: number): Promise<string | null> {
  const from = join(dataDir, file)
  const folder = join(dataDir, copiesFolder)
  const name = `day-${new Date(now).toISOString().slice(0, 10)}.sqlite`
  const to = join(folder, name)
  if (existsSync(to) || !existsSync(from)) return null
  const { bavail, bsize } = await statfs(dataDir)
  if (bavail * bsize < leastFree * (await stat(from)).size)
    throw new Error('there is too little room on the disk for a copy of the records')
  await mkdir(folder, { recursive: true })
  const unfinished = `${to}.part`
  await rm(unfinished, { force: true })
  try {
    await copyWhole(from, unfinished)
    await rename(unfinished, to)
  } catch (error) {
    await rm(unfinished, { force: true })
    throw error
  }
  const names = (await copiesIn(dataDir)).filter((copy) => daily.test(copy.slice(copiesFolder.length + 1)))
  for (const old of names.slice(mostDaily)) await rm(join(dataDir, old), { force: true })
  return name
}
