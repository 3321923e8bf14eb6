import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'

/**
 * Whether a call is a try of ours that reached nobody. A call of theirs that was cut off is no try of ours: nobody here
 * asked anything.
 *
 * @example isTryOfOurs({ direction: 'they-called', reached: 'no' }) // false
 */
export function isTryOfOurs({ direction, reached }: Pick<BodyOf<'call'>, 'direction' | 'reached'>): boolean {
  return direction === 'we-called' && reached !== 'yes'
}

/**
 * Whether anybody told what a status after a year says. "Nobody reached" tells nothing, whatever else was written down
 * beside it: not of the ear, not of the face, not that the animal is alive.
 *
 * @example wasTold({ source: 'nobody-reached' }) // false
 */
export function wasTold({ source }: Pick<BodyOf<'twelve-months'>, 'source'>): boolean {
  return source !== 'nobody-reached'
}

/**
 * Whether a call was with the household. A talk with a laboratory or with a practice is none with the owner: it settles
 * nothing that the owner waits for, and is no try to reach them.
 *
 * @example isWithHousehold({ contact: laboratory }, file) // false
 */
export function isWithHousehold(
  { contact }: Pick<BodyOf<'call'>, 'contact'>,
  { contacts }: Pick<CaseFile, 'contacts'>,
): boolean {
  const kind = contacts.get(contact)?.kind
  return kind !== 'vet' && kind !== 'laboratory'
}
