import { Link } from 'wouter'
import { lateEvent as eventWords } from '#content/wording/app-forms/late-event.ts'
import { lateInEnglish } from '#content/wording/app-late.ts'
import { referralInEnglish } from '#content/wording/app-referral.ts'
import { triageInEnglish } from '#content/wording/app-triage.ts'
import { fill } from '#core/outcome/finding.ts'
import { Notice } from '../../design/notice.tsx'
import { Page } from '../../design/page.tsx'
import { WithSides } from '../../design/with-sides.tsx'
import { caseHref } from '../../journal/hrefs.ts'
import { connection } from '../../journal/live.ts'
import { useSignal } from '../../journal/signal.ts'
import { daysToSay } from '../../late/late-choices.tsx'
import styles from './screen.module.css'
import type { LateWritten, WrittenCall } from './write-call.ts'

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
      {written.late && <LateKept stream={stream} late={written.late} />}
      <p className="row">
        <Link href={caseHref(stream)}>{fill(words.open, { name })}</Link>
        <button type="button" onClick={onNext}>
          {words.next}
        </button>
      </p>
    </Page>
  )
}

/** What became of a late sign that was told: at which ear it stands, and that nothing was joined. */
function LateKept({ stream, late }: { readonly stream: string; readonly late: LateWritten }) {
  const said = lateInEnglish.kept
  if (late.kind === 'none') return null
  if (late.kind !== 'event') {
    return (
      <Notice>
        <p>{fill(said[late.kind], { days: daysToSay })}</p>
      </Notice>
    )
  }
  const { ear, what, apart } = late
  const about = { what: eventWords.fields.what.options[what], side: ear.side, name: ear.name }
  return (
    <Notice>
      <p>
        <WithSides text={fill(said.event, about)} /> {apart && said.notJoined}
      </p>
      {apart && (
        <p className="row">
          <Link href={caseHref(ear.stream)}>{fill(said.open, { name: ear.name })}</Link>
          <Link href={`${caseHref(stream)}/join?find=${encodeURIComponent(ear.name)}`}>{said.join}</Link>
        </p>
      )}
    </Notice>
  )
}
