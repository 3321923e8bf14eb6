import { CompiledQuery, type DatabaseConnection, type Driver, SqliteDialect, SqliteDriver } from 'kysely'
import type Database from 'libsql'

/** Kysely's own SQLite dialect, except that a transaction takes the write lock at once instead of at its first write. */
export class ImmediateSqliteDialect extends SqliteDialect {
  readonly #database: Database.Database

  constructor(database: Database.Database) {
    super({ database: database as never })
    this.#database = database
  }

  override createDriver(): Driver {
    return new ImmediateSqliteDriver(this.#database)
  }
}

class ImmediateSqliteDriver extends SqliteDriver {
  readonly #database: Database.Database

  constructor(database: Database.Database) {
    super({ database: database as never })
    this.#database = database
  }

  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('begin immediate'))
  }

  /** A full disk may have rolled the transaction back already; rolling back twice would hide why. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#database.inTransaction) await connection.executeQuery(CompiledQuery.raw('rollback'))
  }
}
