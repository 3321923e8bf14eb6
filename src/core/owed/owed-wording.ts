import { fill } from '#core/outcome/finding.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import type { OwedCode, OwedItem, OwedRole, Why, WhyCode } from './owed-item.ts'

/** The sentences of what is owed in one language; content writes them, a missing one does not compile. */
export type OwedWording = {
  readonly what: Readonly<Record<OwedCode, string>>
  readonly why: Readonly<Record<WhyCode, string>>
  readonly who: Readonly<Record<OwedRole, string>>
  readonly sides: Readonly<Record<'LEFT' | 'RIGHT', string>>
  /** Words for codes that stand as values: `day-1`, `recheck-3-months`, `culture`. A code without words is said as it is. */
  readonly codes: Readonly<Record<string, string>>
}

export type SaidItem = { readonly what: string; readonly who: string; readonly why: string }

/** What an item is called, who owes it, and why, in the sentences of one language. */
export function sayOwed(item: OwedItem, wording: OwedWording): SaidItem {
  const side = item.side ? wording.sides[item.side] : ''
  const what = fill(wording.what[item.what], { ...inWords(item.about, wording), side })
  return { what: what.replace(/\s+/g, ' ').trim(), who: wording.who[item.who], why: sayWhys(item.why, wording) }
}

/** The reasons alone, as one text. Example: `sayWhys(fasting.why, owedInEnglish)`. */
export function sayWhys(whys: readonly Why[], wording: Pick<OwedWording, 'why' | 'codes'>): string {
  return whys.map(({ code, about }) => fill(wording.why[code], inWords(about, wording))).join(' ')
}

function inWords(
  about: Readonly<Record<string, string>>,
  { codes }: Pick<OwedWording, 'codes'>,
): Record<string, string> {
  return Object.fromEntries(Object.entries(about).map(([key, value]) => [key, codes[value] ?? sayDay(value)]))
}

/** A day is said with its month as a word, like everywhere; anything else stands as it is. */
function sayDay(value: string): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(value) ? sayStoredDay(value) : value
}
