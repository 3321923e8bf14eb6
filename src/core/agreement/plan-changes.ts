import type { ProcedureId } from '#core/animal/procedure.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { Decimal } from '#core/units/quantity.ts'
import type { Agreement } from './agreed-for.ts'
import { newestEstimate } from './estimate.ts'
import { isBound } from './fingerprint.ts'
import { type Money, sayMoney } from './money.ts'
import { changedNumbers, type ShownNumber } from './numbers-shown.ts'

/** What is told to an owner today in a language, from outside the record: the leaflet, and the numbers of an operation. */
export type ToldToday = {
  readonly leafletOf: (language: string) => string
  readonly numbersOf: (file: CaseFile, procedure: ProcedureId, language: string) => readonly ShownNumber[]
}

export type PlanChange =
  | { readonly code: 'mark' }
  | { readonly code: 'procedure'; readonly from: ProcedureId; readonly to: ProcedureId }
  | { readonly code: 'surgeon' | 'leaflet' | 'language'; readonly from: string; readonly to: string }
  | { readonly code: 'ceiling'; readonly from: Money; readonly to: Money }
  | { readonly code: 'number'; readonly from: ShownNumber | null; readonly to: ShownNumber | null }

export type PlanChangeCode = PlanChange['code']

/**
 * What is no longer as it was agreed, so that consent is asked again; empty while the agreement holds. Without what is
 * told today only the record itself is compared.
 *
 * @example planChanges(agreement, [operation], file, toldToday) // [{ code: 'ceiling', from: …, to: … }]
 */
export function planChanges(
  agreement: Agreement,
  operations: readonly OperationOnFile[],
  file: CaseFile,
  told: ToldToday | null,
): PlanChange[] {
  const { plan } = agreement.body
  return [
    ...(isBound(agreement.body) ? [] : [{ code: 'mark' as const }]),
    ...operations.flatMap((operation) => bookedOtherwise(agreement, operation)),
    ...dearer(agreement, file.theCase),
    ...spokenOtherwise(plan.language, file.theCase),
    ...(told === null ? [] : toldOtherwise(agreement, file, told)),
  ]
}

function bookedOtherwise({ body: { plan } }: Agreement, { side, procedure, surgeon }: OperationOnFile): PlanChange[] {
  const ear = plan.ears.find((one) => one.side === side)
  return [
    ...(ear && ear.procedure !== procedure ? [{ code: 'procedure' as const, from: ear.procedure, to: procedure }] : []),
    ...(plan.surgeon === surgeon ? [] : [{ code: 'surgeon' as const, from: plan.surgeon, to: surgeon }]),
  ]
}

/** A newer estimate with another ceiling, whether dearer or cheaper; one that was declined changes nothing. */
function dearer({ body: { plan, estimate } }: Agreement, theCase: Case): PlanChange[] {
  const newest = newestEstimate(theCase)
  if (!newest || newest.header.id === estimate.entry || newest.body.answer?.said === 'declined') return []
  const { ceiling } = newest.body
  const same = ceiling.currency === plan.ceiling.currency && new Decimal(ceiling.amount).equals(plan.ceiling.amount)
  return same ? [] : [{ code: 'ceiling', from: plan.ceiling, to: ceiling }]
}

function spokenOtherwise(agreed: string, theCase: Case): PlanChange[] {
  const spoken = theCase.latest('household')?.body.language
  if (spoken === undefined || languageOf(spoken) === languageOf(agreed)) return []
  return [{ code: 'language', from: agreed, to: spoken }]
}

/** "pt-BR" and "pt" are one language of the talk. */
function languageOf(tag: string): string {
  return tag.split('-')[0]?.toLowerCase() ?? tag
}

function toldOtherwise({ body: { plan } }: Agreement, file: CaseFile, told: ToldToday): PlanChange[] {
  const leaflet = told.leafletOf(plan.language)
  const procedures = [...new Set(plan.ears.map(({ procedure }) => procedure))]
  const now = plan.numbers.length === 0 ? [] : procedures.flatMap((one) => told.numbersOf(file, one, plan.language))
  return [
    ...(leaflet === plan.leaflet ? [] : [{ code: 'leaflet' as const, from: plan.leaflet, to: leaflet }]),
    ...changedNumbers(plan.numbers, now).map(({ was, now }) => ({ code: 'number' as const, from: was, to: now })),
  ]
}

export type PlanChangeWords = {
  readonly changes: Readonly<Record<PlanChangeCode, string>>
  readonly procedures: Readonly<Record<ProcedureId, string>>
  readonly outcomes: Readonly<Record<OutcomeCode, { readonly operated: string }>>
  readonly range: string
  readonly middle: string
  readonly noNumber: string
}

/**
 * A change in words, from what to what.
 *
 * @example sayPlanChange({ code: 'ceiling', from, to }, file, words) // 'the ceiling was 3400.00 GBP, now 3401.00 GBP'
 */
export function sayPlanChange(change: PlanChange, file: CaseFile, words: PlanChangeWords): string {
  const template = words.changes[change.code]
  switch (change.code) {
    case 'mark':
      return template
    case 'procedure':
      return fill(template, { from: words.procedures[change.from], to: words.procedures[change.to] })
    case 'surgeon':
      return fill(template, { from: personNamed(file, change.from), to: personNamed(file, change.to) })
    case 'ceiling':
      return fill(template, { from: sayMoney(change.from), to: sayMoney(change.to) })
    case 'number': {
      const outcome = (change.to ?? change.from)?.outcome
      const what = outcome === undefined ? '' : words.outcomes[outcome].operated
      return fill(template, { what, from: sayFigures(change.from, words), to: sayFigures(change.to, words) })
    }
    default:
      return fill(template, { from: change.from, to: change.to })
  }
}

/**
 * The figures of one number, out of 100.
 *
 * @example sayFigures({ low: 21, middle: 26, high: 31, … }, words) // '26 (21 to 31) of 100'
 */
export function sayFigures(
  one: Pick<ShownNumber, 'low' | 'middle' | 'high'> | null,
  words: Pick<PlanChangeWords, 'range' | 'middle' | 'noNumber'>,
): string {
  if (one === null || one.low === null || one.high === null) return words.noNumber
  const ends = { low: String(one.low), high: String(one.high) }
  return one.middle === null ? fill(words.range, ends) : fill(words.middle, { ...ends, middle: String(one.middle) })
}
