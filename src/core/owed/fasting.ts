import { Temporal } from 'temporal-polyfill'
import type { Provenance } from '#core/evidence/sourced.ts'
import type { FastingRules } from '#core/procedures/follow-up.ts'
import { dayAfter, dayOf, type Span } from '#core/time/calendar-day.ts'
import { instantText, type Moment } from '#core/time/moment.ts'
import { compare, type Quantity } from '#core/units/quantity.ts'
import type { Why } from './owed-item.ts'

/** What is known of the animal before its operation. */
export type FastingAnimal = { readonly born: Moment | null; readonly weight: Quantity<'kg'> | null }

/** The last meal ends between two clock times; or what is missing to say so. */
export type Fasting =
  | {
      readonly kind: 'times'
      readonly lastMealFrom: string
      readonly lastMealBy: string
      readonly why: readonly Why[]
      readonly facts: readonly Provenance[]
    }
  | { readonly kind: 'unknown'; readonly missing: readonly ('age' | 'weight')[] }

/**
 * Clock times of the last meal before anaesthesia, for this animal: grown animals 4 to 6 hours, those under 8 weeks or
 * 2 kg 1 to 2 hours; water stays. Without weight or age nothing is guessed. Advice that disagrees is kept beside.
 * Reference: the practice page named in content/follow-up, which agrees with the 2020 AAHA table as remembered.
 */
export function fastingOf(operation: Moment, animal: FastingAnimal, rules: FastingRules): Fasting {
  const small = animal.weight && compare(animal.weight, rules.youngOrSmall.value.below) < 0
  const young = animal.born && isYoung(animal.born, operation, rules.youngOrSmall.value.belowWeeks)
  const aside = [...rules.exceptions, ...rules.disagrees]
  const beside: Why[] = [
    ...rules.exceptions.map((fact): Why => ({ code: 'fasting-exception', about: { advice: fact.value } })),
    ...rules.disagrees.map((fact): Why => ({ code: 'fasting-advice-differs', about: { advice: fact.value } })),
  ]
  if (small || young) {
    const { span } = rules.youngOrSmall.value
    return timesOf(operation, span, 'fasting-young-or-small', [rules.youngOrSmall, ...aside], beside)
  }
  if (animal.weight === null || animal.born === null || young === null) {
    const missing = [
      ...(animal.born === null || young === null ? ['age' as const] : []),
      ...(animal.weight === null ? ['weight' as const] : []),
    ]
    return { kind: 'unknown', missing }
  }
  return timesOf(operation, rules.grown.value, 'fasting-grown', [rules.grown, ...aside], beside)
}

/** Null when the birth is known too coarsely to say. */
function isYoung(born: Moment, operation: Moment, weeks: number): boolean | null {
  const grownOn = (day: string) => dayAfter(day, { count: weeks, unit: 'weeks' })
  const today = dayOf(operation)
  const earliest = dayOf(born)
  const slack = born.precision === 'year' ? 12 : born.precision === 'month' ? 1 : 0
  const latest = dayAfter(earliest, { count: slack, unit: 'months' })
  if (grownOn(latest) <= today) return false
  return grownOn(earliest) > today ? true : null
}

function timesOf(
  operation: Moment,
  span: Span,
  code: 'fasting-grown' | 'fasting-young-or-small',
  facts: readonly Provenance[],
  beside: readonly Why[],
): Fasting {
  const at = Temporal.Instant.from(operation.at)
  const about = { from: String(span.from.count), until: String(span.until.count) }
  return {
    kind: 'times',
    lastMealFrom: instantText(at.subtract({ hours: span.until.count })),
    lastMealBy: instantText(at.subtract({ hours: span.from.count })),
    why: [{ code, about }, { code: 'water-free', about: {} }, ...beside],
    facts,
  }
}
