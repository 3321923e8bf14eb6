import { type Kysely, type Selectable, sql } from 'kysely'
import type { CaseInList, CaseRow, ListTexts, OwedInList, OwedRow } from '#actions/store.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { inPieces } from './entry-rows.ts'
import { remakingIn } from './remaking.ts'
import type { Tables } from './tables.ts'

type Db = Kysely<Tables>

/**
 * Writes what the lists say of these streams as they are sent, after their rows were projected. Called in the clinic's
 * turn. All streams of one write get the next version.
 */
export async function writeListTexts(tx: Db, clinic: string, streams: readonly string[]): Promise<void> {
  const version = (await newest(tx, clinic)) + 1
  for (const some of inPieces(streams)) {
    const owed = await owedIn(tx, clinic, some)
    const cases = await casesIn(tx, clinic, some)
    const owners = await ownersOf(tx, clinic, cases)
    const rows = some.map((stream) => {
      const found = cases.find((row) => row.stream === stream)
      const ofStream = owed.filter((row) => row.stream === stream)
      return { clinic, stream, version, case_text: caseText(found, owners), owed_text: owedText(ofStream, found) }
    })
    await tx
      .insertInto('list_texts')
      .values(rows)
      .onConflict((conflict) =>
        conflict.columns(['clinic', 'stream']).doUpdateSet((row) => ({
          version: row.ref('excluded.version'),
          case_text: row.ref('excluded.case_text'),
          owed_text: row.ref('excluded.owed_text'),
        })),
      )
      .execute()
  }
}

/** An owner's name and phone stand in the list beside every case of theirs. */
export async function writeListTextsOf(tx: Db, clinic: string, contact: string): Promise<void> {
  const query = tx.selectFrom('cases').select('stream').where('clinic', '=', clinic).where('contact', '=', contact)
  const streams = (await query.execute()).map(({ stream }) => stream)
  await writeListTexts(tx, clinic, streams)
}

/**
 * The lists as text, whole or only of the streams that changed behind a version. The version is read first, and
 * whether lists are behind: what is written meanwhile comes twice, never not at all, and is called old, never new.
 */
export async function listTextsIn(db: Db, clinic: string, since: number | null): Promise<ListTexts> {
  const remaking = await remakingIn(db, clinic)
  const version = await newest(db, clinic)
  // A version from the future was handed out before an older backup was restored.
  const whole = since === null || since > version
  const query = db.selectFrom('list_texts').where('clinic', '=', clinic)
  const wanted = whole ? query : query.where('version', '>', since)
  // Joined where the rows are: ten thousand rows by themselves cost more than their text.
  const joined = await wanted
    .select([together('owed_text').as('owed'), together('case_text').as('cases')])
    .executeTakeFirst()
  const changed = whole ? null : (await wanted.select('stream').execute()).map(({ stream }) => stream).sort()
  return { version, remaking, changed, owed: joined?.owed ?? '', cases: joined?.cases ?? '' }
}

function together(column: 'owed_text' | 'case_text') {
  return sql<string | null>`string_agg(nullif(${sql.ref(column)}, ''), ',')`
}

async function newest(db: Db, clinic: string): Promise<number> {
  const query = db.selectFrom('list_texts').select('version').where('clinic', '=', clinic)
  return (await query.orderBy('version', 'desc').limit(1).executeTakeFirst())?.version ?? 0
}

/** Rows of one stream as they stand in a JSON list, without its brackets; empty when there is none. */
function owedText(owed: readonly OwedRow[], of: CaseRow | undefined): string {
  const { name = '', species = '' } = of ?? {}
  return owed
    .map((row): OwedInList => ({ ...row, name, species }))
    .map((row) => JSON.stringify(row))
    .join(',')
}

function caseText(of: CaseRow | undefined, owners: ReadonlyMap<string, Owner>): string {
  if (!of) return ''
  const { household, ...row } = of
  const { name = null, phone = null } = owners.get(of.contact ?? '') ?? {}
  const listed: CaseInList = { ...row, householdId: household, ownerName: name, ownerPhone: phone }
  return JSON.stringify(listed)
}

type Owner = { readonly name?: string; readonly phone?: string | null }

/** The owners as the contacts have them now; one that was erased has no name. */
async function ownersOf(db: Db, clinic: string, cases: readonly CaseRow[]): Promise<Map<string, Owner>> {
  const ids = [...new Set(cases.map(({ contact }) => contact ?? ''))].filter((id) => id !== '')
  if (ids.length === 0) return new Map()
  const rows = await db
    .selectFrom('register_rows')
    .select(['id', 'body'])
    .where('clinic', '=', clinic)
    .where('register', '=', 'contact')
    .where('id', 'in', ids)
    .orderBy('revision')
    .execute()
  return new Map(rows.map(({ id, body }) => [id, JSON.parse(body ?? '{}') as Owner]))
}

async function owedIn(db: Db, clinic: string, streams: readonly string[]): Promise<OwedRow[]> {
  const query = db.selectFrom('owed').selectAll().where('clinic', '=', clinic).where('stream', 'in', streams)
  return (await query.execute()).map(owedOf).sort(byDueDate)
}

async function casesIn(db: Db, clinic: string, streams: readonly string[]): Promise<CaseRow[]> {
  const query = db.selectFrom('cases').selectAll().where('clinic', '=', clinic).where('stream', 'in', streams)
  return (await query.execute()).map(caseOf)
}

export function owedOf(row: Selectable<Tables['owed']>): OwedRow {
  const { stream, id, what, who, due_from, due_by, why, sources } = row
  return { stream, id, what, who, dueFrom: due_from, dueBy: due_by, why, sources: JSON.parse(sources) }
}

export function caseOf(row: Selectable<Tables['cases']>): CaseRow {
  const { stream, animal, name, species, chip, contact, household, chapter, conflicts } = row
  return { stream, animal, name, species, chip, contact, household, chapter, conflicts }
}

/** By code unit, as both stores and every machine order texts. */
export function byDueDate(a: OwedRow, b: OwedRow): number {
  return (
    compareText(a.dueBy, b.dueBy) ||
    compareText(a.dueFrom, b.dueFrom) ||
    compareText(a.stream, b.stream) ||
    compareText(a.id, b.id)
  )
}
