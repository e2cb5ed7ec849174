import { PostgresDialect, type PostgresPool } from 'kysely'

/** PostgreSQL's number for its type bigint, which the driver would hand over as text. */
const bigint = 20

const mostConnections = 10

/** How long a connection may take to be made [ms]. */
const connectMs = 5000

/** The driver is loaded only where it is used: most keep their records in the embedded database. */
async function openPool(url: string): Promise<PostgresPool> {
  const { default: pg } = await import('pg')
  const pool = new pg.Pool({
    connectionString: url,
    max: mostConnections,
    connectionTimeoutMillis: connectMs,
    types: {
      getTypeParser: ((oid: number, format?: 'text') =>
        // milliseconds since 1970 stay far below 2^53
        oid === bigint ? Number : pg.types.getTypeParser(oid, format)) as typeof pg.types.getTypeParser,
    },
  })
  // a connection that breaks while idle is replaced at the next query; without a listener it would end the process
  pool.on('error', () => undefined)
  return pool
}

export const openPostgres = (url: string): { dialect: PostgresDialect } => ({
  dialect: new PostgresDialect({ pool: () => openPool(url) }),
})
