import { drug } from '#core/formulary/drug.ts'

const listed = {
  sources: ['medicine-texts'],
  where: 'an NSAID; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-30',
} as const

const because =
  'stays for days in dogs and less is known in cats: ulcers of stomach and gut, kidneys; a medicine of people'

export const naproxen = drug({
  id: 'naproxen',
  name: 'naproxen',
  aliases: [],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [],
  none: [
    { species: 'dog', why: 'never', because, ...listed },
    { species: 'cat', why: 'never', because, ...listed },
  ],
})
