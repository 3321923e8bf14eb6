import type { Case } from '#core/journal/fold.ts'

export const flagCodes = [
  'drug-allergy',
  'allergy-not-asked',
  'flat-face',
  'abcb1-carrier',
  'abcb1-mutant',
  'weight-estimated',
] as const
export type FlagCode = (typeof flagCodes)[number]
export type Flag = { readonly code: FlagCode; readonly about: Readonly<Record<string, string>> }

/**
 * What must be known of the animal before anything is given to it: said by the entries, never concluded.
 *
 * @example flagsOf(theCase).map(({ code }) => code) // ['flat-face']
 */
export function flagsOf(theCase: Case): Flag[] {
  const animal = theCase.latest('identity')?.body
  const allergies = theCase.live('referral').map(({ body }) => body.drugAllergy)
  const named = allergies.filter(({ answer }) => answer === 'yes').map(({ what }) => what)
  const flags: Flag[] = []
  const add = (code: FlagCode, about: Flag['about'] = {}) => flags.push({ code, about })
  if (named.length > 0) add('drug-allergy', { what: named.filter((what) => what !== null).join(', ') })
  else if (!allergies.some(({ answer }) => answer === 'no')) add('allergy-not-asked')
  if (animal?.flatFace === 'yes') add('flat-face')
  if (animal?.abcb1 === 'mutant-normal') add('abcb1-carrier')
  if (animal?.abcb1 === 'mutant-mutant') add('abcb1-mutant')
  const weight = theCase.latest('weight')?.body.how
  if (weight !== undefined && weight !== 'scale') add('weight-estimated')
  return flags
}
