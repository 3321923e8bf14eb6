import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { type Agreement, agreementFor, type ConsentWithdrawn, withdrawnFor } from './agreed-for.ts'
import { type AuthorityRefusal, authorityRefusalsOf } from './authority.ts'
import { type PlanChange, planChanges, type ToldToday } from './plan-changes.ts'

type Taught = Agreement['body']['teachBack'][number]

/** How the consent for one operation stands. */
export type ConsentState =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'given'
      readonly agreement: Agreement
      readonly withdrawn: ConsentWithdrawn | null
      readonly changes: readonly PlanChange[]
      readonly refusals: readonly AuthorityRefusal[]
      /** What the owner could not say back yet. */
      readonly notYet: readonly Taught['item'][]
    }

/**
 * The consent of one operation as it stands now: whose, whether it still fits the plan, and what became of it.
 *
 * @example consentOf(operation, file, toldToday).kind // 'given'
 */
export function consentOf(operation: OperationOnFile, file: CaseFile, told: ToldToday | null): ConsentState {
  const agreement = agreementFor(operation, file.theCase)
  if (!agreement) return { kind: 'none' }
  return stateOf(agreement, operation.side, [operation], file, told)
}

/** How an agreement stands for one of its ears, beside the operations that are booked under it. */
export function stateOf(
  agreement: Agreement,
  side: Side,
  operations: readonly OperationOnFile[],
  file: CaseFile,
  told: ToldToday | null,
): Extract<ConsentState, { kind: 'given' }> {
  const { body, at } = agreement
  return {
    kind: 'given',
    agreement,
    withdrawn: withdrawnFor(agreement, side, file.theCase),
    changes: planChanges(agreement, operations, file, told),
    refusals: authorityRefusalsOf({ ...body, ceiling: body.plan.ceiling }, file, dayOf({ at, zone: file.clinic.zone })),
    notYet: body.teachBack.filter((one) => !isUnderstood(one)).map(({ item }) => item),
  }
}

/** Said back in the end; the first answer stays on record beside it. */
export function isUnderstood({ answer, again }: Pick<Taught, 'answer' | 'again'>): boolean {
  return (again ?? answer) !== 'not-yet'
}
