import { tellOwnerInEnglish } from '#content/wording/app-tell-owner.ts'
import type { Side } from '#core/animal/species.ts'
import { fill } from '#core/outcome/finding.ts'
import type { EmergencyAccount } from '#core/theatre/emergency-account.ts'
import { clockOf, minutesBetween } from '#core/time/moment.ts'

const words = tellOwnerInEnglish.draft

/**
 * What an owner could be told of the emergencies of an operation: what happened, when, for how long. How the animal is
 * now stays open, because no entry can say it.
 */
export function draftOfCall(accounts: readonly EmergencyAccount[], name: string, side: Side): string {
  const happened = accounts.map(({ shout, from, until }) => {
    const at = fill(words.calls[shout.call], { at: clockOf(from, shout.begun.header.happenedAt.zone) })
    if (until === null) return `${at} ${words.lasts}`
    const minutes = String(Math.max(1, Math.round(minutesBetween({ at: from }, { at: until }))))
    return `${at} ${fill(words.over, { minutes })}`
  })
  return [fill(words.began, { name, side }), ...happened, fill(words.now, { name }), words.ask].join('\n')
}
