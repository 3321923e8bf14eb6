import type { Chapter } from './chapter.ts'

/** Milliseconds of an instant, and back. */
export type Stretch = {
  readonly chapter: Chapter
  readonly from: number
  /** The beginning of the next stretch, or the last mark. */
  readonly until: number
  readonly x: number
  readonly width: number
  /** Points of the scale: between two of them time runs evenly, except over a gap. */
  readonly knots: readonly { readonly at: number; readonly x: number }[]
  readonly gaps: readonly Gap[]
}

/** Time in which nothing was written, drawn shorter than it was. */
export type Gap = { readonly from: number; readonly until: number; readonly x: number; readonly width: number }

/** A stretch before it has its room: its chapter, its beginning, and the times of its marks. */
export type Period = { readonly chapter: Chapter; readonly from: number; readonly times: readonly number[] }

/** A silence longer than this part of its stretch is a gap. */
const gapPart = 0.2
/** How wide a gap is drawn at most, and how much of a stretch all its gaps take at most. */
const gapWidth = 56
const gapsAtMost = 0.6
/** No stretch is narrower: its name and its first date have to fit. */
const leastStretch = 108
/** Room at both ends of a stretch, so that marks do not touch its border. */
const margin = 14

/**
 * Gives every stretch room for its marks, whatever its length: a two-hour operation and a year both stay readable.
 * Wider than asked when the stretches do not fit; then the page scrolls.
 *
 * @example stretchesOf(periods, 1200).reduce((sum, { width }) => sum + width, 0) // 1200
 */
export function stretchesOf(periods: readonly Period[], width: number): Stretch[] {
  const spare = Math.max(0, width - periods.length * leastStretch)
  const shares = periods.map(shareOf)
  const all = shares.reduce((sum, share) => sum + share, 0)
  let x = 0
  return periods.map((period, index) => {
    const own = leastStretch + (all === 0 ? spare / periods.length : (spare * (shares[index] ?? 0)) / all)
    const until = periods[index + 1]?.from ?? Math.max(period.from, ...period.times)
    const stretch = laidOut(period, until, x, own)
    x += own
    return stretch
  })
}

/** Many marks want room, and so does a long time; both only by their order of size. */
function shareOf({ from, times }: Period): number {
  const hours = (Math.max(from, ...times) - from) / 3_600_000
  return times.length ** 0.7 + Math.log10(1 + hours)
}

function laidOut({ chapter, from, times }: Period, until: number, x: number, width: number): Stretch {
  const at = [...new Set([from, ...times, until])].filter((time) => time >= from && time <= until).sort((a, b) => a - b)
  const steps = at.slice(1).map((time, index) => ({ from: at[index] ?? time, until: time }))
  const isGap = (step: { from: number; until: number }) => step.until - step.from > gapPart * (until - from)
  const gaps = steps.filter(isGap)
  const flowing = steps.filter((step) => !isGap(step)).reduce((sum, step) => sum + (step.until - step.from), 0)
  const inner = width - 2 * margin
  const each = flowing === 0 ? inner / Math.max(1, gaps.length) : Math.min(gapWidth, (inner * gapsAtMost) / gaps.length)
  const rest = inner - each * gaps.length
  const knots = [{ at: at[0] ?? from, x: x + margin }]
  const drawn: Gap[] = []
  for (const step of steps) {
    const start = knots.at(-1)?.x ?? x + margin
    const length = isGap(step) ? each : (rest * (step.until - step.from)) / flowing
    if (isGap(step)) drawn.push({ ...step, x: start, width: each })
    knots.push({ at: step.until, x: start + length })
  }
  return { chapter, from, until, x, width, knots, gaps: drawn }
}

/** Where a time stands on the scale. */
export function xOf(time: number, stretches: readonly Stretch[]): number {
  const stretch = stretches.findLast(({ from }) => from <= time) ?? stretches[0]
  if (!stretch) return 0
  const { knots } = stretch
  const after = knots.findIndex(({ at }) => at >= time)
  const b = knots[after === -1 ? knots.length - 1 : after]
  const a = after > 0 ? knots[after - 1] : b
  if (!a || !b || b.at === a.at) return b?.x ?? stretch.x
  return a.x + ((Math.min(time, b.at) - a.at) / (b.at - a.at)) * (b.x - a.x)
}
