import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { householdCalls, isTryOfOurs } from '#core/owed/our-tries.ts'
import type { Asking } from './askings.ts'

/**
 * The tries to reach the owner that belong to one time of asking: calls, messages and letters of ours in its time that
 * reached nobody. After a year they count on past the window, because the status is owed until somebody answers.
 *
 * @example triesOf(asking, file).length
 */
export function triesOf(
  { occasion, from, until }: Asking,
  file: Pick<CaseFile, 'theCase' | 'contacts'>,
): Line<BodyOf<'call'>>[] {
  const inTime = (at: string) => at >= from && (occasion.stillAsked || at <= until)
  return householdCalls(file).filter(
    ({ at, body }) => body.about === occasion.triesAbout && isTryOfOurs(body) && inTime(at),
  )
}

/** Over how many different ways. @example channelsIn(tries) // 2 */
export function channelsIn(tries: readonly { readonly body: Pick<BodyOf<'call'>, 'channel'> }[]): number {
  return new Set(tries.map(({ body }) => body.channel)).size
}
