import type { Kysely } from 'kysely'

/**
 * Each operated ear now says what went wrong with it: the lists of every clinic are made again behind this, so that
 * ears of before say it too. Never edited again.
 */
export async function earsTroubled(db: Kysely<unknown>): Promise<void> {
  const clinics = (db as Kysely<{ clinics: { lists_wanted: number } }>).updateTable('clinics')
  await clinics.set((row) => ({ lists_wanted: row('lists_wanted', '+', 1) })).execute()
}
