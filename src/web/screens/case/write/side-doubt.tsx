import { caseInEnglish } from '#content/wording/app-case.ts'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { otherSide } from '#core/animal/species.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { KindName } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { isOtherEar, operationsOf } from '#core/owed/operations.ts'
import { Notice } from '../../../design/notice.tsx'
import { useCaseView } from '../case-view.ts'

const words = caseInEnglish.write
/** Kinds by which an operated ear is followed. */
const following: ReadonlySet<KindName> = new Set<KindName>(['check', 'twelve-months'])

/** Said as soon as somebody chooses the ear that was not operated, where the operated one is followed. */
export function SideDoubt({ kind, subject }: { readonly kind: KindName; readonly subject: Subject | null }) {
  const { file } = useCaseView()
  if (subject?.kind !== 'ear' || !following.has(kind) || !isOtherEar(operationsOf(file), subject.side)) return null
  const about = {
    side: formsInEnglish.sides[subject.side],
    other: formsInEnglish.sides[otherSide(subject.side)],
  }
  return (
    <Notice tone="warn" live title={fill(words.notOperated, about)}>
      <p>{fill(words.notOperatedHelp, about)}</p>
    </Notice>
  )
}
