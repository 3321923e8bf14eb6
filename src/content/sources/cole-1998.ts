import type { Source } from '#core/evidence/sourced.ts'

export const cole1998 = {
  id: 'cole-1998',
  citation:
    'Cole LK, Kwochka KW, Kowalski JJ, Hillier A. Microbial flora and antimicrobial susceptibility patterns of isolated pathogens from the horizontal ear canal and middle ear in dogs with otitis media. J Am Vet Med Assoc 1998;212:534–538',
  strength: 'study',
} as const satisfies Source
