import type { z } from 'zod'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import type { SaidOdds } from '#core/evidence/say-published.ts'
import type { CountUnit } from '#core/evidence/study.ts'
import type { shownNumberSchema } from '#core/journal/kinds/agreement.ts'

export type ShownNumber = z.infer<typeof shownNumberSchema>

/** What is said of one outcome, by the one who says it. */
export type SaidOutcome = {
  readonly outcome: OutcomeCode
  readonly unit: CountUnit
  readonly said: Pick<SaidOdds, 'low' | 'middle' | 'high' | 'sentence'>
}

/**
 * The numbers of one operation as an owner hears them today, to be kept in the agreement.
 *
 * @example numbersShown('teca-lbo', [{ outcome: 'horner_any', unit: 'animal', said }])
 */
export function numbersShown(procedure: ProcedureId, some: readonly SaidOutcome[]): ShownNumber[] {
  return some.map(({ outcome, unit, said: { low, middle, high, sentence } }) => ({
    procedure,
    outcome,
    unit,
    low,
    middle,
    high,
    said: sentence,
  }))
}

export type ChangedNumber = { readonly was: ShownNumber | null; readonly now: ShownNumber | null }

/**
 * Which numbers are others now. Only the figures count: the same figure in better words, or in another language, asks
 * nobody again.
 *
 * @example changedNumbers(agreement.body.plan.numbers, today) // []
 */
export function changedNumbers(then: readonly ShownNumber[], now: readonly ShownNumber[]): ChangedNumber[] {
  const found = (some: readonly ShownNumber[], one: ShownNumber) => some.find((other) => keyOf(other) === keyOf(one))
  const changed = then
    .map((was) => ({ was, now: found(now, was) ?? null }))
    .filter((pair) => pair.now === null || figuresOf(pair.was) !== figuresOf(pair.now))
  const added = now.filter((one) => found(then, one) === undefined).map((one) => ({ was: null, now: one }))
  return [...changed, ...added]
}

function keyOf({ procedure, unit, outcome }: ShownNumber): string {
  return `${procedure} ${unit} ${outcome}`
}

function figuresOf({ low, middle, high }: ShownNumber): string {
  return `${low} ${middle} ${high}`
}
