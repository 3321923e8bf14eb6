import type { Side } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { isAbout } from '#core/journal/lines-about.ts'
import { isOfEar, type OperationOnFile } from '#core/owed/operations.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { type ActingBlock, blocksOf } from './block-lasts.ts'
import { courseOf, wholeMinutes } from './ledger.ts'
import { doneAt } from './stamps.ts'

/** What is waited for after the tube is out, in the order in which it is looked for. */
export const awaited = ['blink', 'sternal', 'normal-temperature'] as const
export type Awaited = (typeof awaited)[number]

/** One thing that is waited for: seen, or waited for since tube out. */
export type FirstEvent = {
  readonly what: Awaited
  /** Whose eye; null for what belongs to the whole animal. */
  readonly side: Side | null
  /** The first entry that says so; null as long as nobody wrote it. */
  readonly seen: Line | null
  /** It was written as an event of its own, or found at a look that said more. */
  readonly how: 'tap' | 'look' | null
  /** False for a blink of which nobody said whose eye it was. */
  readonly sided: boolean
  /** From tube out until it was seen, or until now; null while nobody stamped tube out, and for what came before it. */
  readonly minutes: number | null
}

export type Recovery = {
  readonly tubeOut: string | null
  readonly events: readonly FirstEvent[]
  readonly blocks: readonly ActingBlock[]
  /** Until when a missing blink may be the block; null where nothing on record says so. */
  readonly blockUntil: string | null
  /** A local anaesthetic of unknown duration was given. */
  readonly blockUnknown: boolean
}

/**
 * Waking up after one operation: how long after tube out the eye blinked, the animal lay on its breastbone and was warm
 * again, and until when its block may hold the face. What "normal temperature" is, a person says; no number stands here.
 *
 * @example recoveryOf(file, operation, now, owedRules.blockLasts).events[0]?.minutes // 18, from tube out to first blink
 */
export function recoveryOf(
  file: Pick<CaseFile, 'theCase' | 'clinic'>,
  operation: OperationOnFile,
  now: string,
  lasts: Readonly<Record<string, Sourced<Period>>>,
): Recovery {
  const { theCase } = file
  const { from, until } = courseOf(theCase, operation.id)
  const inCourse = (line: Pick<Line, 'at'>) => from !== null && line.at >= from && line.at < until
  const tubeOut = doneAt(theCase, operation.id, 'tube-out')
  const blocks = blocksOf(theCase, operation.id, lasts, file.clinic.zone).filter(
    ({ given }) => isAbout(given, operation.id) || inCourse(given),
  )
  const known = blocks.flatMap(({ wornOff }) => wornOff ?? []).sort()
  return {
    tubeOut,
    events: awaited.map((what) => firstOf(file, { operation, what, tubeOut, now, inCourse })),
    blocks,
    blockUntil: known.at(-1) ?? null,
    blockUnknown: blocks.some(({ wornOff }) => wornOff === null),
  }
}

function firstOf(
  { theCase }: Pick<CaseFile, 'theCase'>,
  about: {
    readonly operation: OperationOnFile
    readonly what: Awaited
    readonly tubeOut: string | null
    readonly now: string
    readonly inCourse: (line: Pick<Line, 'at'>) => boolean
  },
): FirstEvent {
  const { operation, what, tubeOut, now, inCourse } = about
  const side = what === 'blink' ? operation.side : null
  const taps = theCase
    .live('observation')
    .filter(({ body }) => body.first === what && (side === null || (body.side ?? side) === side))
    .filter((line) => isAbout(line, operation.id) || (line.header.subject.kind === 'animal' && inCourse(line)))
    .map((line) => ({ line: line as Line, how: 'tap' as const, sided: side === null || line.body.side !== null }))
  const looks = side === null ? [] : blinksSeen(theCase, side, tubeOut ?? operation.moment.at).filter(inCourse)
  const found = [...taps, ...looks.map((line) => ({ line, how: 'look' as const, sided: true }))]
  const first = found.sort((a, b) => (a.line.at < b.line.at ? -1 : 1))[0]
  // The clock of the reader may be a little behind that of the tap.
  const end = first?.line.at ?? [now, tubeOut ?? now].sort().at(-1) ?? now
  return {
    what,
    side,
    seen: first?.line ?? null,
    how: first?.how ?? null,
    sided: first?.sided ?? true,
    minutes: tubeOut === null || end < tubeOut ? null : wholeMinutes(tubeOut, end),
  }
}

/** Looks after tube out that found this eye blinking, also weakly. */
function blinksSeen(theCase: CaseFile['theCase'], side: Side, after: string): Line[] {
  const blinks = (answer: string) => answer === 'normal' || answer === 'weak'
  return [
    ...theCase.live('check').filter((line) => isOfEar(line, side) && blinks(line.body.blink)),
    ...theCase.live('ward-score').filter(({ body }) => blinks(body[side].blink)),
  ].filter(({ at }) => at >= after) as Line[]
}
