import { useState } from 'react'
import { Link, useSearchParams } from 'wouter'
import { incidentNote as form } from '#content/wording/app-forms/incident-note.ts'
import { incidentInEnglish as words } from '#content/wording/app-incident.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { clockOf } from '#core/time/moment.ts'
import { Page } from '../../../../design/page.tsx'
import { entryHref, roomHref } from '../../case-hrefs.ts'
import { CaseLine } from '../../case-line.tsx'
import { useCaseView } from '../../case-view.ts'
import { MayNotWrite } from '../../may-correct.tsx'
import { useOperationHere } from '../../use-operation-here.ts'
import { WithCase } from '../../with-case.tsx'
import { EmergencyBar } from '../now/emergency-bar.tsx'
import room from '../room.module.css'
import { useTheatreTheme } from '../use-theatre-theme.ts'
import styles from './incident.module.css'
import { NotePart } from './note-part.tsx'
import { useIncidents } from './use-incidents.ts'

/** A near miss or an incident of one operation, written in under a minute by anybody of the practice. */
export default function IncidentScreen() {
  return (
    <WithCase>
      <IncidentPage />
    </WithCase>
  )
}

function IncidentPage() {
  const { wanted, operation, subject } = useOperationHere()
  const { id } = useCaseView()
  useTheatreTheme()
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} whose={<CaseLine about={subject} />} wide>
      {operation ? <Incident operation={operation} /> : <p>{roomInEnglish.noOperation}</p>}
      <p data-screen-only>
        <Link href={roomHref(id, wanted)} className={styles.link}>
          {roomInEnglish.open}
        </Link>
      </p>
      {operation && <EmergencyBar operation={operation} />}
    </Page>
  )
}

function Incident({ operation }: { readonly operation: OperationOnFile }) {
  const { mayWrite } = useIncidents(operation)
  const [query] = useSearchParams()
  const [written, setWritten] = useState(0)
  return (
    <>
      {mayWrite ? (
        <NotePart key={`${query} ${written}`} operation={operation} onAnother={() => setWritten(written + 1)} />
      ) : (
        <MayNotWrite kind="incident-note" />
      )}
      <Notes operation={operation} />
    </>
  )
}

/** What was written of this operation so far, latest first. */
function Notes({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id, unsent } = useCaseView()
  const { notes } = useIncidents(operation)
  if (notes.length === 0) return null
  return (
    <section aria-labelledby="notes" className={styles.notes}>
      <h2 id="notes">{words.notes}</h2>
      <ul className={`bare ${styles.list}`} aria-live="polite">
        {[...notes].reverse().map(({ header, body, at }) => (
          <li key={header.id}>
            <Link href={entryHref(id, header.id)} className={styles.link}>
              {fill(words.noteLine, {
                at: clockOf(at, header.happenedAt.zone),
                who: authorNamed(file, header.author),
                what: form.fields.what.options[body.what],
              })}
            </Link>{' '}
            <span className={room.kept} data-waits={unsent.has(header.id)}>
              {unsent.has(header.id) ? words.keptHere : words.sent}
            </span>
            {body.text !== null && <p>{body.text}</p>}
          </li>
        ))}
      </ul>
    </section>
  )
}
