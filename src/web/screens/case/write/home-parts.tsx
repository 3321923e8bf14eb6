import { homeChecksInEnglish as words } from '#content/wording/app-home-checks.ts'
import type { HomeDraft } from '#core/home/home-plan.ts'
import { fill } from '#core/outcome/finding.ts'
import { homeChecksWith } from '#documents/case/home-checks.ts'
import { Notice } from '../../../design/notice.tsx'
import { sayLanguage } from '../agreement/say-language.ts'
import { useCaseView } from '../case-view.ts'
import { FindingList } from '../finding-list.tsx'

/** Above the buttons: what a check has against the medicines and days as they stand in the form. */
export function HomeFindings({ draft }: { readonly draft: HomeDraft }) {
  const { file } = useCaseView()
  const findings = homeChecksWith(file, draft)
  if (findings.length === 0) return null
  return (
    <Notice tone="warn" title={words.writing}>
      <FindingList findings={findings} />
      <p>{words.writingLead}</p>
    </Notice>
  )
}

const typed: ReadonlySet<string> = new Set(['food', 'rest', 'eyeCare'])

/** Under what is typed for the owner: that nobody translates it. */
export function AsTyped({ field }: { readonly field: string }) {
  const { file } = useCaseView()
  const language = file.theCase.latest('household')?.body.language ?? 'en'
  if (!typed.has(field) || language.toLowerCase().split('-')[0] === 'en') return null
  return <p className="soft">{fill(words.asTyped, { language: sayLanguage(language) })}</p>
}
