import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { convert } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import type { ShelfInUse } from './plan.ts'
import type { DoseRequest, PlannedLine } from './request.ts'

type Item = BodyOf<'shelf-item'>

/**
 * What speaks against drawing from one product on a day. It may still be used on its last day.
 *
 * @example judgeItem({ ...item, expires: '2026-03-31' }, '2026-04-01')[0]?.code // 'shelf-expired'
 */
export function judgeItem(item: Pick<Item, 'label' | 'expires' | 'outSince'>, day: string): DoseFinding[] {
  const { label, expires, outSince } = item
  const findings: DoseFinding[] = []
  if (expires !== null && expires < day) {
    findings.push(found('confirm', 'shelf-expired', { label, until: sayCalendarDay(expires) }))
  }
  if (outSince !== null && outSince <= day) {
    findings.push(found('note', 'shelf-out', { label, since: sayCalendarDay(outSince) }))
  }
  return findings
}

/**
 * What the shelf says of a planned line: nothing while one product of that drug and strength is in date and in stock,
 * and nothing about a strength that stands on no shelf.
 */
export function judgeShelf(
  line: Pick<PlannedLine, 'drug' | 'stock' | 'tablet'>,
  at: DoseRequest['at'],
  shelf: ShelfInUse | undefined,
): DoseFinding[] {
  if (!shelf || !at) return []
  const day = dayOf({ at: at.toString(), zone: shelf.zone })
  const judged = shelf.items.filter((item) => isOf(item, line)).map((item) => judgeItem(item, day))
  return judged.some((findings) => findings.length === 0) ? [] : judged.flat()
}

function isOf({ drug, strength }: Item, line: Pick<PlannedLine, 'drug' | 'stock' | 'tablet'>): boolean {
  if (drug !== line.drug || !strength) return false
  if (strength.unit === 'mg/{tablet}') return line.tablet?.strength.value.eq(strength.value) ?? false
  return line.stock ? (convert(fromStored(strength), line.stock.unit)?.value.eq(line.stock.value) ?? false) : false
}

/**
 * The entry by which a product went out of stock: who found it and when, also after its label was changed since.
 *
 * @example wentOut(house, item)?.header.author
 */
export function wentOut(house: Case, item: Line<Item>): Line<Item> | undefined {
  if (item.body.outSince === null) return undefined
  let first = item
  for (;;) {
    const [before] = first.header.supersedes
    const older = before === undefined ? undefined : (house.line(before) as Line<Item | null> | undefined)
    if (!older?.known || older.body?.outSince !== item.body.outSince) return first
    first = older as Line<Item>
  }
}
