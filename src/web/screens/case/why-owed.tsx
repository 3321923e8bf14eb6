import type { OwedItem } from '#core/owed/owed-item.ts'

export function WhyOwed(_: { readonly item: OwedItem; readonly what: string }) {
  return null
}
