import type { Source } from '#core/evidence/sourced.ts'

export const smeak1996 = {
  id: 'smeak-1996',
  citation:
    'Smeak DD, Crocker CB, Birchard SJ. Treatment of recurrent otitis media that developed after total ear canal ablation and lateral bulla osteotomy in dogs: nine cases (1986–1994). J Am Vet Med Assoc 1996;209(5):937–942. doi:10.2460/javma.1996.209.05.937',
  seenAt: 'abstract at acnpsearch (Bologna) and in the mendeley.com catalogue',
  strength: 'study',
} as const satisfies Source
