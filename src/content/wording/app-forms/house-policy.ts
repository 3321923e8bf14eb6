import type { FormWords } from '#core/forms/words.ts'

export const housePolicy = {
  kind: 'house-policy',
  purpose: 'A default that this clinic changed, with the reason.',
  sections: { policy: 'Policy' },
  fields: { policy: { label: 'Name of the policy' }, value: { label: 'Value' }, because: { label: 'Because' } },
} as const satisfies FormWords
