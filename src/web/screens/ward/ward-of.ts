import { hygieneRules } from '#content/follow-up/hygiene-rules.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { owedOf } from '#core/owed/owed.ts'
import { isWardRound } from '#core/owed/owed-code-of.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import { instantAfter } from '#core/time/calendar-day.ts'
import { type Stay, stayOf } from '#core/ward/stay.ts'
import type { Waiting } from '../../journal/database.ts'

/** One animal in the ward, with everything owed in its case. */
export type InWard = { readonly file: CaseFile; readonly stay: Stay; readonly owed: readonly OwedItem[] }

/** Null when it does not lie in the ward by what this device knows: gone home, dead, or in theatre still. */
export function inWardOf(file: CaseFile): InWard | null {
  const stay = stayOf(file.theCase, operationsOf(file))
  if (!stay || stay.ended || file.theCase.latest('death')) return null
  return { file, stay, owed: owedOf(file, procedures, { rules: owedRules, hygiene: hygieneRules }).owed }
}

/** When something was last written of an animal, when that is so long ago that it may have gone home; else null. */
export function silentSince({ file, stay }: InWard, now: string): string | null {
  const last = file.theCase.lines.at(-1)?.at ?? stay.since
  return instantAfter({ at: last, zone: file.clinic.zone }, owedRules.ward.silentAfter.value) < now ? last : null
}

/** The cases that may lie in the ward: by the lists of the server, and by what this device has not sent yet. */
export function wardStreams(
  owed: readonly { readonly stream: string; readonly id: string }[],
  waiting: readonly Waiting[],
): string[] {
  const here = waiting.filter(({ entry }) => entry.subject.kind === 'operation' || entry.kind === 'ward-score')
  const streams = [
    ...owed.filter(({ id }) => isWardRound(id)).map(({ stream }) => stream),
    ...here.map(({ entry }) => entry.stream),
  ]
  return [...new Set(streams)].sort()
}
