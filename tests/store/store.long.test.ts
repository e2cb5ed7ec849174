import { embeddedPostgres, serverPostgres } from './databases.js'
import { keepsPromises, type Place } from './promises.js'

const socket = async (): Promise<Place> => {
  const { url, end } = await embeddedPostgres()
  return { dataDir: null, databaseUrl: url, end }
}

const server = (serverUrl: string) => async (): Promise<Place> => {
  const { url, end } = await serverPostgres(serverUrl)
  return { dataDir: null, databaseUrl: url, end }
}

const serverUrl = process.env.TEST_DATABASE_URL

keepsPromises([
  ['PostgreSQL in this process, over its socket', socket],
  ...(serverUrl ? [['a PostgreSQL server', server(serverUrl)] as [string, () => Promise<Place>]] : []),
])
