import { check as arrangement } from '#content/forms/check.ts'
import type { Side } from '#core/animal/species.ts'
import { formOf } from '#core/forms/form.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { operatedEars, type VetAsk } from '#core/vet/asked-of-vet.ts'
import { lookFields } from '#core/vet/look-fields.ts'
import type { AnswerAsked, FaultAt, Typed } from '#core/vet/read-answer.ts'

/** What one link asks for, and the case behind it. */
export type VetFormInput = {
  readonly file: CaseFile
  readonly link: {
    readonly id: string
    readonly contact: string
    readonly asked: VetAsk
    readonly side: Side | null
    readonly dueBy: string | null
    readonly expiresAt: string
  }
  readonly now: string
  /** What was typed and not kept, with what is wrong with it. */
  readonly typed: Typed | null
  readonly faults: readonly FaultAt[]
  /** What became of what was sent just now. */
  readonly sent: 'kept' | 'too-many' | 'not-kept' | null
}

export const vetFields = lookFields(formOf(arrangement))

/** What the form of this link asks, as its answer is read against. */
export function askedBy({ file, link, now }: Pick<VetFormInput, 'file' | 'link' | 'now'>): AnswerAsked {
  const { zone } = file.clinic
  const ears = operatedEars(operationsOf(file), link.side).map(({ side, moment }) => ({
    side,
    operated: dayOf({ at: moment.at, zone }),
  }))
  return { ears, fields: vetFields, today: dayOf({ at: now, zone }) }
}
