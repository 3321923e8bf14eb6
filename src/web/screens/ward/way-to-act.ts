import { subjectOfOwed } from '#core/chapters/subjects-for.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import { dosePlanHref, wardPageHref, writeHref } from '../case/case-hrefs.ts'
import { painParts } from '../case/owed-screen.ts'

/** `tap`: done where it stands. `part`: a part of the page of the animal. `page`: another page. */
export type WayToAct =
  | { readonly how: 'tap'; readonly tap: 'wet' | 'urine' }
  | { readonly how: 'part' | 'page'; readonly href: string }

const parts: Readonly<Record<string, string>> = {
  ...painParts,
  'ward-airway': 'look',
  'ward-food': 'look',
  'ward-temperature': 'temperature',
  'first-blink': 'eyes',
  'look-after-the-block': 'eyes',
  'ward-owner-call': 'owner',
}

/** The one step from a thing that is due in the ward to having done it. */
export function wayToAct(item: OwedItem, place: string, file: CaseFile): WayToAct {
  if (item.what === 'eye-lubricated') return { how: 'tap', tap: 'wet' }
  if (item.what === 'ward-urine') return { how: 'tap', tap: 'urine' }
  if (item.what === 'ward-dose' && item.operation !== null) {
    return { how: 'page', href: dosePlanHref(place, item.operation) }
  }
  const part = parts[item.what]
  if (part !== undefined) return { how: 'part', href: `${wardPageHref(place)}#${part}` }
  return {
    how: 'page',
    href: writeHref(place, 'check', { subject: subjectOfOwed(item, 'check', file), owed: item.id }),
  }
}
