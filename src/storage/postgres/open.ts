import { Kysely, PostgresDialect, sql } from 'kysely'
import pg from 'pg'
import { type Projector, StoreError } from '#actions/store.ts'
import { type OpenStore, openJournal, type StoreDialect } from '../journal-store.ts'
import type { Tables } from '../tables.ts'
import { announce, DatabaseLine } from './database-line.ts'

export type PostgresOptions = {
  readonly project: Projector
  /** Connections this process may hold; any number of processes may serve one database. */
  readonly connections?: number
}

/** Opens the journal on a PostgreSQL server (15 or newer). */
export function openPostgres(databaseUrl: string, { project, connections = 10 }: PostgresOptions): Promise<OpenStore> {
  const pool = new pg.Pool({
    connectionString: databaseUrl,
    max: connections,
    connectionTimeoutMillis: 10_000,
    application_name: 'quiet-ear',
    types: { getTypeParser },
  })
  // A connection that dies while idle is replaced by the pool; unheard, its error would end the process.
  pool.on('error', () => undefined)
  pool.on('connect', (client) => {
    // A server set to answer before the disk has the commit is overruled: accepted means on disk.
    client.query(durable).catch(() => undefined)
  })
  return openJournal(dialectOf(pool, new DatabaseLine(databaseUrl), placeOf(databaseUrl)), project)
}

const durable = `select set_config('synchronous_commit', 'on', false) where current_setting('synchronous_commit') = 'off'`

/** Counts and bigints come as text; ours are far below 2^53, and one that is not is a bug. */
const bigint = 20
function getTypeParser(oid: number, format?: 'text' | 'binary') {
  if (oid === bigint && format !== 'binary') return wholeNumber
  return pg.types.getTypeParser(oid, format as 'text')
}

function wholeNumber(text: string): number {
  const number = Number(text)
  if (!Number.isSafeInteger(number)) throw new Error(`${text} is too large a number to read.`)
  return number
}

function dialectOf(pool: pg.Pool, line: DatabaseLine, where: string): StoreDialect {
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
  return {
    db,
    where,
    bytes: 'bytea',
    lockMigrations: async (tx) => {
      await sql`select pg_advisory_xact_lock(hashtext('quiet-ear migrations'))`.execute(tx)
    },
    // The database's own disk is watched where it is; a full one is refused below.
    beforeWrite: () => undefined,
    explain: (error) => explain(error, where),
    forgetErased: async () => {
      await sql`vacuum entries, kept_aside, register_rows, files, owed, cases, list_texts`.execute(db)
    },
    announce,
    // The database tells every process, this one too.
    committed: () => undefined,
    watch: (listener) => line.watch(listener),
    close: async () => {
      await line.close()
      await db.destroy()
    },
  }
}

/** The database as a person may read it: host and name, without user or password. */
function placeOf(databaseUrl: string): string {
  try {
    const url = new URL(databaseUrl)
    return `The database ${url.host}${url.pathname}`
  } catch {
    return 'The database'
  }
}

function explain(error: unknown, where: string): StoreError | undefined {
  if (error instanceof StoreError || !(error instanceof Error)) return undefined
  const code = 'code' in error && typeof error.code === 'string' ? error.code : ''
  if (code === '53100') {
    const sentence = `Nothing was written: the disk of ${where} is full. Make room; everything accepted so far is safe.`
    return new StoreError('full', sentence, error)
  }
  // 08 connection, 28 sign-in, 3D no such database, 53 resources, 57P shut down, 58 system; otherwise the network's own.
  const lost = /^(08|28|3D|53|57P|58)/.test(code) || /^E[A-Z]+$/.test(code) || isConnectionError(error)
  if (!lost) return undefined
  const sentence = `${where} cannot be reached or used just now: nothing is acknowledged; send again when it is back.`
  return new StoreError('failed', sentence, error)
}

/** The driver says some lost connections only in words. */
function isConnectionError({ message }: Error): boolean {
  return /^(Connection terminated|timeout exceeded when trying to connect|Client has encountered a connection error)/.test(
    message,
  )
}
