import { studyPage as words } from '#content/wording/app-sources.ts'
import type { StudyOutcome } from '#core/evidence/study.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Interval } from '#core/stats/proportion-interval.ts'

/**
 * A share out of 100 with one digit, for the surgeon. Example: `sayPerHundred(81 / 309)` is `26.2`.
 */
export function sayPerHundred(share: number): string {
  return (share * 100).toFixed(1)
}

/** Example: `21.4 to 31.5`. */
export function sayInterval({ low, high }: Interval): string {
  return fill(words.interval, { low: sayPerHundred(low), high: sayPerHundred(high) })
}

/** `81 of 309 dogs`, or the percentage that was printed without its count. */
export function sayCount({ counted, unit, species }: StudyOutcome): string {
  if (counted.kind === 'percent-only') return fill(words.percentOnly, { printed: counted.printed })
  const { events, total } = counted
  const { one: animal, many: animals } = words.animals[species]
  const about = { events: String(events), total: String(total), animal, animals }
  return fill(words.counts[unit][total === 1 ? 'one' : 'many'], about)
}
