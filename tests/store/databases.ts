import { randomBytes } from 'node:crypto'
import { PGlite } from '@electric-sql/pglite'
import { PGLiteSocketServer } from '@electric-sql/pglite-socket'
import pg from 'pg'

/** An empty PostgreSQL database for one test file. */
export interface TestDatabase {
  url: string
  end(): Promise<void>
}

/** PostgreSQL inside this process, reached over a socket as a server is. */
export async function embeddedPostgres(): Promise<TestDatabase> {
  const db = await PGlite.create()
  const server = new PGLiteSocketServer({ db, port: 0, host: '127.0.0.1', maxConnections: 20 })
  await server.start()
  return {
    url: `postgres://postgres:postgres@${server.getServerConn()}/postgres`,
    async end() {
      await server.stop()
      await db.close()
    },
  }
}

/** A database of its own on the server that TEST_DATABASE_URL names. */
export async function serverPostgres(serverUrl: string): Promise<TestDatabase> {
  const name = `lampline_test_${randomBytes(6).toString('hex')}`
  const admin = async (statement: string): Promise<void> => {
    const client = new pg.Client({ connectionString: serverUrl })
    await client.connect()
    await client.query(statement)
    await client.end()
  }
  await admin(`create database ${name}`)
  const url = new URL(serverUrl)
  url.pathname = `/${name}`
  return { url: url.href, end: () => admin(`drop database ${name} with (force)`) }
}
