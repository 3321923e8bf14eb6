import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { Decimal } from '#core/units/quantity.ts'

type Body = BodyOf<'agreement'>

/** Why somebody cannot agree for this animal. Each has a sentence that says what would make it possible. */
export const authorityRefusals = [
  'sitter',
  'somebody-else',
  'not-named-in-household',
  'authority-not-described',
  'authorised-by-nobody',
  'authority-without-witness',
  'authority-ended',
  'authority-under-ceiling',
] as const
export type AuthorityRefusal = (typeof authorityRefusals)[number]

/** Why consent cannot be taken like this, whoever gives it. */
export const givingRefusals = [
  'sound-mind-not-asked',
  'not-of-sound-mind',
  'phone-without-witness',
  'witness-explained',
  'not-signed',
  'typed-without-witness',
] as const
export type GivingRefusal = (typeof givingRefusals)[number]

export type Claim = {
  readonly consentBy: string
  readonly authority: Body['authority']
  readonly authorised: Body['authorised']
  readonly ceiling: Body['plan']['ceiling']
}

/**
 * Why this person cannot agree on this authority on this day; empty when they can. Agreements of version 1 that were
 * given "for the owner" said no more than that, and are not judged by what nobody asked then.
 *
 * @example authorityRefusalsOf({ consentBy: 'contact-2', authority: 'sitter', … }, file, '2026-03-10') // ['sitter']
 * Reference: consent is given by the owner or somebody with the owner's authority, and the practice satisfies itself of it.
 */
export function authorityRefusalsOf(
  { consentBy, authority, authorised, ceiling }: Claim,
  file: Pick<CaseFile, 'theCase'>,
  day: string,
): AuthorityRefusal[] {
  switch (authority) {
    case 'sitter':
    case 'somebody-else':
      return [authority]
    case 'owner':
    case 'joint-owner':
      return mayAgree(consentBy, file) ? [] : ['not-named-in-household']
    case 'authorised':
      return authorised === null ? ['authority-not-described'] : givenOn(authorised, ceiling, file, day)
    default:
      return []
  }
}

/** Whom the household names as an owner who may agree; without a household on record nobody is doubted here. */
function mayAgree(contact: string, { theCase }: Pick<CaseFile, 'theCase'>): boolean {
  const household = theCase.latest('household')?.body
  return !household || household.contacts.some((one) => one.contact === contact && one.mayConsent)
}

function givenOn(
  { by, how, until, upTo, witness }: NonNullable<Body['authorised']>,
  ceiling: Claim['ceiling'],
  file: Pick<CaseFile, 'theCase'>,
  day: string,
): AuthorityRefusal[] {
  const under =
    upTo !== null && (upTo.currency !== ceiling.currency || new Decimal(upTo.amount).lessThan(ceiling.amount))
  return [
    ...(mayAgree(by, file) ? [] : ['authorised-by-nobody' as const]),
    ...(how === 'by-phone' && witness === null ? ['authority-without-witness' as const] : []),
    ...(until !== null && until < day ? ['authority-ended' as const] : []),
    ...(under ? ['authority-under-ceiling' as const] : []),
  ]
}

/**
 * Why consent cannot be taken like this; empty when it can. On the telephone another of the staff listens; a name typed
 * in place of a signature needs somebody who saw it.
 *
 * @example givingRefusalsOf({ given: 'by-phone', witness: null, … }) // ['phone-without-witness']
 */
export function givingRefusalsOf(
  body: Pick<Body, 'soundMind' | 'given' | 'witness' | 'signature' | 'explainedBy'>,
): GivingRefusal[] {
  const { soundMind, given, witness, signature, explainedBy } = body
  const typed = signature !== null && signature.strokes.length === 0 && signature.name !== null
  const signed = typed || (signature !== null && signature.strokes.length > 0)
  return [
    ...(soundMind === 'not-assessed' ? ['sound-mind-not-asked' as const] : []),
    ...(soundMind === 'no' ? ['not-of-sound-mind' as const] : []),
    ...(given === 'by-phone' && witness === null ? ['phone-without-witness' as const] : []),
    ...(witness !== null && witness === explainedBy ? ['witness-explained' as const] : []),
    ...(given === 'signed-here' && !signed ? ['not-signed' as const] : []),
    ...(given === 'signed-here' && typed && witness === null ? ['typed-without-witness' as const] : []),
  ]
}
