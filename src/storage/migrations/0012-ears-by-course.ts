import type { Kysely } from 'kysely'

/**
 * Face, Horner's and balance of an operated ear are now those of the course of the nerve, and what is of neither of two ears
 * is kept apart: the lists of every clinic are made again behind this. Never edited again.
 */
export async function earsByCourse(db: Kysely<unknown>): Promise<void> {
  const clinics = (db as Kysely<{ clinics: { lists_wanted: number } }>).updateTable('clinics')
  await clinics.set((row) => ({ lists_wanted: row('lists_wanted', '+', 1) })).execute()
}
