import { strengthOf } from '#core/dosing/from-journal.ts'
import { readDoseFor } from '#core/dosing/read-chosen.ts'
import type { PlannedLine } from '#core/dosing/request.ts'
import { type LeafRefusal, readWholeNumber } from '#core/forms/read-leaf.ts'
import type { Dose, DoseRow } from '#core/formulary/drug.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { quantity } from '#core/units/quantity.ts'

/** A course as it is typed; an empty text is "not said", and nothing is filled in. */
export type CourseDraft = {
  readonly dose: string
  readonly every: string
  readonly days: string
  /** A product of the shelf; empty for none. */
  readonly item: string
}

export const emptyCourse: CourseDraft = { dose: '', every: '', days: '', item: '' }

export type CourseRead = {
  /** The line to be worked out; null until dose and days can be read. */
  readonly line: PlannedLine | null
  readonly refusals: Partial<Readonly<Record<keyof CourseDraft, LeafRefusal>>>
}

/**
 * The course that a draft stands for, to be judged by the dose engine; of each field that was typed, what is wrong with it.
 *
 * @example readCourse({ dose: '5 mg/kg', every: '', days: '14', item: '' }, asked, row, [], '.').line?.days // 14
 */
export function readCourse(
  draft: CourseDraft,
  asked: PlannedLine,
  row: DoseRow,
  shelf: readonly BodyOf<'shelf-item'>[],
  decimalMark: '.' | ',',
): CourseRead {
  const dose = readDoseFor(row, draft.dose, decimalMark)
  const days = readWholeNumber(draft.days, 1, 180)
  const every = draft.every.trim() === '' ? null : readWholeNumber(draft.every, 1, 168)
  const item = shelf.find((one) => one.item === draft.item)
  const typed = (text: string) => text.trim() !== ''
  const refusals = {
    ...(typed(draft.dose) && dose.kind === 'refusal' ? { dose: dose.refusal } : {}),
    ...(typed(draft.days) && days.kind === 'refusal' ? { days: days.refusal } : {}),
    ...(every?.kind === 'refusal' ? { every: every.refusal } : {}),
  }
  if (dose.kind === 'refusal' || days.kind === 'refusal' || every?.kind === 'refusal') return { line: null, refusals }
  const line: PlannedLine = {
    ...asked,
    dose: fromStored(dose.answer) as unknown as Dose,
    days: Number(days.answer),
    ...(every && { every: quantity(String(every.answer), 'h') }),
    ...strengthOf(item),
  }
  return { line, refusals }
}
