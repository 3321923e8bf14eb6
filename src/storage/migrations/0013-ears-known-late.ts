import type { Kysely } from 'kysely'

/**
 * What is known of an operated ear after a year, of an operation again and of a death around it follows other rules, and what
 * cannot have followed its operation counts nowhere: the lists of every clinic are made again behind this. Never edited again.
 */
export async function earsKnownLate(db: Kysely<unknown>): Promise<void> {
  const clinics = (db as Kysely<{ clinics: { lists_wanted: number } }>).updateTable('clinics')
  await clinics.set((row) => ({ lists_wanted: row('lists_wanted', '+', 1) })).execute()
}
