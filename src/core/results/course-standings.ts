import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { daysBetween } from '../time/calendar-day.ts'
import { type TractRules, tractEnd } from './tract-times.ts'

/** Where an ear stands on one line of the curve: what happened on that day, before it, or not yet. */
export const tractStandings = [
  'event',
  'died',
  'left',
  'followed',
  'earlier-event',
  'earlier-died',
  'earlier-left',
] as const
export type TractStanding = (typeof tractStandings)[number]

export type Standing<Name extends string> = {
  readonly ear: OperatedEar
  readonly standing: Name
  /** Days from the operation to what ended the following of it. */
  readonly after: number
}

/**
 * The ears behind one line of the curve of late tracts. Those of that day and those followed longer are together the ones
 * the line calls followed.
 *
 * @param day of the line; null: the whole course, as each ear ended
 * @example tractStandingsOn(ears, 365, 90)[0]?.standing // 'followed'
 */
export function tractStandingsOn(
  ears: readonly OperatedEar[],
  day: number | null,
  deathWithinDays: TractRules['deathWithinDays'],
): Standing<TractStanding>[] {
  return ears.map((ear) => {
    const { time, status } = tractEnd(ear, deathWithinDays)
    const end = (['left', 'event', 'died'] as const)[status]
    if (day !== null && time > day) return { ear, standing: 'followed', after: time }
    return { ear, standing: day === null || time === day ? end : `earlier-${end}`, after: time }
  })
}

export const blinkStandings = ['back', 'not-back'] as const
export type BlinkStanding = (typeof blinkStandings)[number]

/** The ears whose blink was weaker than before: back, or not by the last look at it. */
export function blinkStandingsOf(ears: readonly OperatedEar[]): Standing<BlinkStanding>[] {
  return ears.flatMap((ear) => {
    if (!ear.blink) return []
    const { backOn, lastLookOn } = ear.blink
    const after = Math.max(0, daysBetween(ear.on, backOn ?? lastLookOn))
    return [{ ear, standing: backOn === null ? ('not-back' as const) : ('back' as const), after }]
  })
}
