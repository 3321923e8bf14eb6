import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import { bestAndWorst, ownRateOf } from '#core/evidence/own/own-rate.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Interval, wilsonInterval } from '#core/stats/proportion-interval.ts'

type Count = OwnFiguresAnswer['counts'][number]
type Rated = Pick<Count, 'events' | 'total' | 'lost'>

/** Whole numbers out of 100; an upper end is never rounded down. */
export function sayCount(count: Rated, shownFrom: number): string {
  const due = count.total + count.lost
  const rate = ownRateOf(count, shownFrom)
  const about = { total: String(count.total), events: String(count.events), due: String(due) }
  switch (rate.kind) {
    case 'nobody':
      return due === 0 ? words.sentences.nobody : fill(words.sentences.unknown, about)
    case 'none-yet':
      return fill(words.sentences.none, { ...about, upTo: String(Math.ceil(100 * rate.upTo)) })
    case 'withheld':
      return fill(words.sentences.withheld, { ...about, from: String(rate.from) })
    case 'shown':
      return fill(words.sentences.shown, {
        ...about,
        share: String(Math.round(100 * rate.share)),
        ...wholeEnds(rate.interval),
      })
  }
}

/** The other intervals of a rate that is shown: by Wilson, and with both ears of an animal tied to each other. */
export function sayIntervals(count: Rated & Pick<Count, 'acrossAnimals'>, shownFrom: number): string[] {
  if (ownRateOf(count, shownFrom).kind !== 'shown') return []
  const wilson = wilsonInterval(count)
  return [
    ...(wilson.kind === 'answer' ? [fill(words.wilson, wholeEnds(wilson.answer))] : []),
    ...(count.acrossAnimals ? [fill(words.acrossAnimals, wholeEnds(count.acrossAnimals))] : []),
  ]
}

/** How many of those due are known, and the share if none, and if all, of the others had it. */
export function sayKnown(count: Pick<Count, 'events' | 'total' | 'lost' | 'died' | 'ofNoSide'>): string[] {
  const span = bestAndWorst(count)
  const side = count.ofNoSide > 0 ? [fill(words.lostSide, { count: String(count.ofNoSide) })] : []
  if (!span || count.total === 0) return side
  const due = String(count.total + count.lost)
  if (count.lost === 0) return [words.complete]
  const ends = { low: String(Math.round(100 * span.low)), high: String(Math.round(100 * span.high)) }
  return [
    fill(words.lost, { total: String(count.total), due, ...ends }),
    ...side,
    ...(count.died > 0 ? [fill(words.lostDied, { died: String(count.died) })] : []),
  ]
}

export function sayWaiting({
  notYetDue,
  notYetDueWithEvent,
}: Pick<Count, 'notYetDue' | 'notYetDueWithEvent'>): string[] {
  if (notYetDue === 0) return []
  const about = { count: String(notYetDue), events: String(notYetDueWithEvent) }
  return [fill(notYetDueWithEvent > 0 ? words.waitingWith : words.waiting, about)]
}

/** The ends of an interval out of 100, never rounded towards the middle. */
export function wholeEnds({ low, high }: Interval): { readonly low: string; readonly high: string } {
  return { low: String(Math.floor(100 * low)), high: String(Math.ceil(100 * high)) }
}
