import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { isAboutAny, togetherWith } from './ledger.ts'
import type { RoomCall } from './room-call.ts'
import { type Shout, shoutsOf } from './shouts.ts'
import { isLabelTap } from './specimens.ts'
import type { Stamp } from './stamps.ts'

/** What the entries say of one emergency; nothing of it is typed again. */
export type EmergencyAccount = {
  readonly shout: Shout
  readonly from: string
  /** Null as long as it lasts. */
  readonly until: string | null
  readonly given: readonly Line<BodyOf<'drug-given'>>[]
  readonly steps: readonly Stamp[]
  /** Losses that had been written when it was over. */
  readonly losses: readonly Line<BodyOf<'blood-loss'>>[]
}

/**
 * Every emergency of an operation with the drugs given and the checkpoints stamped while it lasted.
 *
 * @example emergencyAccounts(theCase, operation.id)[0]?.given.map(({ body }) => body.drug) // ['tranexamic-acid']
 */
export function emergencyAccounts(theCase: Case, operation: string): EmergencyAccount[] {
  const together = [operation, ...togetherWith(theCase, operation).map(({ id }) => id)]
  return shoutsOf(theCase, operation).map((shout) => {
    const from = shout.begun.at
    const until = shout.ended?.at ?? null
    const during = ({ at }: { readonly at: string }) => at >= from && (until === null || at <= until)
    const stamps = linesAbout(theCase, 'theatre-stamp', operation)
    return {
      shout,
      from,
      until,
      // A drug may be filed to the animal, or to the other ear under the same anaesthetic.
      given: theCase.live('drug-given').filter((line) => during(line) && isHere(line, together)),
      steps: stamps.filter((line) => during(line) && isStep(line)),
      losses: linesAbout(theCase, 'blood-loss', operation).filter(({ at }) => until === null || at <= until),
    }
  })
}

function isHere(line: Pick<Line<unknown>, 'header'>, operations: readonly string[]): boolean {
  return line.header.subject.kind === 'animal' || isAboutAny(line, operations)
}

function isStep({ body }: Stamp): boolean {
  return !body.checkpoint.startsWith('emergency-') && !isLabelTap(body.checkpoint)
}

type Complication = BodyOf<'operation-summary'>['complications'][number]

const complicationOf: Partial<Record<RoomCall, Complication>> = {
  bleeding: 'bleeding',
  'no-pulse': 'arrest',
  airway: 'airway',
  'low-pressure': 'low-pressure',
}

/**
 * Complications that the calls of an operation point to: proposed to the surgeon, never set.
 *
 * @example proposedComplications(shouts) // ['bleeding']
 */
export function proposedComplications(shouts: readonly Pick<Shout, 'call'>[]): Complication[] {
  return [...new Set(shouts.flatMap(({ call }) => complicationOf[call] ?? []))]
}
