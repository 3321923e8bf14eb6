import type { Kysely } from 'kysely'

/**
 * What each case adds to the clinic's own figures, beside its row in the list. The lists of every clinic are made again
 * behind this, so that cases of before are counted too. Never edited again.
 */
export async function operatedEars(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .alterTable('cases')
    .addColumn('operated', 'text', (column) => column.notNull().defaultTo('[]'))
    .execute()
  const clinics = (db as Kysely<{ clinics: { lists_wanted: number } }>).updateTable('clinics')
  await clinics.set((row) => ({ lists_wanted: row('lists_wanted', '+', 1) })).execute()
}
