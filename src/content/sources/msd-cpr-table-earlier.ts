import type { Source } from '#core/evidence/sourced.ts'

export const msdCprTableEarlier = {
  id: 'msd-cpr-table-earlier',
  citation: 'MSD Veterinary Manual, table of drugs used in cardiopulmonary resuscitation, earlier edition',
  seenAt: 'msdvetmanual.com/en-au, table v54973086',
  strength: 'textbook',
} as const satisfies Source
