import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Case, Line } from '#core/journal/fold.ts'
import type { Chapter } from './chapter.ts'
import { periodsOf } from './lane-periods.ts'
import { type Gap, type Stretch, stretchesOf, xOf } from './lane-scale.ts'
import { type Tick, ticksOf } from './lane-ticks.ts'
import { placedLines } from './placed-lines.ts'

/** Above, below, or between: the animal as a whole. */
export type Lane = Side | 'animal'

/** One entry, or several that would touch each other where there is no more room. */
export type Mark = {
  readonly lane: Lane
  readonly x: number
  /** 0 is next to the axis; higher is further away from it. */
  readonly level: number
  readonly chapter: Chapter
  /** Entries behind the mark, in the order they happened. */
  readonly lines: readonly Line[]
  /** Some of its entries stand side by side and wait for a person. */
  readonly conflict: boolean
  /** Some of its entries have an uncertain order in time. */
  readonly orderUncertain: boolean
}

export type Lanes = {
  /** As asked, or wider when the stretches do not fit. */
  readonly width: number
  readonly stretches: readonly Stretch[]
  readonly gaps: readonly Gap[]
  readonly ticks: readonly Tick[]
  readonly marks: readonly Mark[]
  /** How many levels each lane uses. */
  readonly levels: Readonly<Record<Lane, number>>
  readonly zone: string
}

export type LaneWish = {
  readonly width: number
  /** How far apart marks of one level are at least; 24 is the least a finger can aim at. */
  readonly apart?: number
  /** Levels of a lane before marks are bundled. */
  readonly most?: number
}

/**
 * The case as two lanes of time: LEFT above, RIGHT below, the animal as a whole between. Pure layout: places in pixels
 * for a given width, every entry that counts exactly once, gaps of time drawn short and labelled.
 *
 * @example lanesOf(file, { width: 1200 }).marks.filter(({ lane }) => lane === 'LEFT')
 */
export function lanesOf(file: Pick<CaseFile, 'theCase' | 'clinic'>, wish: LaneWish): Lanes {
  const { theCase } = file
  const { zone } = file.clinic
  const placed = placedLines(theCase)
  const lines = theCase.lines.filter(({ header }) => placed.has(header.id))
  const stretches = stretchesOf(periodsOf(theCase, lines), wish.width)
  const width = Math.max(wish.width, ...stretches.map(({ x, width: own }) => x + own))
  const { apart = 24, most = 4 } = wish
  const lanes: readonly Lane[] = ['LEFT', 'animal', 'RIGHT']
  const marks = lanes.flatMap((lane) => {
    const own = lines.filter((line) => laneOf(line, theCase) === lane)
    const spots = own.map((line) => ({
      line,
      x: xOf(Date.parse(line.at), stretches),
      chapter: placed.get(line.header.id) ?? 'Referral',
    }))
    return stacked(spots, lane, apart, most, theCase)
  })
  const levelsOf = (lane: Lane) =>
    Math.max(0, ...marks.filter((mark) => mark.lane === lane).map(({ level }) => level + 1))
  return {
    width,
    stretches,
    gaps: stretches.flatMap(({ gaps }) => gaps),
    ticks: ticksOf(stretches, zone),
    marks,
    levels: { LEFT: levelsOf('LEFT'), animal: levelsOf('animal'), RIGHT: levelsOf('RIGHT') },
    zone,
  }
}

/** The side an entry is about: its ear, or the side of its operation; else the animal as a whole. */
export function laneOf(line: Pick<Line<unknown>, 'header'>, theCase: Case): Lane {
  const { subject } = line.header
  if (subject.kind === 'ear') return subject.side
  if (subject.kind !== 'operation') return 'animal'
  const of = (other: Line<{ side: Side }>) =>
    other.header.subject.kind === 'operation' && other.header.subject.operation === subject.operation
  const told = theCase.live('operation-summary').findLast(of) ?? theCase.live('booking').findLast(of)
  return told?.body.side ?? 'animal'
}

type Spot = { readonly line: Line; readonly x: number; readonly chapter: Chapter }

/** Each mark on the lowest level where it touches nobody; what finds no level joins the nearest mark of the top one. */
function stacked(spots: readonly Spot[], lane: Lane, apart: number, most: number, theCase: Case): Mark[] {
  const conflicting = new Set(theCase.conflicts.flatMap(({ between }) => between))
  const marks: Mark[] = []
  const lastOf = new Map<number, number>()
  for (const spot of spots) {
    const level = Array.from({ length: most }, (_, at) => at).find((at) => {
      const last = lastOf.get(at)
      return last === undefined || spot.x - (marks[last]?.x ?? 0) >= apart
    })
    const flags = { conflict: conflicting.has(spot.line.header.id), orderUncertain: !spot.line.orderCertain }
    if (level !== undefined) {
      lastOf.set(level, marks.length)
      marks.push({ lane, x: spot.x, level, chapter: spot.chapter, lines: [spot.line], ...flags })
      continue
    }
    const onTop = lastOf.get(most - 1) ?? marks.length - 1
    const top = marks[onTop]
    if (!top) continue
    marks[onTop] = {
      ...top,
      lines: [...top.lines, spot.line],
      conflict: top.conflict || flags.conflict,
      orderUncertain: top.orderUncertain || flags.orderUncertain,
    }
  }
  return marks
}
