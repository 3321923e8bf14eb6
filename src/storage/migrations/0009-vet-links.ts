import type { Kysely } from 'kysely'

/** The private links for referring practices: what each asks for, of a token only its hash. Never edited again. */
export async function vetLinks(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('vet_links')
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('token_hash', 'text', (column) => column.notNull())
    .addColumn('stream', 'text', (column) => column.notNull())
    .addColumn('contact', 'text', (column) => column.notNull())
    .addColumn('asked', 'text', (column) => column.notNull())
    .addColumn('side', 'text')
    .addColumn('due_from', 'text')
    .addColumn('due_by', 'text')
    .addColumn('made_at', 'text', (column) => column.notNull())
    .addColumn('made_by', 'text', (column) => column.notNull())
    .addColumn('expires_at', 'text', (column) => column.notNull())
    .addColumn('last_opened_at', 'text')
    .addColumn('revoked_at', 'text')
    .addColumn('revoked_by', 'text')
    .addUniqueConstraint('vet_links_token', ['token_hash'])
    .execute()
  await db.schema.createIndex('vet_links_case').on('vet_links').columns(['clinic', 'stream']).execute()
}
