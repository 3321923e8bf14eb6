import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { isTryOfOurs } from '#core/owed/our-tries.ts'
import type { Asking } from './askings.ts'

/**
 * The tries to reach the owner that belong to one time of asking: calls, messages and letters of ours in its time that
 * reached nobody. After a year they count on past the window, because the status is owed until somebody answers.
 *
 * @example triesOf(asking, theCase).length
 */
export function triesOf({ occasion, from, until }: Asking, theCase: Case): Line<BodyOf<'call'>>[] {
  return theCase
    .live('call')
    .filter(
      ({ at, body }) =>
        body.about === occasion.triesAbout && isTryOfOurs(body) && at >= from && (occasion.stillAsked || at <= until),
    )
}

/** Over how many different ways. @example channelsIn(tries) // 2 */
export function channelsIn(tries: readonly { readonly body: Pick<BodyOf<'call'>, 'channel'> }[]): number {
  return new Set(tries.map(({ body }) => body.channel)).size
}
