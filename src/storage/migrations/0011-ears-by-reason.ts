import type { Kysely } from 'kysely'

/**
 * Each operated ear now says what it was operated for: the lists of every clinic are made again behind this, so that ears
 * of before say that it was not recorded. Never edited again.
 */
export async function earsByReason(db: Kysely<unknown>): Promise<void> {
  const clinics = (db as Kysely<{ clinics: { lists_wanted: number } }>).updateTable('clinics')
  await clinics.set((row) => ({ lists_wanted: row('lists_wanted', '+', 1) })).execute()
}
