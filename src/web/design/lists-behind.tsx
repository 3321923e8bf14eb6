import type { Remaking } from '#actions/store.ts'
import { listsBehind as words } from '#content/wording/app-lists.ts'
import { fill } from '#core/outcome/finding.ts'
import { Notice } from './notice.tsx'

/** Says that some rows of a list are still those from before a change of the house, and how far the new ones are. */
export function ListsBehind({ remaking }: { readonly remaking: Remaking | null | undefined }) {
  if (!remaking) return null
  const { made, of } = remaking
  return (
    <Notice tone="warn">
      <p>{fill(words.said, { made: made.toLocaleString('en'), of: of.toLocaleString('en') })}</p>
    </Notice>
  )
}
