import type { OwnerLink, OwnerLinks } from '#actions/owner/owner-links.ts'
import type { AccountsPlace } from './accounts-store.ts'
import { CaseLinksStore, caseLinkOf, rowOfNew } from './case-links-store.ts'
import type { Tables } from './tables.ts'

/** The one implementation of OwnerLinks, in the common subset of both databases. */
export class OwnerLinksStore extends CaseLinksStore<OwnerLink> implements OwnerLinks {
  constructor(place: AccountsPlace) {
    super(place, 'owner_links', linkOf)
  }

  async keep(link: Parameters<OwnerLinks['keep']>[0], tokenHash: string): Promise<void> {
    const row = { ...rowOfNew(link, tokenHash), used_as: link.use }
    await this.write((db) => db.insertInto('owner_links').values(row).execute())
  }

  standing(clinic: string): Promise<OwnerLink[]> {
    return this.notEnded(clinic)
  }
}

function linkOf(row: Tables['owner_links']): OwnerLink {
  return { ...caseLinkOf(row), use: row.used_as === 'in-room' ? 'in-room' : 'private' }
}
