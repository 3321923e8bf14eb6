import type { Source } from '#core/evidence/sourced.ts'

export const zeroPainOpioids = {
  id: 'zero-pain-opioids',
  citation: 'Zero Pain Philosophy, opioids page (prints the EU label dose of fentanyl)',
  seenAt: 'zeropainphilosophy.com',
  strength: 'web',
} as const satisfies Source
