import type { Side } from '#core/animal/species.ts'
import type { Case, Line } from '#core/journal/fold.ts'
import { isOfEar } from '#core/owed/operations.ts'

/** How an eye blinked when it was last looked at; nobody's word by telephone is a look. */
export type LastBlink = 'normal' | 'weak' | 'absent' | 'not-recorded'

/** A look at which somebody examined the blink of one side. */
export type BlinkLook = {
  readonly at: string
  readonly happenedAt: Line['header']['happenedAt']
  readonly blink: Exclude<LastBlink, 'not-recorded'>
  /** The examiner said that a block may still be at work. */
  readonly inBlock: boolean
}

/**
 * Checks, and rounds in the ward, at which the blink of one side was examined, oldest first.
 *
 * @example blinkLooksOf(theCase, 'LEFT').at(-1)?.blink // 'weak'
 */
export function blinkLooksOf(theCase: Case, side: Side): BlinkLook[] {
  const checks = theCase
    .live('check')
    .filter((line) => isOfEar(line, side) && line.body.seenBy !== 'owner-words')
    .map((line) => ({ line, blink: line.body.blink, inBlock: line.body.possibleBlockEffect }))
  const rounds = theCase.live('ward-score').map((line) => ({ line, blink: line.body[side].blink, inBlock: false }))
  return [...checks, ...rounds]
    .flatMap(({ line, blink, inBlock }) =>
      blink === 'not-assessed' ? [] : [{ at: line.at, happenedAt: line.header.happenedAt, blink, inBlock }],
    )
    .sort(byTime)
}

/**
 * The newest look at the blink of one side: a check, a round in the ward, or the first blink seen in recovery.
 *
 * @example lastBlinkOf(theCase, 'LEFT') // 'weak'
 */
export function lastBlinkOf(theCase: Case, side: Side): LastBlink {
  const firsts = theCase.live('observation').filter(({ body }) => body.first === 'blink' && body.side === side)
  const looks = [...blinkLooksOf(theCase, side), ...firsts.map(({ at }) => ({ at, blink: 'normal' as const }))]
  return looks.sort(byTime).at(-1)?.blink ?? 'not-recorded'
}

function byTime(a: { readonly at: string }, b: { readonly at: string }): number {
  return a.at < b.at ? -1 : 1
}
