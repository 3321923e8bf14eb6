import { caseInEnglish as words } from '#content/wording/app-case.ts'
import type { Line } from '#core/journal/fold.ts'
import { Caution } from '../../design/caution.tsx'
import { useCaseView } from './case-view.ts'
import { givenFlags } from './dosing.ts'
import { FindingList } from './finding-list.tsx'

/** A dose that was given is always kept; what speaks against it stands beside it. */
export function GivenDrug({ line }: { readonly line: Line }) {
  const { file } = useCaseView()
  const found = givenFlags(file).get(line.header.id)
  if (!found) return null
  return (
    <div className="stack">
      <p>{words.given.flagged}</p>
      <FindingList findings={found} />
      <Caution />
    </div>
  )
}
