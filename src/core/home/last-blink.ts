import type { Side } from '#core/animal/species.ts'
import type { Case } from '#core/journal/fold.ts'
import { isOfEar } from '#core/owed/operations.ts'

/** How an eye blinked when it was last looked at; nobody's word by telephone is a look. */
export type LastBlink = 'normal' | 'weak' | 'absent' | 'not-recorded'

/**
 * The newest look at the blink of one side: a check, a round in the ward, or the first blink seen in recovery.
 *
 * @example lastBlinkOf(theCase, 'LEFT') // 'weak'
 */
export function lastBlinkOf(theCase: Case, side: Side): LastBlink {
  const checks = theCase.live('check').filter((line) => isOfEar(line, side) && line.body.seenBy !== 'owner-words')
  const firsts = theCase.live('observation').filter(({ body }) => body.first === 'blink' && body.side === side)
  const looks = [
    ...checks.map(({ at, body }) => ({ at, blink: body.blink })),
    ...theCase.live('ward-score').map(({ at, body }) => ({ at, blink: body[side].blink })),
    ...firsts.map(({ at }) => ({ at, blink: 'normal' as const })),
  ].sort((a, b) => (a.at < b.at ? -1 : 1))
  const seen = looks.flatMap(({ blink }) => (blink === 'not-assessed' ? [] : [blink]))
  return seen.at(-1) ?? 'not-recorded'
}
