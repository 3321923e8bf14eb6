import type { Source } from '#core/evidence/sourced.ts'

export const who2008SurgicalChecklist = {
  id: 'who-2008-surgical-checklist',
  citation: 'World Health Organization, surgical safety checklist of 19 items in three pauses, 2008 (made for people)',
  strength: 'guideline',
} as const satisfies Source
