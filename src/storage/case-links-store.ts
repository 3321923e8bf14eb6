import type { Kysely } from 'kysely'
import type { CaseLink, CaseLinks, NewLink } from '#actions/people/case-link.ts'
import type { AccountsPlace } from './accounts-store.ts'
import { inPieces } from './entry-rows.ts'
import type { LinkTable, Tables } from './tables.ts'

type LinkTableName = 'owner_links' | 'vet_links'
/** As the types of a query over either table have it; each kind of link reads only the columns of its own table. */
type LinkRow = Tables['owner_links'] & Tables['vet_links']

/** What the links of every kind have in common, in the common subset of both databases. */
export abstract class CaseLinksStore<Link extends CaseLink> implements CaseLinks<Link> {
  readonly #place: AccountsPlace
  readonly #table: LinkTableName
  readonly #linkOf: (row: LinkRow) => Link

  constructor(place: AccountsPlace, table: LinkTableName, linkOf: (row: LinkRow) => Link) {
    this.#place = place
    this.#table = table
    this.#linkOf = linkOf
  }

  abstract keep(link: NewLink<Link>, tokenHash: string): Promise<void>

  async byToken(tokenHash: string): Promise<Link | undefined> {
    const [found] = await this.#read((db) =>
      db.selectFrom(this.#table).selectAll().where('token_hash', '=', tokenHash).execute(),
    )
    return found && this.#linkOf(found)
  }

  async ofCases(clinic: string, streams: readonly string[]): Promise<Link[]> {
    const rows: LinkRow[] = []
    for (const some of inPieces(streams)) {
      const query = (db: Kysely<Tables>) =>
        db.selectFrom(this.#table).selectAll().where('clinic', '=', clinic).where('stream', 'in', some).execute()
      rows.push(...(await this.#read(query)))
    }
    return rows.map(this.#linkOf).sort(byAge)
  }

  protected async notEnded(clinic: string): Promise<Link[]> {
    const rows = await this.#read((db) =>
      db.selectFrom(this.#table).selectAll().where('clinic', '=', clinic).where('revoked_at', 'is', null).execute(),
    )
    return rows.map(this.#linkOf).sort(byAge)
  }

  async opened(id: string, at: string): Promise<void> {
    await this.write((db) => db.updateTable(this.#table).set({ last_opened_at: at }).where('id', '=', id).execute())
  }

  async revoke(clinic: string, id: string, by: string, at: string): Promise<boolean> {
    await this.write((db) =>
      db
        .updateTable(this.#table)
        .set({ revoked_at: at, revoked_by: by })
        .where('clinic', '=', clinic)
        .where('id', '=', id)
        .where('revoked_at', 'is', null)
        .execute(),
    )
    const found = await this.#read((db) =>
      db.selectFrom(this.#table).select('id').where('clinic', '=', clinic).where('id', '=', id).execute(),
    )
    return found.length > 0
  }

  async #read<Result>(reading: (db: Kysely<Tables>) => Promise<Result>): Promise<Result> {
    try {
      return await reading(this.#place.db)
    } catch (error) {
      throw this.#place.explain(error) ?? error
    }
  }

  protected write<Result>(writing: (db: Kysely<Tables>) => Promise<Result>): Promise<Result> {
    this.#place.beforeWrite()
    return this.#read(writing)
  }
}

/** The columns that every kind of link has, of a link that nobody opened or ended yet. */
export function rowOfNew(link: NewLink<CaseLink>, tokenHash: string): LinkTable {
  const { id, clinic, stream, contact } = link
  const made = { made_at: link.madeAt, made_by: link.madeBy, expires_at: link.expiresAt }
  const later = { last_opened_at: null, revoked_at: null, revoked_by: null }
  return { id, clinic, token_hash: tokenHash, stream, contact, ...made, ...later }
}

/** What every kind of link has, from the columns of its row. */
export function caseLinkOf(row: LinkTable): CaseLink {
  const { id, clinic, stream, contact } = row
  return {
    id,
    clinic,
    stream,
    contact,
    madeAt: row.made_at,
    madeBy: row.made_by,
    expiresAt: row.expires_at,
    lastOpenedAt: row.last_opened_at,
    revokedAt: row.revoked_at,
    revokedBy: row.revoked_by,
  }
}

function byAge(one: CaseLink, other: CaseLink): number {
  return `${one.madeAt} ${one.id}` < `${other.madeAt} ${other.id}` ? -1 : 1
}
