import type { Source } from '#core/evidence/sourced.ts'

export const merckCprTable = {
  id: 'merck-cpr-table',
  citation:
    'Merck Veterinary Manual, table of drugs and defibrillation used in cardiopulmonary resuscitation, current edition',
  seenAt: 'merckvetmanual.com, table page',
  strength: 'textbook',
} as const satisfies Source
