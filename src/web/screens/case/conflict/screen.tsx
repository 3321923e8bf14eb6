import { type FormEvent, useState } from 'react'
import { Link, useLocation, useParams } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Conflict, KindName, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { differences } from '#core/reading/compare.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { sayMoment } from '#core/time/moment.ts'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Page } from '../../../design/page.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { momentAgain } from '../../../journal/moment-again.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, historyHref, keptHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { library, useCaseView } from '../case-view.ts'
import { EntryContent, kindName } from '../entry.tsx'
import { MayNotCorrect, mayCorrect } from '../may-correct.tsx'
import { ReasonField } from '../reason-field.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import { Differences } from '../write/compare.tsx'
import styles from './conflict.module.css'

const words = caseInEnglish.conflict
type Typed = { readonly chosen: string | null; readonly reason: string }

/** Entries that stand side by side, and one entry by a person that takes the place of all of them. */
export default function ConflictScreen() {
  return (
    <WithCase>
      <Found />
    </WithCase>
  )
}

function Found() {
  const { entry = '' } = useParams()
  const { file, id } = useCaseView()
  const conflict = file.theCase.conflicts.find(({ between }) => between.includes(entry))
  if (conflict) return <Settle conflict={conflict} />
  return (
    <Page
      title={fill(words.title, { kind: kindName(file.theCase.line(entry)?.header.kind ?? '') })}
      whose={<CaseLine />}
    >
      <p role="status">{words.gone}</p>
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function Settle({ conflict }: { readonly conflict: Conflict }) {
  const view = useCaseView()
  const { file, id, rows, nameOfEntry } = view
  const { me } = useWho()
  const sides = conflict.between.flatMap((one) => file.theCase.line(one) ?? [])
  const heads = sides.map((_, index) => fill(words.stands, { number: String(index + 1) }))
  const around = [
    {
      at: 'about',
      label: caseInEnglish.write.about,
      says: sides.map((side) => saySubject(side.header.subject, file, library)),
    },
    { at: 'when', label: caseInEnglish.write.when, says: sides.map((side) => sayMoment(side.header.happenedAt)) },
  ].filter(({ says }) => says.some((one) => one !== says[0]))
  const changed = [
    ...around,
    ...differences(
      sides.map((side) => rows(side)),
      nameOfEntry,
    ),
  ]
  const [first] = sides
  return (
    <Page
      title={fill(words.title, { kind: kindName(conflict.kind) })}
      whose={<CaseLine about={first?.header.subject ?? null} />}
      lead={conflict.because === 'cycle' ? words.cycle : words.lead}
      wide
    >
      <section className="stack" aria-labelledby="differ">
        <h2 id="differ" className={styles.heading}>
          {words.differ}
        </h2>
        {changed.length === 0 ? <p>{words.same}</p> : <Differences changed={changed} heads={heads} />}
      </section>
      {first && (mayCorrect(first, me.role) || conflict.because === 'cycle') ? (
        <Choose conflict={conflict} sides={sides} heads={heads} />
      ) : (
        first && <MayNotCorrect line={first} />
      )}
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function Choose(props: {
  readonly conflict: Conflict
  readonly sides: readonly Line[]
  readonly heads: readonly string[]
}) {
  const { conflict, sides, heads } = props
  const { file, id } = useCaseView()
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const { draft, change, clear, ready } = useDraft<Typed>(`${file.stream} settle ${conflict.between}`, me.id, () => ({
    chosen: null,
    reason: '',
  }))
  const [tries, setTries] = useState(0)
  const tried = tries > 0
  const form = useFaultFocus(tries)
  const reason = draft.reason.trim()
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const chosen = sides.find(({ header }) => header.id === draft.chosen)
    if (!chosen || reason === '') return
    const { kind, stream, subject, attachments } = chosen.header
    const body = chosen.body as unknown as BodyOf<KindName>
    const entry = await writeEntry(pen, {
      kind: kind as KindName,
      stream,
      subject,
      body,
      happenedAt: momentAgain(chosen),
      attachments,
      supersedes: conflict.between,
      reason,
    })
    await clear()
    navigate(keptHref(id, entry.id))
  }
  if (!ready) return <DraftAwaited />
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
      <fieldset className={styles.sides} aria-invalid={tried && draft.chosen === null ? true : undefined}>
        <legend className="said">{words.choose}</legend>
        {sides.map((side, index) => (
          <label key={side.header.id} className={styles.side}>
            <span className={styles.head}>
              <input
                type="radio"
                name="right"
                disabled={!side.known || side.erased || conflict.because === 'cycle'}
                checked={draft.chosen === side.header.id}
                onChange={() => change({ ...draft, chosen: side.header.id })}
              />
              <strong>{heads[index]}</strong>
              <span>{words.choose}</span>
            </span>
            <span className="soft">
              {fill(caseInEnglish.entry.writtenAt, {
                when: sayMoment({ ...side.header.happenedAt, at: side.header.writtenAt, precision: 'minute' }),
                who: authorNamed(file, side.header.author),
              })}
            </span>
          </label>
        ))}
      </fieldset>
      {tried && draft.chosen === null && <p className={styles.error}>{words.chooseMissing}</p>}
      <ReasonField
        error={tried && reason === '' ? caseInEnglish.withdraw.reasonMissing : null}
        value={draft.reason}
        onText={(text) => change({ ...draft, reason: text })}
      />
      <div className={styles.buttons}>
        <button type="submit" data-weight="main" disabled={conflict.because === 'cycle'}>
          {words.keep}
        </button>
        <Link href={writeHref(id, conflict.kind, { settle: conflict.between })} className={styles.anew}>
          {words.anew}
        </Link>
      </div>
      <details className={styles.rest}>
        <summary>{words.rest}</summary>
        <div className={styles.whole}>
          {sides.map((side, index) => (
            <section key={side.header.id} aria-label={heads[index]} className="stack">
              <h3>{heads[index]}</h3>
              <EntryContent line={side} />
              <p>
                <Link href={historyHref(id, side.header.id)}>{caseInEnglish.entry.history}</Link>
              </p>
            </section>
          ))}
        </div>
      </details>
    </form>
  )
}
