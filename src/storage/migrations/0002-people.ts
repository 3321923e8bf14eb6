import type { Kysely } from 'kysely'

/** Who may sign in, who is signed in where, who is away, and who opened which case. Never edited again. */
export async function people(db: Kysely<unknown>): Promise<void> {
  await accounts(db)
  await sessions(db)
  await beside(db)
}

async function accounts(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('accounts')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('person', 'text', (column) => column.notNull())
    .addColumn('login', 'text', (column) => column.notNull())
    .addColumn('password', 'text', (column) => column.notNull())
    .addColumn('pin', 'text')
    // 1 for the very first account, null for every other: unique, so that there is one first account at most.
    .addColumn('opened', 'integer')
    .addColumn('active', 'integer', (column) => column.notNull())
    .addColumn('made_at', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('accounts_key', ['clinic', 'person'])
    .addUniqueConstraint('accounts_login', ['login'])
    .addUniqueConstraint('accounts_opened', ['opened'])
    .execute()
}

async function sessions(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('sessions')
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('token_hash', 'text', (column) => column.notNull())
    .addColumn('device', 'text', (column) => column.notNull())
    .addColumn('device_name', 'text', (column) => column.notNull())
    .addColumn('made_at', 'text', (column) => column.notNull())
    .addColumn('expires_at', 'text', (column) => column.notNull())
    .addColumn('ended_at', 'text')
    .addColumn('active', 'text')
    .addUniqueConstraint('sessions_token', ['token_hash'])
    .execute()
  await db.schema.createIndex('sessions_device').on('sessions').columns(['clinic', 'device']).execute()
  await db.schema
    .createTable('session_people')
    .addColumn('session', 'text', (column) => column.notNull().references('sessions.id'))
    .addColumn('person', 'text', (column) => column.notNull())
    .addColumn('since', 'text', (column) => column.notNull())
    .addColumn('until', 'text')
    .addPrimaryKeyConstraint('session_people_key', ['session', 'person', 'since'])
    .execute()
}

async function beside(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('sign_in_failures')
    .addColumn('key', 'text', (column) => column.primaryKey())
    .addColumn('tries', 'integer', (column) => column.notNull())
    .addColumn('last_at', 'text', (column) => column.notNull())
    .execute()
  await db.schema
    .createTable('read_log')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('stream', 'text', (column) => column.notNull())
    .addColumn('at', 'text', (column) => column.notNull())
    .addColumn('person', 'text', (column) => column.notNull())
    .addColumn('device', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('read_log_key', ['clinic', 'stream', 'at', 'person'])
    .execute()
  await db.schema
    .createTable('leaves')
    .addColumn('clinic', 'text', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('person', 'text', (column) => column.notNull())
    .addColumn('from_day', 'text', (column) => column.notNull())
    .addColumn('until_day', 'text', (column) => column.notNull())
    .addColumn('deputy', 'text', (column) => column.notNull())
    .addColumn('written_by', 'text', (column) => column.notNull())
    .addColumn('written_at', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('leaves_key', ['clinic', 'id'])
    .execute()
}
