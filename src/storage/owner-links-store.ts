import type { Kysely } from 'kysely'
import type { OwnerLink, OwnerLinks } from '#actions/owner/owner-links.ts'
import type { AccountsPlace } from './accounts-store.ts'
import { inPieces } from './entry-rows.ts'
import type { OwnerLinkTable, Tables } from './tables.ts'

/** The one implementation of OwnerLinks, in the common subset of both databases. */
export class OwnerLinksStore implements OwnerLinks {
  readonly #place: AccountsPlace

  constructor(place: AccountsPlace) {
    this.#place = place
  }

  async keep(link: Parameters<OwnerLinks['keep']>[0], tokenHash: string): Promise<void> {
    const { id, clinic, stream, contact, use } = link
    const times = { made_at: link.madeAt, expires_at: link.expiresAt, last_opened_at: null, revoked_at: null }
    const row = { id, clinic, stream, contact, used_as: use, made_by: link.madeBy, revoked_by: null, ...times }
    await this.#write((db) =>
      db
        .insertInto('owner_links')
        .values({ ...row, token_hash: tokenHash })
        .execute(),
    )
  }

  async byToken(tokenHash: string): Promise<OwnerLink | undefined> {
    const [found] = await this.#read((db) =>
      db.selectFrom('owner_links').selectAll().where('token_hash', '=', tokenHash).execute(),
    )
    return found && linkOf(found)
  }

  async ofCases(clinic: string, streams: readonly string[]): Promise<OwnerLink[]> {
    const rows: OwnerLinkTable[] = []
    for (const some of inPieces(streams)) {
      const query = (db: Kysely<Tables>) =>
        db.selectFrom('owner_links').selectAll().where('clinic', '=', clinic).where('stream', 'in', some).execute()
      rows.push(...(await this.#read(query)))
    }
    return rows.map(linkOf).sort(byAge)
  }

  async standing(clinic: string): Promise<OwnerLink[]> {
    const rows = await this.#read((db) =>
      db.selectFrom('owner_links').selectAll().where('clinic', '=', clinic).where('revoked_at', 'is', null).execute(),
    )
    return rows.map(linkOf).sort(byAge)
  }

  async opened(id: string, at: string): Promise<void> {
    await this.#write((db) => db.updateTable('owner_links').set({ last_opened_at: at }).where('id', '=', id).execute())
  }

  async revoke(clinic: string, id: string, by: string, at: string): Promise<boolean> {
    await this.#write((db) =>
      db
        .updateTable('owner_links')
        .set({ revoked_at: at, revoked_by: by })
        .where('clinic', '=', clinic)
        .where('id', '=', id)
        .where('revoked_at', 'is', null)
        .execute(),
    )
    const found = await this.#read((db) =>
      db.selectFrom('owner_links').select('id').where('clinic', '=', clinic).where('id', '=', id).execute(),
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

  #write<Result>(writing: (db: Kysely<Tables>) => Promise<Result>): Promise<Result> {
    this.#place.beforeWrite()
    return this.#read(writing)
  }
}

function byAge(one: OwnerLink, other: OwnerLink): number {
  return `${one.madeAt} ${one.id}` < `${other.madeAt} ${other.id}` ? -1 : 1
}

function linkOf(row: OwnerLinkTable): OwnerLink {
  const { id, clinic, stream, contact } = row
  return {
    id,
    clinic,
    stream,
    contact,
    use: row.used_as === 'in-room' ? 'in-room' : 'private',
    madeAt: row.made_at,
    madeBy: row.made_by,
    expiresAt: row.expires_at,
    lastOpenedAt: row.last_opened_at,
    revokedAt: row.revoked_at,
    revokedBy: row.revoked_by,
  }
}
