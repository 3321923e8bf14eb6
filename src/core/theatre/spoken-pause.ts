import type { Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { OneAnaesthetic } from '#core/owed/one-anaesthetic.ts'

/** One thing that is asked aloud and answered aloud, with the reason it is asked. */
export type PauseItem = {
  readonly id: string
  /** A statement, so that "yes" always means the safe answer. */
  readonly states: string
  readonly because: Sourced<string>
}

/** One of the three spoken pauses, its items in the order they are read aloud. */
export type SpokenPause = {
  readonly pause: BodyOf<'pause-item'>['pause']
  readonly items: readonly PauseItem[]
}

/**
 * The pauses of an operation: the second ear of one anaesthetic has the pause between the ears instead of the first.
 *
 * @example pausesOf(operation, pair, pauses).map(({ pause }) => pause) // ['before-second-ear', 'before-incision', …]
 */
export function pausesOf(
  operation: string,
  pair: OneAnaesthetic | null,
  pauses: readonly SpokenPause[],
): readonly SpokenPause[] {
  const not = pair?.second.id === operation ? 'before-anaesthesia' : 'before-second-ear'
  return pauses.filter(({ pause }) => pause !== not)
}

/**
 * What an item says in the pause it was spoken in; undefined for one that the house worded itself.
 *
 * @example statedItem(pauses, 'before-incision', 'side-spoken-and-pointed') // 'The side was spoken in full …'
 */
export function statedItem(pauses: readonly SpokenPause[], pause: string, id: string): string | undefined {
  const own = pauses.filter((one) => one.pause === pause)
  return [...own, ...pauses].flatMap(({ items }) => items).find((item) => item.id === id)?.states
}
