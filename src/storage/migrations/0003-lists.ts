import type { Kysely } from 'kysely'

/**
 * The household of a case in the lists; and the lists as they are sent: per stream the text of its case and of
 * everything owed in it, with the version that last changed it, so that a device fetches only what is new.
 */
export async function lists(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('cases').addColumn('household', 'text').execute()
  await db.schema.createIndex('cases_contact').on('cases').columns(['clinic', 'contact']).execute()
  await db.schema
    .createTable('list_texts')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('stream', 'text', (column) => column.notNull())
    .addColumn('version', 'bigint', (column) => column.notNull())
    .addColumn('case_text', 'text', (column) => column.notNull())
    .addColumn('owed_text', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('list_texts_key', ['clinic', 'stream'])
    .execute()
  await db.schema.createIndex('list_texts_version').on('list_texts').columns(['clinic', 'version']).execute()
}
