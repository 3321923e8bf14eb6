import type { Kysely } from 'kysely'

/**
 * How often the house changed something that every list reads, and for which of these changes each stream's lists were
 * made: those behind are made again a few at a time. Never edited again.
 */
export async function remaking(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .alterTable('clinics')
    .addColumn('lists_wanted', 'bigint', (column) => column.notNull().defaultTo(0))
    .execute()
  await db.schema
    .alterTable('list_texts')
    .addColumn('made_for', 'bigint', (column) => column.notNull().defaultTo(0))
    .execute()
  // With the stream in it, how far they are is counted without reading the texts themselves.
  await db.schema
    .createIndex('list_texts_made_for')
    .on('list_texts')
    .columns(['clinic', 'made_for', 'stream'])
    .execute()
}
