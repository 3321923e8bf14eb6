import type { Side } from '#core/animal/species.ts'
import type { vetAsks } from '#core/journal/kinds/vet-answer.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { OwedCode, OwedItem } from '#core/owed/owed-item.ts'

export type VetAsk = (typeof vetAsks)[number]

/** The owed things that a practice elsewhere can look at. What needs our own hands, or the owner, is not among them. */
const askOf: Partial<Record<OwedCode, VetAsk>> = {
  'suture-check': 'stitches',
  'wound-check': 'wound',
  'face-and-eye-look': 'face-and-eye',
  'eye-at-risk-look': 'face-and-eye',
  recheck: 'recheck',
  'agreed-visit': 'recheck',
  'twelve-months': 'year',
}

/** What the practice is asked for by one owed thing; null when it cannot be asked of them. */
export function askOfVet(item: Pick<OwedItem, 'what'>): VetAsk | null {
  return askOf[item.what] ?? null
}

/**
 * The operated ears, each with its last operation. One of them only when the link is about one.
 *
 * @example operatedEars(operationsOf(file), null) // [{ side: 'LEFT', … }]
 */
export function operatedEars(operations: readonly OperationOnFile[], side: Side | null): OperationOnFile[] {
  const last = new Map<Side, OperationOnFile>()
  for (const operation of operations) {
    if (operation.done !== null && (side === null || operation.side === side)) last.set(operation.side, operation)
  }
  return [...last.values()].sort((a, b) => (a.side < b.side ? -1 : 1))
}
