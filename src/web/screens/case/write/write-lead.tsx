import type { KindName } from '#core/journal/fold.ts'
import { wordsFor } from '../../../forms/forms.ts'
import { CaseLine } from '../case-line.tsx'

/** Whose file this goes into, and what the entry is for. */
export function WriteLead({ kind }: { readonly kind: KindName }) {
  return (
    <>
      <CaseLine />
      <p>{wordsFor(kind).purpose}</p>
    </>
  )
}
