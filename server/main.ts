import { mkdirSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { pino } from 'pino'
import { createApp } from './app.js'
import { type Config, readConfig } from './config.js'

function settings(): Config {
  try {
    return readConfig(process.env)
  } catch (error) {
    console.error(`Lampline cannot start with these settings:\n${(error as Error).message}`)
    process.exit(1)
  }
}

const config = settings()
const logger = pino({ level: config.logLevel })
mkdirSync(config.dataDir, { recursive: true })

const server = createServer(createApp({ config, logger, now: Date.now }))
server.on('error', (error) => {
  console.error(`Lampline cannot listen on http://${config.host}:${config.port}: ${error.message}`)
  process.exit(1)
})
server.listen(config.port, config.host, () => {
  const { port } = server.address() as AddressInfo
  console.log(`listening on http://${config.host}:${port}`)
})

function stop(): void {
  server.close(() => process.exit(0))
  server.closeIdleConnections()
  // open keep-alive connections must not hold the process up
  setTimeout(() => server.closeAllConnections(), 2000).unref()
}
process.on('SIGTERM', stop)
process.on('SIGINT', stop)
