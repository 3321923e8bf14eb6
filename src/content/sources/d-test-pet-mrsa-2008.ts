import type { Source } from '#core/evidence/sourced.ts'

export const dTestPetMrsa2008 = {
  id: 'd-test-pet-mrsa-2008',
  citation: 'Account of a study of inducible clindamycin resistance in staphylococci of pets, September 2008',
  seenAt: 'wormsandgermsblog page',
  strength: 'web',
} as const satisfies Source
