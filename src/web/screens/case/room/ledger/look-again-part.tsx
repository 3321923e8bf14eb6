import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { LookAgain } from '#core/theatre/last-values.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { Notice } from '../../../../design/notice.tsx'

/** Notes on what was just typed; none of them stands in the way of keeping it. */
export function LookAgainPart({ notes }: { readonly notes: readonly LookAgain[] }) {
  if (notes.length === 0) return null
  return (
    <Notice tone="warn" title={words.lookAgainTitle} live>
      {notes.map(({ because, what, last }) => (
        <p key={`${because} ${what}`}>
          {fill(words.lookAgain[because], {
            what: capital(ledgerInEnglish.names[what]),
            last: last === null ? '' : sayUnit(last),
          })}
        </p>
      ))}
    </Notice>
  )
}
