import type { Kysely } from 'kysely'
import type { VetLink, VetLinks } from '#actions/vet/vet-links.ts'
import { type Side, sides } from '#core/animal/species.ts'
import { vetAsks } from '#core/journal/kinds/vet-answer.ts'
import type { AccountsPlace } from './accounts-store.ts'
import { inPieces } from './entry-rows.ts'
import type { Tables, VetLinkTable } from './tables.ts'

/** The one implementation of VetLinks, in the common subset of both databases. */
export class VetLinksStore implements VetLinks {
  readonly #place: AccountsPlace

  constructor(place: AccountsPlace) {
    this.#place = place
  }

  async keep(link: Parameters<VetLinks['keep']>[0], tokenHash: string): Promise<void> {
    const { id, clinic, stream, contact, asked, side } = link
    const due = { due_from: link.dueFrom, due_by: link.dueBy }
    const times = { made_at: link.madeAt, expires_at: link.expiresAt, last_opened_at: null, revoked_at: null }
    const row = { id, clinic, stream, contact, asked, side, ...due, made_by: link.madeBy, revoked_by: null, ...times }
    await this.#write((db) =>
      db
        .insertInto('vet_links')
        .values({ ...row, token_hash: tokenHash })
        .execute(),
    )
  }

  async byToken(tokenHash: string): Promise<VetLink | undefined> {
    const [found] = await this.#read((db) =>
      db.selectFrom('vet_links').selectAll().where('token_hash', '=', tokenHash).execute(),
    )
    return found && linkOf(found)
  }

  async ofCases(clinic: string, streams: readonly string[]): Promise<VetLink[]> {
    const rows: VetLinkTable[] = []
    for (const some of inPieces(streams)) {
      const query = (db: Kysely<Tables>) =>
        db.selectFrom('vet_links').selectAll().where('clinic', '=', clinic).where('stream', 'in', some).execute()
      rows.push(...(await this.#read(query)))
    }
    return rows.map(linkOf).sort(byAge)
  }

  async standing(clinic: string, now: string): Promise<VetLink[]> {
    const rows = await this.#read((db) =>
      db
        .selectFrom('vet_links')
        .selectAll()
        .where('clinic', '=', clinic)
        .where('revoked_at', 'is', null)
        .where('expires_at', '>', now)
        .execute(),
    )
    return rows.map(linkOf).sort(byAge)
  }

  async opened(id: string, at: string): Promise<void> {
    await this.#write((db) => db.updateTable('vet_links').set({ last_opened_at: at }).where('id', '=', id).execute())
  }

  async revoke(clinic: string, id: string, by: string, at: string): Promise<boolean> {
    await this.#write((db) =>
      db
        .updateTable('vet_links')
        .set({ revoked_at: at, revoked_by: by })
        .where('clinic', '=', clinic)
        .where('id', '=', id)
        .where('revoked_at', 'is', null)
        .execute(),
    )
    const found = await this.#read((db) =>
      db.selectFrom('vet_links').select('id').where('clinic', '=', clinic).where('id', '=', id).execute(),
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

function byAge(one: VetLink, other: VetLink): number {
  return `${one.madeAt} ${one.id}` < `${other.madeAt} ${other.id}` ? -1 : 1
}

function linkOf(row: VetLinkTable): VetLink {
  const { id, clinic, stream, contact } = row
  return {
    id,
    clinic,
    stream,
    contact,
    asked: vetAsks.find((ask) => ask === row.asked) ?? 'stretch',
    side: sides.find((side): side is Side => side === row.side) ?? null,
    dueFrom: row.due_from,
    dueBy: row.due_by,
    madeAt: row.made_at,
    madeBy: row.made_by,
    expiresAt: row.expires_at,
    lastOpenedAt: row.last_opened_at,
    revokedAt: row.revoked_at,
    revokedBy: row.revoked_by,
  }
}
