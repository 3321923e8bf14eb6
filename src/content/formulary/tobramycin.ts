import { drug } from '#core/formulary/drug.ts'

const paterson = {
  sources: ['paterson-2018'],
  where: 'abstract: hearing tested before and after topical treatment',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const because =
  'it is listed so that it is known in an ear; what goes into an ear follows its own label, and no other dose was looked for'

export const tobramycin = drug({
  id: 'tobramycin',
  name: 'tobramycin',
  aliases: [],
  class: 'aminoglycoside',
  groups: ['aminoglycoside'],
  doses: [],
  none: [
    { species: 'dog', why: 'no-dose-found', because, ...paterson },
    { species: 'cat', why: 'no-dose-found', because, ...paterson },
  ],
})
