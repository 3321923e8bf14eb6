import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'

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
 * The calls with the household, oldest first. A talk with a laboratory or with a practice is none with the owner: it settles
 * nothing that the owner waits for, and is no try to reach them.
 *
 * @example householdCalls(file).filter(({ body }) => isTryOfOurs(body)).length
 */
export function householdCalls({ theCase, contacts }: Pick<CaseFile, 'theCase' | 'contacts'>): Line<BodyOf<'call'>>[] {
  return theCase.live('call').filter(({ body: { contact } }) => {
    const kind = contacts.get(contact)?.kind
    return kind !== 'vet' && kind !== 'laboratory'
  })
}
