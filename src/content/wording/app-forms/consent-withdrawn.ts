import type { FormWords } from '#core/forms/words.ts'
import { consentInEnglish } from '../consent.ts'

export const consentWithdrawn = {
  kind: 'consent-withdrawn',
  purpose: 'Consent taken back for one ear. The other ear stands; to agree again is a new agreement.',
  sections: { withdrawn: 'Consent taken back' },
  fields: {
    by: { label: 'Who took it back' },
    how: { label: 'How', options: consentInEnglish.withdrawnHow },
    why: { label: 'Why', help: 'In their words. Nobody has to give a reason.' },
    takenBy: { label: 'Who of us heard it' },
  },
} as const satisfies FormWords
