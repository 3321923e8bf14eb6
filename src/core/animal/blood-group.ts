import type { Species } from '#core/animal/species.ts'

/** Cats are A, B or AB; dogs are typed for DEA 1. */
export const bloodGroups = ['A', 'B', 'AB', 'dea-1-negative', 'dea-1-positive'] as const
export type BloodGroup = (typeof bloodGroups)[number]

/** The species a group belongs to, so that a dog is never called A. Example: `speciesOfGroup('AB')` is `'cat'`. */
export function speciesOfGroup(group: BloodGroup): Species {
  return group === 'dea-1-negative' || group === 'dea-1-positive' ? 'dog' : 'cat'
}
