import { drug } from '#core/formulary/drug.ts'

const listed = {
  sources: ['medicine-texts'],
  where: 'an NSAID; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-30',
} as const

const because = 'ulcers of stomach and gut; a medicine of people'

export const diclofenac = drug({
  id: 'diclofenac',
  name: 'diclofenac',
  aliases: [],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [],
  none: [
    { species: 'dog', why: 'never', because, ...listed },
    { species: 'cat', why: 'never', because, ...listed },
  ],
})
