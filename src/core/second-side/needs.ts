import { isForEar } from '#core/agreement/agreed-for.ts'
import { newestEstimate } from '#core/agreement/estimate.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Case, KindName, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { baselineSince } from '#core/owed/baseline-before.ts'
import { isOfEar, type OperationOnFile } from '#core/owed/operations.ts'
import { weighedFor } from '#core/owed/weighed-for.ts'
import type { Period } from '#core/time/calendar-day.ts'
import type { SecondSide } from './second-side.ts'

/** What a second side asks for anew, in the order of the course. */
export const secondSideNeeds = [
  'choice',
  'baseline',
  'imaging',
  'estimate',
  'consent',
  'booking',
  'planned-lines',
  'weight',
] as const
export type SecondSideNeedName = (typeof secondSideNeeds)[number]

/**
 * `new`: from the time of the second side. `unanswered`: new, and nobody has answered it. `not-yet`: belongs to the
 * day of the operation. `old`: an older one is there and is not used.
 */
export type NeedState = 'new' | 'unanswered' | 'not-yet' | 'old' | 'missing'

export type SecondSideNeed = {
  readonly name: SecondSideNeedName
  readonly state: NeedState
  /** The one that counts, or the older one that does not. */
  readonly line: Pick<Line<unknown>, 'at' | 'header'> | null
  /** The kind of entry that settles it. */
  readonly kind: KindName
}

type Found = Pick<SecondSideNeed, 'state' | 'line'>
type Any = Pick<Line<unknown>, 'at' | 'header'>

/**
 * Everything that is asked anew for the second side, each with how it stands: nothing of the first side is taken over.
 *
 * @example needsOf(second, operation, file, notOlderThan).filter(({ state }) => state !== 'new').map(({ name }) => name)
 */
export function needsOf(
  second: SecondSide,
  operation: OperationOnFile | null,
  file: CaseFile,
  weightNotOlderThan: Period,
): SecondSideNeed[] {
  const { theCase } = file
  const { side, since } = second
  const found: Readonly<Record<SecondSideNeedName, Found>> = {
    choice: newest(
      theCase.live('choice').filter((line) => isOfEar(line, side)),
      since,
    ),
    baseline: baseline(second, theCase),
    imaging: newest(
      theCase.live('imaging').filter(({ body }) => body[side] !== null),
      since,
    ),
    estimate: estimate(theCase, since),
    consent: newest(
      theCase.live('agreement').filter((line) => isForEar(line, side)),
      since,
      theCase.live('agreement'),
    ),
    booking: operation?.booking ? { state: 'new', line: operation.booking } : nothing,
    'planned-lines': plannedLines(second, operation, theCase),
    weight: weight(second, operation, theCase, weightNotOlderThan),
  }
  return secondSideNeeds.map((name) => ({ name, kind: kinds[name], ...found[name] }))
}

const kinds: Readonly<Record<SecondSideNeedName, KindName>> = {
  choice: 'choice',
  baseline: 'baseline',
  imaging: 'imaging',
  estimate: 'estimate',
  consent: 'agreement',
  booking: 'booking',
  'planned-lines': 'planned-line',
  weight: 'weight',
}

const nothing: Found = { state: 'missing', line: null }

/** The last of them when it is new enough; else the last there is, as an older one. */
function newest(lines: readonly Any[], since: string, orElse: readonly Any[] = lines): Found {
  const last = lines.at(-1)
  if (last && last.at >= since) return { state: 'new', line: last }
  const older = last ?? orElse.at(-1)
  return older ? { state: 'old', line: older } : nothing
}

/** A look at the blink of this side before any sedative. */
function baseline({ side, since }: SecondSide, theCase: Case): Found {
  const made = baselineSince(theCase, since)
  if (made && made.body[side].blink !== 'not-assessed') return { state: 'new', line: made }
  const older = theCase.live('baseline').findLast(({ at }) => at < since)
  return older ? { state: 'old', line: older } : nothing
}

function estimate(theCase: Case, since: string): Found {
  const line = newestEstimate(theCase)
  if (!line) return nothing
  if (line.at < since) return { state: 'old', line }
  return { state: line.body.answer?.said === 'accepted' ? 'new' : 'unanswered', line }
}

function plannedLines({ first }: SecondSide, operation: OperationOnFile | null, theCase: Case): Found {
  const own = operation ? linesAbout(theCase, 'planned-line', operation.id).at(-1) : undefined
  if (own) return { state: 'new', line: own }
  const older = linesAbout(theCase, 'planned-line', first.id).at(-1)
  return older ? { state: 'old', line: older } : nothing
}

/** The weight of the day: what the scale said before is shown, and never reckoned with. */
function weight({ since }: SecondSide, operation: OperationOnFile | null, theCase: Case, notOlderThan: Period): Found {
  const made = operation && weighedFor(operation, since, theCase, notOlderThan)
  if (made) return { state: 'new', line: made }
  const older = theCase.live('weight').at(-1)
  if (!older) return nothing
  return { state: older.at >= since ? 'not-yet' : 'old', line: older }
}
