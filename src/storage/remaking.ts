import type { Kysely, Transaction } from 'kysely'
import type { Remaking } from '#actions/store.ts'
import { inPieces } from './entry-rows.ts'
import type { Tables } from './tables.ts'

type Db = Kysely<Tables>
type Tx = Transaction<Tables>

/**
 * From here on every list of the clinic is behind. Called in the clinic's turn, in the transaction of the change itself:
 * whoever reads the change reads also that the lists do not have it yet.
 */
export async function wantRemaking(tx: Tx, clinic: string): Promise<void> {
  await tx
    .updateTable('clinics')
    .set((row) => ({ lists_wanted: row('lists_wanted', '+', 1) }))
    .where('clinic', '=', clinic)
    .execute()
}

/** The lists of these streams were made from everything the house has written so far. Called in the clinic's turn. */
export async function markMade(tx: Tx, clinic: string, streams: readonly string[]): Promise<void> {
  const wanted = await wantedIn(tx, clinic)
  for (const some of inPieces(streams)) {
    await tx
      .updateTable('list_texts')
      .set({ made_for: wanted })
      .where('clinic', '=', clinic)
      .where('stream', 'in', some)
      .execute()
  }
}

/** The next streams whose lists are behind; those that waited through most changes first, so that none waits for ever. */
export async function nextBehind(db: Db, clinic: string, most: number): Promise<string[]> {
  const rows = await db
    .selectFrom('list_texts')
    .select('stream')
    .where('clinic', '=', clinic)
    .where('made_for', '<', await wantedIn(db, clinic))
    .orderBy('made_for')
    .limit(most)
    .execute()
  return rows.map(({ stream }) => stream)
}

/** How far the lists are; null when none is behind. */
export async function remakingIn(db: Db, clinic: string): Promise<Remaking | null> {
  const [next] = await nextBehind(db, clinic, 1)
  if (next === undefined) return null
  const wanted = await wantedIn(db, clinic)
  const { of, made } = await db
    .selectFrom('list_texts')
    .select((row) => [
      row.fn.countAll<number>().as('of'),
      row.fn.countAll<number>().filterWhere('made_for', '>=', wanted).as('made'),
    ])
    .where('clinic', '=', clinic)
    .where('stream', 'like', 'case:%')
    .executeTakeFirstOrThrow()
  return { made, of }
}

async function wantedIn(db: Db, clinic: string): Promise<number> {
  const query = db.selectFrom('clinics').select('lists_wanted').where('clinic', '=', clinic)
  return (await query.executeTakeFirst())?.lists_wanted ?? 0
}
