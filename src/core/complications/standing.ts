import type { TroubleFacts } from './trouble.ts'
import type { TroubleClass } from './trouble-codes.ts'

/**
 * What a trouble is held for: as a person decided; else what the record itself shows to have been there before and no
 * worse; else null, not decided. What content proposes is never it.
 *
 * @example classOf({ …, decision: null, before: 'same' }) // 'was-there-before'
 */
export function classOf({ decision, before }: Pick<TroubleFacts, 'decision' | 'before'>): TroubleClass | null {
  if (decision) return decision.class
  return before === 'same' ? 'was-there-before' : null
}
