import type { Kysely } from 'kysely'
import type { RegisterName, RegisterRow } from '#actions/store.ts'
import type { Tables } from './tables.ts'

/** The rows of one register as they now stand, in order of their ids, without those that were erased. */
export async function currentIn(db: Kysely<Tables>, clinic: string, register: RegisterName): Promise<RegisterRow[]> {
  const rows = await db
    .selectFrom('register_rows as row')
    .selectAll()
    .where('row.clinic', '=', clinic)
    .where('row.register', '=', register)
    .where('row.revision', '=', (last) =>
      last
        .selectFrom('register_rows as other')
        .select((of) => of.fn.max('other.revision').as('revision'))
        .whereRef('other.clinic', '=', 'row.clinic')
        .whereRef('other.register', '=', 'row.register')
        .whereRef('other.id', '=', 'row.id'),
    )
    .execute()
  return rows
    .filter(({ body }) => body !== null)
    .map(({ register, id, revision, body, written_by, written_at }): RegisterRow => {
      return { register, id, revision, body: JSON.parse(body ?? 'null'), by: written_by, at: written_at }
    })
    .sort((a, b) => (a.id < b.id ? -1 : 1))
}
