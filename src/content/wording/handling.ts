import type { Provenance } from '#core/evidence/sourced.ts'

/** For hands that give a medicine at home, where the medicine may harm them. By formulary drug; the words are the owner’s. */
export const handlingInEnglish = {
  chloramphenicol: {
    value:
      'In some people this medicine harms the blood, and that can kill. Wear gloves. Do not crush it. Who is pregnant must not touch it. Wash your hands after.',
    sources: ['small-animal-dermatology-3'],
    where: 'table of antimicrobials: rare fatal aplastic anaemia in people; gloves, no crushing, not if pregnant',
    known: 'read',
    strength: 'textbook',
    confidence: 'high',
    checked: '2026-11-30',
  },
} as const satisfies Readonly<Record<string, Provenance & { readonly value: string }>>
