import type { KindName, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { Chapter } from './chapter.ts'
import type { Gap } from './lane-scale.ts'
import type { Lane, Lanes } from './lanes.ts'

export const gapUnits = ['minutes', 'hours', 'days', 'weeks', 'months', 'years'] as const
export type GapUnit = (typeof gapUnits)[number]

export type LaneWording = {
  readonly lanes: Readonly<Record<Lane, string>>
  readonly kinds: Readonly<Record<KindName, string>>
  readonly unknownKind: string
  readonly one: Readonly<Record<GapUnit, string>>
  readonly many: Readonly<Record<GapUnit, string>>
  readonly entry: string
  readonly gap: string
}

const hour = 3_600_000
const lengths: Readonly<Record<GapUnit, number>> = {
  minutes: hour / 60,
  hours: hour,
  days: 24 * hour,
  weeks: 7 * 24 * hour,
  months: 30.44 * 24 * hour,
  years: 365.25 * 24 * hour,
}

/**
 * How long a gap is, in the largest unit of which it holds two, rounded: an order of size, not a measure.
 *
 * @example sayGap({ from: 0, until: 14 * 24 * 3_600_000 }, wording) // '2 weeks'
 */
export function sayGap(
  { from, until }: Pick<Gap, 'from' | 'until'>,
  wording: Pick<LaneWording, 'one' | 'many'>,
): string {
  const length = until - from
  const unit = gapUnits.findLast((one) => length >= 2 * lengths[one]) ?? 'minutes'
  const count = Math.max(1, Math.round(length / lengths[unit]))
  return fill(count === 1 ? wording.one[unit] : wording.many[unit], { count: String(count) })
}

/** What an entry's kind is called; a kind from a newer program is said to be one. */
export function sayKind({ header, known }: Pick<Line, 'header' | 'known'>, wording: LaneWording): string {
  const name = (wording.kinds as Readonly<Record<string, string>>)[header.kind]
  return known && name !== undefined ? name : fill(wording.unknownKind, { kind: header.kind })
}

export type LaneItem =
  | {
      readonly kind: 'entry'
      readonly line: Line
      readonly lane: Lane
      readonly chapter: Chapter
      readonly said: string
    }
  | { readonly kind: 'gap'; readonly said: string }

/**
 * The lanes as an ordered list for a reader who does not see them: every entry with date, side and name, and every gap
 * with its length.
 *
 * @example laneItems(lanes, lanesInEnglish).map(({ said }) => said)
 */
export function laneItems(lanes: Lanes, wording: LaneWording): LaneItem[] {
  const entries = lanes.marks
    .flatMap(({ lane, chapter, lines }) => lines.map((line) => ({ line, lane, chapter })))
    .sort((a, b) => order(a.line, b.line))
  const gaps = [...lanes.gaps]
  return entries.flatMap(({ line, lane, chapter }): LaneItem[] => {
    const passed: LaneItem[] = []
    while (gaps[0] && gaps[0].until <= Date.parse(line.at)) {
      const gap = gaps.shift()
      if (gap) passed.push({ kind: 'gap', said: fill(wording.gap, { length: sayGap(gap, wording) }) })
    }
    const about = { when: sayMoment(line.header.happenedAt), lane: wording.lanes[lane], what: sayKind(line, wording) }
    return [...passed, { kind: 'entry', line, lane, chapter, said: fill(wording.entry, about) }]
  })
}

function order(a: Line, b: Line): number {
  if (a.at !== b.at) return a.at < b.at ? -1 : 1
  return a.header.id < b.header.id ? -1 : 1
}
