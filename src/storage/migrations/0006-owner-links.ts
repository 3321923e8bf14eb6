import type { Kysely } from 'kysely'

/** The private links for owners: of a token only its hash, and who made and who ended a link, when. Never edited again. */
export async function ownerLinks(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('owner_links')
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('token_hash', 'text', (column) => column.notNull())
    .addColumn('stream', 'text', (column) => column.notNull())
    .addColumn('contact', 'text', (column) => column.notNull())
    .addColumn('used_as', 'text', (column) => column.notNull())
    .addColumn('made_at', 'text', (column) => column.notNull())
    .addColumn('made_by', 'text', (column) => column.notNull())
    .addColumn('expires_at', 'text', (column) => column.notNull())
    .addColumn('last_opened_at', 'text')
    .addColumn('revoked_at', 'text')
    .addColumn('revoked_by', 'text')
    .addUniqueConstraint('owner_links_token', ['token_hash'])
    .execute()
  await db.schema.createIndex('owner_links_case').on('owner_links').columns(['clinic', 'stream']).execute()
}
