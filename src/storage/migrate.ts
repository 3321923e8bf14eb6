import { type Kysely, type RawBuilder, sql, type Transaction } from 'kysely'
import { StoreError } from '#actions/store.ts'
import { first } from './migrations/0001-first.ts'
import { people } from './migrations/0002-people.ts'
import { lists } from './migrations/0003-lists.ts'
import { firstCode } from './migrations/0004-first-code.ts'
import { remaking } from './migrations/0005-remaking.ts'
import { ownerLinks } from './migrations/0006-owner-links.ts'
import { operatedEars } from './migrations/0007-operated-ears.ts'
import { earsFollowed } from './migrations/0008-ears-followed.ts'
import { vetLinks } from './migrations/0009-vet-links.ts'
import { earsTroubled } from './migrations/0010-ears-troubled.ts'
import { earsByReason } from './migrations/0011-ears-by-reason.ts'
import { earsByCourse } from './migrations/0012-ears-by-course.ts'
import { earsKnownLate } from './migrations/0013-ears-known-late.ts'
import type { Tables } from './tables.ts'

type Migration = (db: Kysely<unknown>, columns: { readonly bytes: RawBuilder<unknown> }) => Promise<void>

/** Forward only, in this order, for ever: a new one is added at the end, an old one is never edited. */
const migrations: readonly (readonly [name: string, up: Migration])[] = [
  ['0001-first', first],
  ['0002-people', people],
  ['0003-lists', lists],
  ['0004-first-code', firstCode],
  ['0005-remaking', remaking],
  ['0006-owner-links', ownerLinks],
  ['0007-operated-ears', operatedEars],
  ['0008-ears-followed', earsFollowed],
  ['0009-vet-links', vetLinks],
  ['0010-ears-troubled', earsTroubled],
  ['0011-ears-by-reason', earsByReason],
  ['0012-ears-by-course', earsByCourse],
  ['0013-ears-known-late', earsKnownLate],
]

/** The number of the newest tables this program knows. */
export const schemaVersion = migrations.length

/** What the two stores do differently while the tables are made. */
export type MigrationDialect = {
  readonly bytes: 'blob' | 'bytea'
  /** Lets one process at a time migrate; held until the transaction ends. */
  readonly lockMigrations: (tx: Transaction<Tables>) => Promise<void>
}

/**
 * Brings the tables to this program's version, each step in a transaction of its own. Refuses what a newer program wrote.
 * Returns true when there was something to do.
 */
export async function migrate(db: Kysely<Tables>, dialect: MigrationDialect, where: string): Promise<boolean> {
  for (let steps = 0; ; steps += 1) {
    const done = await db.transaction().execute((tx) => oneStep(tx, dialect, where))
    if (done) return steps > 0
  }
}

async function oneStep(tx: Transaction<Tables>, dialect: MigrationDialect, where: string): Promise<boolean> {
  await dialect.lockMigrations(tx)
  await tx.schema
    .createTable('migrations')
    .ifNotExists()
    .addColumn('number', 'integer', (column) => column.primaryKey())
    .addColumn('name', 'text', (column) => column.notNull())
    .execute()
  const newest = await tx.selectFrom('migrations').select('number').orderBy('number', 'desc').limit(1).execute()
  const version = newest[0]?.number ?? 0
  if (version > schemaVersion) throw newerThanThis(where, version)
  const next = migrations[version]
  if (!next) return true
  const [name, up] = next
  await up(tx as unknown as Kysely<unknown>, { bytes: sql.raw(dialect.bytes) })
  await tx
    .insertInto('migrations')
    .values({ number: version + 1, name })
    .execute()
  return false
}

function newerThanThis(where: string, version: number): StoreError {
  return new StoreError(
    'newer',
    `${where} was written by a newer Quiet Ear (tables ${version}; this program knows ${schemaVersion}): start the newer program, or restore an export made with this one.`,
  )
}
