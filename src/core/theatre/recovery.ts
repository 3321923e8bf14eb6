import type { Side } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { isAbout } from '#core/journal/lines-about.ts'
import { isOfEar, type OperationOnFile } from '#core/owed/operations.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { type ActingBlock, blocksOf } from './block-lasts.ts'
import { courseOf, isAboutAny, marked, togetherWith, wholeMinutes } from './ledger.ts'

/** What is waited for after the tube is out, in the order in which it is looked for. */
export type Awaited = 'blink' | 'sternal' | 'normal-temperature'

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

/** What a missing blink of one eye means while a block may act. */
export type BlockEffect = {
  readonly side: Side
  /** Null where no duration is on record for a drug that was given. */
  readonly until: string | null
}

export type Recovery = {
  readonly tubeOut: string | null
  readonly events: readonly FirstEvent[]
  readonly blocks: readonly ActingBlock[]
  /** For every operated ear that a local anaesthetic was given for. */
  readonly effects: readonly BlockEffect[]
}

/**
 * Waking up after one anaesthetic: how long after tube out each operated eye blinked, the animal lay on its breastbone
 * and was warm again, and until when a block may hold the face. What "normal temperature" is, a person says; no number
 * stands here.
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
  const together = togetherWith(theCase, operation.id)
  const ids = together.map(({ id }) => id)
  const { from, until } = courseOf(theCase, ids)
  const inCourse = (line: Pick<Line, 'at'>) => from !== null && line.at >= from && line.at < until
  const tubeOut = marked(theCase, ids, 'tube-out').at(-1) ?? null
  const blocksFor = (operations: readonly string[]) =>
    blocksOf(theCase, operations, lasts, file.clinic.zone).filter(
      ({ given }) => isAboutAny(given, operations) || inCourse(given),
    )
  const about = { theCase, together, tubeOut, now, inCourse }
  return {
    tubeOut,
    events: [
      ...together.map((one) => firstOf('blink', one, about)),
      firstOf('sternal', null, about),
      firstOf('normal-temperature', null, about),
    ],
    blocks: blocksFor(ids),
    effects: together.flatMap(({ id, side }) => effectOf(side, blocksFor([id]))),
  }
}

/** The last of the durations; where one of them is unknown, so is the whole. */
function effectOf(side: Side, blocks: readonly ActingBlock[]): BlockEffect[] {
  if (blocks.length === 0) return []
  const known = blocks.flatMap(({ wornOff }) => wornOff ?? []).sort()
  return [{ side, until: known.length < blocks.length ? null : (known.at(-1) ?? null) }]
}

function firstOf(
  what: Awaited,
  /** Whose ear, of a blink. */
  operation: OperationOnFile | null,
  about: {
    readonly theCase: Case
    readonly together: readonly OperationOnFile[]
    readonly tubeOut: string | null
    readonly now: string
    readonly inCourse: (line: Pick<Line, 'at'>) => boolean
  },
): FirstEvent {
  const { theCase, together, tubeOut, now, inCourse } = about
  const side = operation?.side ?? null
  const ids = together.map(({ id }) => id)
  const fits = (line: Line<BodyOf<'observation'>>) => {
    if (operation === null) return true
    // Of two ears under one anaesthetic, a blink of which nobody said whose it was belongs to the ear it was written for.
    return line.body.side === null ? together.length === 1 || isAbout(line, operation.id) : line.body.side === side
  }
  const taps = theCase
    .live('observation')
    .filter((line) => line.body.first === what && fits(line))
    .filter((line) => isAboutAny(line, ids) || (line.header.subject.kind === 'animal' && inCourse(line)))
    .map((line) => ({ line: line as Line, how: 'tap' as const, sided: side === null || line.body.side !== null }))
  const looks = operation === null ? [] : blinksSeen(theCase, operation.side, tubeOut ?? operation.moment.at)
  const found = [...taps, ...looks.filter(inCourse).map((line) => ({ line, how: 'look' as const, sided: true }))]
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
function blinksSeen(theCase: Case, side: Side, after: string): Line[] {
  const blinks = (answer: string) => answer === 'normal' || answer === 'weak'
  return [
    ...theCase.live('check').filter((line) => isOfEar(line, side) && blinks(line.body.blink)),
    ...theCase.live('ward-score').filter(({ body }) => blinks(body[side].blink)),
  ].filter(({ at }) => at >= after) as Line[]
}
