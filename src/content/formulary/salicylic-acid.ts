import { drug } from '#core/formulary/drug.ts'

const otology = {
  sources: ['dermatology-texts'],
  where: 'ototoxic preparations; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const because =
  'it is listed so that it is known in an ear; what goes into an ear follows its own label, and no other dose was looked for'

export const salicylicAcid = drug({
  id: 'salicylic-acid',
  name: 'salicylic acid',
  aliases: [],
  class: 'acid of ear cleaners',
  groups: [],
  doses: [],
  none: [
    { species: 'dog', why: 'no-dose-found', because, ...otology },
    { species: 'cat', why: 'no-dose-found', because, ...otology },
  ],
})
