import type { MainReason } from '#core/animal/main-reason.ts'
import type { TroubleEvent, TroubleNeed } from '#core/complications/trouble-codes.ts'
import { isWellAfterAYear, openLooks, operationNeeded } from './late-looks.ts'
import { daySince, deepEvents, deepKinds, type OwnCase } from './own-case.ts'
import type { KnownOutcome, OwnCountingRules } from './own-outcome.ts'

/**
 * Whether a late swelling, abscess or tract came. "No" only where somebody asked after a year and found none, and no late look
 * tells of something that nobody has named.
 *
 * @example deepRecurrenceOf(own, rules) // null: infected at the last look
 */
export function deepRecurrenceOf(own: OwnCase, rules: OwnCountingRules): KnownOutcome {
  if (deepEvents(own).length > 0) return true
  return isWellAfterAYear(own, rules) && openLooks(own, rules).length === 0 ? false : null
}

const infections: readonly TroubleEvent[] = ['deep-infection', 'wound-infection']
const operations: readonly TroubleNeed[] = [
  'some-operation',
  'intervention-sedation',
  'intervention-general-anaesthesia',
]
/** What an ear is operated for again that is no infection. */
const otherReasons: readonly (MainReason | null)[] = ['tumour', 'polyp', 'injury-or-malformation']

/**
 * Whether the ear was operated again for signs of infection. A need is no operation: it is not known until one is on record,
 * here or said of another practice. A tumour that grows again is another outcome.
 *
 * @param written ids of the troubles that were not there before the operation
 * @example revisionOf(own, written, rules) // null: an operation is planned
 */
export function revisionOf(own: OwnCase, written: ReadonlySet<string>, rules: OwnCountingRules): KnownOutcome {
  const infected = own.troubles.filter(({ header, body }) => written.has(header.id) && infections.includes(body.event))
  const deep = deepEvents(own)
  const done =
    deep.some(({ body }) => body.needed === 'operation-done') ||
    infected.some(({ body }) => operations.includes(body.needed))
  if (done) return true
  if (own.again !== null) {
    if (!isForAnotherReason(own)) return true
    // It had signs of infection as well, and nobody can say from here which of the two it was for.
    if (deep.length > 0 || infected.length > 0) return null
  }
  return isWellAfterAYear(own, rules) && !isOpen(own, rules) ? false : null
}

function isForAnotherReason({ againFor, late }: OwnCase): boolean {
  if (otherReasons.includes(againFor)) return true
  return againFor === null && late.length > 0 && late.every(({ body }) => body.what === 'tumour-again')
}

/** An operation is needed and not on record, or was done and nobody said what for. */
function isOpen(own: OwnCase, rules: OwnCountingRules): boolean {
  const late = own.late.some(({ body: { what, needed } }) => {
    if (what === 'tumour-again') return false
    return needed === 'operation' || (needed === 'operation-done' && !deepKinds.includes(what))
  })
  return late || operationNeeded(own, rules).length > 0
}

/** As the last answer after a year says it; one that was written sooner settles nothing. */
export function resolvedOf(own: OwnCase, { yearLookFromDay }: OwnCountingRules): KnownOutcome {
  const status = own.statuses.findLast(
    ({ at, body }) => body.status !== 'unknown' && daySince(own, at) >= yearLookFromDay.value,
  )?.body.status
  return status === undefined ? null : status !== 'failed'
}

/**
 * Whether the animal died around the operation, put down to it: to the operation or the anaesthetic. Where nobody was asked
 * that, a death of the ear is taken for one, and any other is not known; "not related to the ear" is no answer to it.
 *
 * @example deathAroundOf(own, rules) // null: dead on the table, and nobody said of what
 */
export function deathAroundOf(own: OwnCase, { deathUntilDay }: OwnCountingRules): KnownOutcome {
  const days = own.death ? daySince(own, own.death.at) : null
  if (own.death && days !== null && days >= 0 && days <= deathUntilDay.value) {
    const { relatedToOperation, relatedToEar } = own.death.body
    if (relatedToOperation !== 'unknown') return relatedToOperation === 'yes'
    return relatedToEar === 'yes' ? true : null
  }
  if (days !== null && days > deathUntilDay.value) return false
  const alive = [...own.checks, ...own.statuses].some(({ at }) => daySince(own, at) > deathUntilDay.value)
  return alive ? false : null
}
