import type { Source } from '#core/evidence/sourced.ts'

export const grubbLobprise2020 = {
  id: 'grubb-lobprise-2020',
  citation: 'Grubb T, Lobprise H. Local and regional anaesthesia in dogs and cats. Vet Med Sci 2020',
  strength: 'study',
} as const satisfies Source
