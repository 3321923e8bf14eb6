import type { Sourced } from '#core/evidence/sourced.ts'
import { type Decimal, type Quantity, ratio, scale } from '#core/units/quantity.ts'
import type { LossSpan } from './blood-loss.ts'

/** A loss at which something is done: a fraction of the blood volume. */
export type BloodMark = { readonly fraction: string; readonly code: BloodMarkCode }
export type BloodMarkCode = 'inform' | 'replace' | 'transfusion-ready' | 'critical'

export type FiredMark = {
  readonly mark: Sourced<BloodMark>
  /** `measured`: the lower end has reached it. `upper-end`: it may have been reached, and nobody can say it was not. */
  readonly by: 'measured' | 'upper-end'
}

/** The loss at each mark for this animal. Example: 0.1 of 2880 mL is 288 mL. */
export function lossAtMarks(blood: Quantity<'mL'>, marks: readonly Sourced<BloodMark>[]) {
  return marks.map((mark) => ({ mark, volume: scale(blood, mark.value.fraction) }))
}

/** The span as parts of the blood volume, 0 to 1 and beyond. */
export function lossFractions(span: LossSpan, blood: Quantity<'mL'>): { atLeast: Decimal; atMost: Decimal } {
  return { atLeast: ratio(span.atLeast, blood), atMost: ratio(span.atMost, blood) }
}

/**
 * The marks that a loss has reached. The upper end counts as soon as it is not measured: lavage that was not
 * recovered, or swabs that were only counted, never keep a mark silent.
 *
 * @example firedMarks(span, blood, marks).at(-1)?.mark.value.code // 'replace'
 */
export function firedMarks(
  span: LossSpan,
  blood: Quantity<'mL'>,
  marks: readonly Sourced<BloodMark>[],
): readonly FiredMark[] {
  const reached = lossFractions(span, blood)
  return marks.flatMap((mark): FiredMark[] => {
    if (reached.atLeast.gte(mark.value.fraction)) return [{ mark, by: 'measured' }]
    return reached.atMost.gte(mark.value.fraction) ? [{ mark, by: 'upper-end' }] : []
  })
}
