import type { VetLink, VetLinks } from '#actions/vet/vet-links.ts'
import { type Side, sides } from '#core/animal/species.ts'
import { vetAsks } from '#core/journal/kinds/vet-answer.ts'
import type { AccountsPlace } from './accounts-store.ts'
import { CaseLinksStore, caseLinkOf, rowOfNew } from './case-links-store.ts'
import type { Tables } from './tables.ts'

/** The one implementation of VetLinks, in the common subset of both databases. */
export class VetLinksStore extends CaseLinksStore<VetLink> implements VetLinks {
  constructor(place: AccountsPlace) {
    super(place, 'vet_links', linkOf)
  }

  async keep(link: Parameters<VetLinks['keep']>[0], tokenHash: string): Promise<void> {
    const { asked, side, dueFrom, dueBy } = link
    const row = { ...rowOfNew(link, tokenHash), asked, side, due_from: dueFrom, due_by: dueBy }
    await this.write((db) => db.insertInto('vet_links').values(row).execute())
  }

  async standing(clinic: string, now: string): Promise<VetLink[]> {
    return (await this.notEnded(clinic)).filter(({ expiresAt }) => expiresAt > now)
  }
}

function linkOf(row: Tables['vet_links']): VetLink {
  return {
    ...caseLinkOf(row),
    asked: vetAsks.find((ask) => ask === row.asked) ?? 'stretch',
    side: sides.find((side): side is Side => side === row.side) ?? null,
    dueFrom: row.due_from,
    dueBy: row.due_by,
  }
}
