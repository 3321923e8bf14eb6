import { wardCodes } from '#core/owed/owed-code-of.ts'
import { isLate, type OwedItem } from '#core/owed/owed-item.ts'

export type WardBand = 'late' | 'now' | 'next'

/** How far ahead the list of the ward looks: one day. Later visits of face and eye stand with the rest of the course. */
const ahead = 24 * 60 * 60_000

/** One thing that is due in the ward, as it stands at the reader's moment. */
export type Due<Item> = { readonly item: Item; readonly band: WardBand; readonly minutesLate: number }

/**
 * What is due in the ward, longest overdue first, then what may be done now and what comes next, each by its limit.
 *
 * @example dueInWard(owed, now)[0] // { item, band: 'late', minutesLate: 80 }
 */
export function dueInWard<Item extends Pick<OwedItem, 'id' | 'what' | 'dueFrom' | 'dueBy'>>(
  items: readonly Item[],
  now: string,
): Due<Item>[] {
  const present = Date.parse(now)
  const rank: Record<WardBand, number> = { late: 0, now: 1, next: 2 }
  return items
    .filter(({ what, dueFrom }) => wardCodes.includes(what) && Date.parse(dueFrom) - present < ahead)
    .map((item) => ({
      item,
      band: isLate(item, now)
        ? ('late' as const)
        : Date.parse(item.dueFrom) <= present
          ? ('now' as const)
          : ('next' as const),
      minutesLate: Math.max(0, Math.floor((present - Date.parse(item.dueBy)) / 60_000)),
    }))
    .sort((a, b) => rank[a.band] - rank[b.band] || timeOf(a) - timeOf(b) || (a.item.id < b.item.id ? -1 : 1))
}

/** What comes next is read by when it may begin, the rest by when it is too late. */
function timeOf({ item, band }: Due<Pick<OwedItem, 'dueFrom' | 'dueBy'>>): number {
  return Date.parse(band === 'next' ? item.dueFrom : item.dueBy)
}
