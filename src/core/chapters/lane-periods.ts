import { compareText } from '#core/journal/compare-text.ts'
import type { Case, KindName, Line } from '#core/journal/fold.ts'
import { type Chapter, chapterRank } from './chapter.ts'
import type { Period } from './lane-scale.ts'

type Milestone = { readonly at: string; readonly chapter: Chapter; readonly operation: string | null }

const opens: readonly (readonly [Chapter, readonly KindName[]])[] = [
  ['Referral', ['referral', 'identity']],
  ['Work-up', ['ear-findings', 'baseline', 'imaging', 'history-item', 'medicine-before']],
  ['Choice', ['choice']],
  ['Agreement', ['agreement']],
  ['Theatre', ['planned-line', 'pause-item', 'theatre-stamp', 'drug-given']],
  ['Ward', ['operation-summary']],
  ['Home', ['discharge']],
  ['Year', ['check', 'owner-answer', 'twelve-months', 'late-event']],
]

/**
 * The stretches of the course in time: each begins with the entry that opened its chapter, and the course never goes
 * back, except to Theatre for another operation. So a check of the other ear in the year does not cut the year in two.
 */
export function periodsOf(theCase: Case, lines: readonly Line[]): Period[] {
  const milestones = opens
    .flatMap(([chapter, kinds]) => kinds.flatMap((kind) => theCase.live(kind).map((line) => milestone(line, chapter))))
    .sort((a, b) => compareText(a.at, b.at) || chapterRank(a.chapter) - chapterRank(b.chapter))
  const starts: Milestone[] = []
  for (const one of milestones) {
    const last = starts.at(-1)
    if (!last || begins(one, last, starts)) starts.push(one)
  }
  const first = lines[0]
  if (!first) return []
  const periods = starts.map(({ at, chapter }) => ({ chapter, from: Date.parse(at) }))
  if (!periods[0]) periods.push({ chapter: 'Referral', from: Date.parse(first.at) })
  const early = periods[0] as { chapter: Chapter; from: number }
  early.from = Math.min(early.from, Date.parse(first.at))
  return periods.map((period, index) => {
    const next = periods[index + 1]?.from ?? Number.POSITIVE_INFINITY
    const times = lines.map(({ at }) => Date.parse(at)).filter((time) => time >= period.from && time < next)
    return { ...period, times }
  })
}

function milestone(line: Line<unknown>, chapter: Chapter): Milestone {
  const { subject } = line.header
  return { at: line.at, chapter, operation: subject.kind === 'operation' ? subject.operation : null }
}

function begins(one: Milestone, last: Milestone, starts: readonly Milestone[]): boolean {
  if (one.at === last.at) return false
  // A check counts as the year only once the animal has gone home.
  if (one.chapter === 'Year' && last.chapter !== 'Home') return false
  if (chapterRank(one.chapter) > chapterRank(last.chapter)) return true
  const known = starts.some(({ operation }) => operation !== null && operation === one.operation)
  return (
    one.chapter === 'Theatre' && one.operation !== null && !known && chapterRank(last.chapter) > chapterRank('Theatre')
  )
}
