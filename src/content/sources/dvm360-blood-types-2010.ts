import type { Source } from '#core/evidence/sourced.ts'

export const dvm360BloodTypes2010 = {
  id: 'dvm360-blood-types-2010',
  citation: 'Blood typing and crossmatching of dogs and cats, an update. Veterinary Medicine, October 2010',
  seenAt: 'dvm360.com, excerpts of the article',
  strength: 'web',
} as const satisfies Source
