import { Link } from 'wouter'
import { referralInEnglish } from '#content/wording/app-referral.ts'
import { triageInEnglish } from '#content/wording/app-triage.ts'
import { fill } from '#core/outcome/finding.ts'
import { Notice } from '../../design/notice.tsx'
import { Page } from '../../design/page.tsx'
import { caseHref } from '../../journal/hrefs.ts'
import { connection } from '../../journal/live.ts'
import { useSignal } from '../../journal/signal.ts'
import styles from './screen.module.css'
import type { WrittenCall } from './write-call.ts'

const words = referralInEnglish.kept

/** The call is on this device; what is left is what to tell the caller. */
export function Kept({ written, onNext }: { readonly written: WrittenCall; readonly onNext: () => void }) {
  const line = useSignal(connection)
  const { name, stream, urgency, because } = written
  return (
    <Page
      title={fill(words.title, { name })}
      lead={fill(words.urgency, { urgency: triageInEnglish.urgencies[urgency], because })}
    >
      {line === 'lost' && <Notice>{words.offline}</Notice>}
      <section aria-labelledby="tell-the-caller" className={styles.part}>
        <h2 id="tell-the-caller" className={styles.heading}>
          {referralInEnglish.tell}
        </h2>
        <ul className={styles.tell}>
          {triageInEnglish.tellOwner.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      </section>
      <p className="row">
        <Link href={caseHref(stream)}>{fill(words.open, { name })}</Link>
        <button type="button" onClick={onNext}>
          {words.next}
        </button>
      </p>
    </Page>
  )
}
