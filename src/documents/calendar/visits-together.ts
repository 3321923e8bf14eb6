import { compareText } from '#core/journal/compare-text.ts'
import type { ClosedItem, OwedItem } from '#core/owed/owed-item.ts'
import { laterOf } from '#core/owed/setting.ts'
import { dayOf } from '#core/time/calendar-day.ts'

/** Something in an owner's calendar, and how it ended; null while it is owed. */
export type OwnersItem = { readonly item: OwedItem; readonly ended: ClosedItem['because'] | null }

/** What one visit can do, and the days on which all of it may be done; null for what stands alone. */
export type Together = {
  readonly items: readonly OwnersItem[]
  readonly window: { readonly from: string; readonly until: string } | null
}

/**
 * Visits that one day can serve become one group: each lies in the days that all of it have in common, so nothing is
 * seen later than it is owed. What was done falls together with what was done, never with what is owed. Calls and meals
 * stand alone. The first of a group is the one whose id sorts first, so that the same visits keep the same event.
 *
 * @example together([{ item: face, ended: null }, { item: stitches, ended: null }]).length // 1
 */
export function together(items: readonly OwnersItem[]): Together[] {
  const kindOf = ({ item, ended }: OwnersItem) => {
    if (item.precision !== 'day' || item.way === 'call') return 'alone'
    if (ended === null) return 'owed'
    return ended === 'settled' || ended === 'settled-late' ? 'done' : 'alone'
  }
  const of = (kind: ReturnType<typeof kindOf>) => items.filter((one) => kindOf(one) === kind)
  return [...of('alone').map((one) => ({ items: [one], window: null })), ...grouped(of('owed')), ...grouped(of('done'))]
}

function grouped(visits: readonly OwnersItem[]): Together[] {
  const sorted = visits
    .map((one) => ({ one, ...daysOf(one.item) }))
    .sort((a, b) => compareText(a.until, b.until) || compareText(a.one.item.id, b.one.item.id))
  const groups: { items: OwnersItem[]; from: string; until: string }[] = []
  for (const { one, from, until } of sorted) {
    const last = groups.at(-1)
    if (last && from <= last.until) {
      last.items.push(one)
      last.from = laterOf(last.from, from)
    } else groups.push({ items: [one], from, until })
  }
  return groups.map(({ from, until, items }) => ({
    items: items.toSorted((a, b) => compareText(a.item.id, b.item.id)),
    window: { from, until },
  }))
}

function daysOf({ dueFrom, dueBy, zone }: OwedItem): { from: string; until: string } {
  return { from: dayOf({ at: dueFrom, zone }), until: dayOf({ at: dueBy, zone }) }
}
