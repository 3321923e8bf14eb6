import type { FormWords } from '#core/forms/words.ts'

export const bloodType = {
  kind: 'blood-type',
  purpose: 'The blood group, before blood is needed. Nothing is assumed of an animal that nobody typed.',
  sections: { type: 'Blood group' },
  fields: {
    system: { label: 'Typed for', options: { 'dea-1': 'DEA 1 (dog)', ab: 'A and B (cat)' } },
    dea1: {
      label: 'DEA 1',
      options: {
        negative: 'negative',
        'weak-positive': 'weakly positive',
        'strong-positive': 'strongly positive',
        'not-typed': 'not typed',
      },
    },
    ab: {
      label: 'Group',
      help: 'A cat that nobody typed stays unknown.',
      options: { A: 'A', B: 'B', AB: 'AB', unknown: 'unknown' },
    },
    method: {
      label: 'How typed',
      options: {
        card: 'card in the house',
        'gel-or-tube': 'gel or tube',
        laboratory: 'laboratory',
        'as-told': 'as told, not typed here',
      },
    },
    text: { label: 'Anything else', help: 'Earlier transfusions, clumping by itself.' },
  },
} as const satisfies FormWords
