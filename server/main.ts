import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { networkInterfaces } from 'node:os'
import { resolve } from 'node:path'
import { createApp } from './app.js'
import { type Config, readConfig } from './config.js'
import { connectionTimes, limitConnections } from './connections.js'
import { createLogger } from './log.js'
import { finishRequests } from './stop.js'
import { accessSalt } from './store/accessSalt.js'
import { copyDaily } from './store/copies.js'
import { databaseFile, openStore } from './store/openStore.js'
import { removePhotoFiles } from './store/photoFiles.js'
import { storageFault } from './store/storageFault.js'
import { faultsOfTables } from './tables/validate.js'
import { lanAddress } from './web/parts/phoneAddress.js'
import { answerUnreadable, longestHeader } from './web/unreadable.js'

function settings(): Config {
  try {
    return readConfig(process.env)
  } catch (error) {
    console.error(`Lampline cannot start with these settings:\n${(error as Error).message}`)
    process.exit(1)
  }
}

const faults = faultsOfTables()
if (faults.length > 0) throw new Error(`The reference tables are at fault:\n${faults.join('\n')}`)

const config = settings()
const logger = createLogger(config)
const store = openStore({ dataDir: config.dataDir, databaseUrl: config.databaseUrl, now: Date.now })

// checks need nothing that is kept, so a store that cannot be opened is told and tried again at the next use
await store.ready().catch((error: unknown) => {
  const fault = storageFault(error)
  if (!fault) throw error
  console.error(
    `Lampline starts without its records: ${fault.message}\n${(fault.cause as Error).message}\nDATA_DIR is ${resolve(config.dataDir)}`,
  )
})

/** Forgets for good what was deleted more than 30 days ago, and makes the copy of the day. */
async function tidy(): Promise<void> {
  for (const photo of await store.purge()) await removePhotoFiles(config.dataDir, photo)
  if (config.databaseUrl === undefined) await copyDaily(config.dataDir, databaseFile, Date.now())
}
const tidyLater = (): void => {
  tidy().catch((error: unknown) => logger.warn({ error }, 'the daily tidying of the records was not finished'))
}
tidyLater()
// several times a day, because a machine that sleeps at night may sleep through one
setInterval(tidyLater, 6 * 3600 * 1000).unref()

const lan = (): string | null => lanAddress(networkInterfaces())

const salt =
  config.passphrase === undefined
    ? undefined
    : await accessSalt(config.dataDir).catch((error: Error) => {
        console.error(`Browsers are asked for the passphrase again when Lampline is started again: ${error.message}`)
        return undefined
      })

let stopping = false

const server = createServer(
  { maxHeaderSize: longestHeader, ...connectionTimes },
  createApp({ config, logger, store, now: Date.now, lan, salt, stopping: () => stopping }),
)
limitConnections(server)
server.on('clientError', answerUnreadable)
server.on('error', (error) => {
  console.error(`Lampline cannot listen on http://${config.host}:${config.port}: ${error.message}`)
  process.exit(1)
})
server.listen(config.port, config.host, () => {
  const { port } = server.address() as AddressInfo
  const host = config.host.includes(':') ? `[${config.host}]` : config.host
  console.log(`listening on http://${host}:${port}`)
})

/** The longest that requests under way are waited for [ms]; a container is killed after 10 s. */
const stopWithinMs = 8000
/** And that the store is waited for after them [ms]. */
const storeWithinMs = 1500

async function stop(): Promise<void> {
  // asked twice, somebody is in a hurry
  if (stopping) process.exit(0)
  stopping = true
  if (!(await finishRequests(server, stopWithinMs)))
    logger.warn(`requests that took longer than ${stopWithinMs} ms to stop were cut off`)
  // a database that is gone must not hold the process up
  setTimeout(() => process.exit(0), storeWithinMs)
  await store.close().catch((error: unknown) => logger.error({ error }, 'the store could not be closed'))
  process.exit(0)
}
process.on('SIGTERM', stop)
process.on('SIGINT', stop)
