import type { Case } from '../journal/fold.ts'
import type { ModifierFactor } from './modifier.ts'

/**
 * The circumstances of an animal, as its record stands, of which some study says that they change a risk. What is not on
 * record is not assumed either way.
 *
 * @example factorsOf(theCase) // ['short-faced', 'female']
 */
export function factorsOf(theCase: Case): ModifierFactor[] {
  const identity = theCase.latest('identity')?.body
  const skin = theCase.latest('skin-plan')?.body.disease
  const together = theCase.live('choice').some(({ body }) => body.session === 'both-in-one-session')
  return [
    ...(identity?.flatFace === 'yes' ? ['short-faced' as const] : []),
    ...(identity?.sex === 'female' ? ['female' as const] : []),
    ...(skin !== undefined && skin !== 'none-found' && skin !== 'not-known-yet' ? ['skin-disease' as const] : []),
    ...(together ? ['both-ears-at-once' as const] : []),
  ]
}
