import { shelfInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { judgeItem } from '#core/dosing/shelf-state.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'

/** A product in a list to choose from: its label, and what speaks against drawing from it on that day. */
export function sayProduct(item: BodyOf<'shelf-item'>, day: string): string {
  const faults = judgeItem(item, day).map(({ code, about }) =>
    fill(code === 'shelf-expired' ? words.faults.expired : words.faults.out, about),
  )
  return faults.length === 0 ? item.label : fill(words.option, { label: item.label, faults: faults.join(', ') })
}
