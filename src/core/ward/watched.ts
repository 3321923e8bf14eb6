import type { Case } from '#core/journal/fold.ts'
import type { Stay } from './stay.ts'

export const watchedReasons = ['both-ears', 'flat-face', 'cat'] as const
export type WatchedReason = (typeof watchedReasons)[number]

/**
 * Why bandage and breathing of this animal are watched more closely; empty where nothing on record says so.
 *
 * @example watchedBecause(theCase, stay) // ['both-ears', 'cat']
 */
export function watchedBecause(theCase: Case, stay: Pick<Stay, 'operations'>): WatchedReason[] {
  const animal = theCase.latest('identity')?.body
  const sides = new Set(stay.operations.map(({ side }) => side))
  return [
    ...(sides.size === 2 ? (['both-ears'] as const) : []),
    ...(animal?.flatFace === 'yes' ? (['flat-face'] as const) : []),
    ...(animal?.species === 'cat' ? (['cat'] as const) : []),
  ]
}
