import {
  CompiledQuery,
  type DatabaseConnection,
  type DialectAdapter,
  type Driver,
  SqliteAdapter,
  SqliteDialect,
  SqliteDriver,
} from 'kysely'
import Database from 'libsql'

/** How long a write waits for another process that writes to the same file [ms]. */
const busyMs = 5000

class WritingDriver extends SqliteDriver {
  /** takes the write lock at once, so that what a transaction reads is what it changes */
  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('begin immediate'))
  }

  /** SQLite undoes a transaction by itself when the disk is full; undoing it again would hide that fault */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    try {
      await super.rollbackTransaction(connection)
    } catch (error) {
      if (!/no transaction is active/.test((error as Error).message)) throw error
    }
  }
}

/** A migration is one transaction here too: one that is broken off leaves nothing half made. */
class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true
  }
}

class WritingDialect extends SqliteDialect {
  constructor(private readonly database: Database.Database) {
    super({ database })
  }

  override createDriver(): Driver {
    return new WritingDriver({ database: this.database })
  }

  override createAdapter(): DialectAdapter {
    return new TransactionalAdapter()
  }
}

/**
 * Opens or makes the file. Write-ahead logging with full synchronisation: a committed change is on the disk, and a
 * process that is killed leaves a file that opens.
 *
 * @param refuse  throws where the file must not be written to; called before anything is
 */
export function openSqlite(
  path: string,
  refuse: (database: Database.Database) => void = () => undefined,
): { database: Database.Database; dialect: SqliteDialect } {
  const database = new Database(path)
  try {
    database.pragma(`busy_timeout = ${busyMs}`)
    refuse(database)
    database.pragma('journal_mode = WAL')
    database.pragma('synchronous = FULL')
  } catch (error) {
    database.close()
    throw error
  }
  return { database, dialect: new WritingDialect(database) }
}
