import type { Kysely } from 'kysely'

/** The hash of the one-time code for the first account: one row, whichever of several processes made it. */
export async function firstCode(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('first_code')
    .addColumn('only', 'integer', (column) => column.primaryKey())
    .addColumn('hash', 'text', (column) => column.notNull())
    .addColumn('made_at', 'text', (column) => column.notNull())
    .execute()
}
