import type { Source } from '#core/evidence/sourced.ts'

export const merckOpioidTable = {
  id: 'merck-opioid-table',
  citation: 'Merck Veterinary Manual, table of opioids used in emergency practice',
  seenAt: 'merckvetmanual.com, table page',
  strength: 'textbook',
} as const satisfies Source
