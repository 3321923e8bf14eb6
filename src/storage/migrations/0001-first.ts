import { type Kysely, type RawBuilder, sql } from 'kysely'

/** The first tables. Never edited again: a data file made by it is kept in tests/fixtures and must open for ever. */
export async function first(db: Kysely<unknown>, columns: { readonly bytes: RawBuilder<unknown> }): Promise<void> {
  await journal(db)
  await keptBeside(db, columns.bytes)
  await projections(db)
}

async function journal(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('clinics')
    .addColumn('clinic', 'text', (column) => column.primaryKey())
    .addColumn('position', 'bigint', (column) => column.notNull())
    .execute()
  await db.schema
    .createTable('entries')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('position', 'bigint', (column) => column.notNull())
    .addColumn('stream', 'text', (column) => column.notNull())
    .addColumn('sequence', 'bigint', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('kind', 'text', (column) => column.notNull())
    .addColumn('header', 'text', (column) => column.notNull())
    .addColumn('body', 'text')
    .addColumn('body_hash', 'text', (column) => column.notNull())
    .addColumn('received_at', 'text', (column) => column.notNull())
    .addColumn('corrected_at', 'text', (column) => column.notNull())
    .addColumn('order_certain', 'integer', (column) => column.notNull())
    .addColumn('late', 'text')
    .addColumn('previous', 'text')
    .addColumn('hash', 'text', (column) => column.notNull())
    .addColumn('erased_on', 'text')
    .addColumn('erased_by', 'text')
    .addPrimaryKeyConstraint('entries_key', ['clinic', 'position'])
    .addUniqueConstraint('entries_id', ['clinic', 'id'])
    .addUniqueConstraint('entries_stream', ['clinic', 'stream', 'sequence'])
    .execute()
  await db.schema.createIndex('entries_kind').on('entries').columns(['clinic', 'kind', 'position']).execute()
  await db.schema
    .createTable('targets')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('entry', 'text', (column) => column.notNull())
    .addColumn('role', 'text', (column) => column.notNull().check(sql`role in ('supersedes', 'withdraws', 'erases')`))
    .addColumn('target', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('targets_key', ['clinic', 'entry', 'role', 'target'])
    .addForeignKeyConstraint('targets_entry', ['clinic', 'entry'], 'entries', ['clinic', 'id'])
    .execute()
  await db.schema.createIndex('targets_target').on('targets').columns(['clinic', 'target', 'role']).execute()
}

async function keptBeside(db: Kysely<unknown>, bytes: RawBuilder<unknown>): Promise<void> {
  await db.schema
    .createTable('kept_aside')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('hash', 'text', (column) => column.notNull())
    .addColumn('received_at', 'text', (column) => column.notNull())
    .addColumn('text', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('kept_aside_key', ['clinic', 'id', 'hash'])
    .execute()
  await db.schema
    .createTable('register_rows')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('register', 'text', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('revision', 'bigint', (column) => column.notNull())
    .addColumn('body', 'text')
    .addColumn('written_by', 'text', (column) => column.notNull())
    .addColumn('written_at', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('register_rows_key', ['clinic', 'register', 'id', 'revision'])
    .execute()
  await db.schema
    .createTable('files')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('hash', 'text', (column) => column.notNull())
    .addColumn('media_type', 'text', (column) => column.notNull())
    .addColumn('bytes', bytes as RawBuilder<never>, (column) => column.notNull())
    .addPrimaryKeyConstraint('files_key', ['clinic', 'hash'])
    .execute()
}

async function projections(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('links')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('stream', 'text', (column) => column.notNull())
    .addColumn('other', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('links_key', ['clinic', 'stream', 'other'])
    .execute()
  await db.schema.createIndex('links_other').on('links').columns(['clinic', 'other']).execute()
  await db.schema
    .createTable('owed')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('stream', 'text', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('what', 'text', (column) => column.notNull())
    .addColumn('who', 'text', (column) => column.notNull())
    .addColumn('due_from', 'text', (column) => column.notNull())
    .addColumn('due_by', 'text', (column) => column.notNull())
    .addColumn('why', 'text', (column) => column.notNull())
    .addColumn('sources', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('owed_key', ['clinic', 'stream', 'id'])
    .execute()
  await db.schema
    .createTable('cases')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('stream', 'text', (column) => column.notNull())
    .addColumn('animal', 'text', (column) => column.notNull())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('species', 'text', (column) => column.notNull())
    .addColumn('chip', 'text')
    .addColumn('contact', 'text')
    .addColumn('chapter', 'text', (column) => column.notNull())
    .addColumn('conflicts', 'bigint', (column) => column.notNull())
    .addPrimaryKeyConstraint('cases_key', ['clinic', 'stream'])
    .execute()
}
