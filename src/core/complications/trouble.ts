import type { Side } from '#core/animal/species.ts'
import type { Moment } from '#core/time/moment.ts'
import type { LastingFunction, StateBefore, TroubleClass, TroubleEvent, TroubleNeed } from './trouble-codes.ts'

/** Where it is known from how things stood before the operation. */
export type BeforeFrom = 'baseline' | 'person' | 'nature'

/** What a person decided that a trouble is. */
export type TroubleDecision = {
  readonly class: TroubleClass
  /** Id in the people register; null where only the author of the entry is known. */
  readonly by: string | null
  readonly because: string | null
}

/** A grade that a person read in the published terms themselves. */
export type ReadGrade = { readonly term: string; readonly grade: string }

/** One trouble after one operation, from every entry that speaks of it: counted once, however often it was written. */
export type Trouble = {
  /** The same through corrections: `operation-1 wound-gap`. */
  readonly id: string
  readonly event: TroubleEvent
  readonly operation: string
  /** An ear's own trouble, or one of the whole animal: never counted together. */
  readonly unit: 'ear' | 'animal'
  readonly side: Side | null
  readonly firstNoticed: Moment
  readonly needed: TroubleNeed
  readonly before: StateBefore
  readonly beforeFrom: BeforeFrom | null
  /** The baseline and a person say differently what was there before: the baseline counts, and it is said. */
  readonly beforeDisagrees: boolean
  readonly lasting: LastingFunction
  readonly decision: TroubleDecision | null
  readonly read: ReadGrade | null
  readonly text: string | null
  /** Every entry it was read from. */
  readonly from: readonly string[]
  /** The entry that is corrected when more becomes known; null where nobody wrote one and it follows from others. */
  readonly written: string | null
}

/** What the figures of the clinic keep of it: no name and no words. */
export type TroubleFacts = Pick<Trouble, 'event' | 'unit' | 'needed' | 'before' | 'lasting' | 'decision' | 'read'> & {
  /** The first day on which it was noticed. */
  readonly on: string
}
