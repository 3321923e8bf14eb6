import type { PreferenceTier } from '#core/culture/stewardship.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

/** The abstract says what the tiers are for; their tables were not read. */
const remembered = {
  sources: ['iscaid-2025-pyoderma', 'iscaid-texts'],
  where: 'tables of tiers, remembered; the abstract alone was read',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-30',
} as const satisfies Provenance

/** What a guideline for skin prefers in dogs. For an ear it is an order of preference and no indication. */
export const preferences = [
  {
    value: {
      rank: 'first',
      families: [],
      agents: ['clindamycin', 'lincomycin', 'cefalexin', 'cefadroxil', 'amoxicillin-clavulanate'],
    },
    ...remembered,
  },
  {
    value: {
      rank: 'second',
      families: ['fluoroquinolone'],
      agents: ['doxycycline', 'minocycline', 'trimethoprim-sulfonamide', 'cefovecin', 'cefpodoxime', 'chloramphenicol'],
    },
    ...remembered,
  },
  {
    value: { rank: 'reserved', families: [], agents: ['rifampicin', 'amikacin', 'gentamicin'] },
    ...remembered,
  },
  {
    value: { rank: 'discouraged', families: ['glycopeptide', 'oxazolidinone'], agents: [] },
    ...remembered,
  },
] as const satisfies readonly PreferenceTier[]
