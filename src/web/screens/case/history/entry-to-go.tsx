import type { FormEvent, ReactNode, RefObject } from 'react'
import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { Page } from '../../../design/page.tsx'
import { entryHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { EntryContent, kindName } from '../entry.tsx'
import { MayNotCorrect } from '../may-correct.tsx'
import { ReasonField } from '../reason-field.tsx'
import styles from './history.module.css'

/** One entry that is to go from where it stands: what it says, the form that takes it away with its reason, the way back. */
export function EntryToGo(props: {
  readonly line: Line
  readonly words: { readonly title: string; readonly lead: string; readonly keep: string }
  /** Whether this person may take it away. */
  readonly may: boolean
  readonly form: RefObject<HTMLFormElement | null>
  readonly reason: { readonly value: string; readonly missing: boolean; readonly onText: (text: string) => void }
  readonly onKeep: (event: FormEvent) => Promise<void>
  /** What is asked before the reason. */
  readonly children: ReactNode
}) {
  const { line, words, may, form, reason, onKeep, children } = props
  const { id } = useCaseView()
  return (
    <Page
      title={fill(words.title, { kind: kindName(line.header.kind) })}
      whose={<CaseLine about={line.header.subject} />}
      lead={words.lead}
    >
      <div className={styles['what-goes']}>
        <EntryContent line={line} />
      </div>
      {may ? (
        <form ref={form} className={styles.form} onSubmit={(event) => void onKeep(event)} noValidate>
          {children}
          <ReasonField
            error={reason.missing ? caseInEnglish.withdraw.reasonMissing : null}
            value={reason.value}
            onText={reason.onText}
          />
          <p>
            <button type="submit" data-weight="main">
              {words.keep}
            </button>
          </p>
        </form>
      ) : (
        <MayNotCorrect line={line} />
      )}
      <p>
        <Link href={entryHref(id, line.header.id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}
