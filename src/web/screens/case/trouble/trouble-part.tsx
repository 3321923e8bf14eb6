import { Link } from 'wouter'
import { cookWindows } from '#content/outcomes/schemes/cook-2010.ts'
import { woundInfectionWindow } from '#content/outcomes/schemes/wound-infection-window.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import { troubleScreenInEnglish as words } from '#content/wording/app-trouble.ts'
import { troubleInEnglish as said } from '#content/wording/trouble.ts'
import { classOf } from '#core/complications/standing.ts'
import type { Trouble } from '#core/complications/trouble.ts'
import { isWithinDays, windowOf } from '#core/complications/windows.ts'
import { personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Provenance } from '../../../design/provenance.tsx'
import { SideWord } from '../../../design/side-word.tsx'
import { useWho } from '../../../session/use-who.ts'
import { entryHref, writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { GradesPart } from './grades-part.tsx'
import styles from './trouble.module.css'

type About = { readonly trouble: Trouble; readonly operation: OperationOnFile }

/** One trouble: what is known of it, what it is held for, how it is graded, and the way to what is missing. */
export function TroublePart({ trouble, operation }: About) {
  const { file, id, nameOfEntry } = useCaseView()
  const heading = `trouble-${trouble.id.replaceAll(/[^a-z0-9-]/giu, '-')}`
  return (
    <article aria-labelledby={heading} className={styles.trouble}>
      <h2 id={heading}>
        {upper(said.events[trouble.event])}, <Whose trouble={trouble} />
      </h2>
      <dl className={styles.facts}>
        <dt>{words.terms.first}</dt>
        <dd>
          <First trouble={trouble} operation={operation} zone={file.clinic.zone} />
        </dd>
        <dt>{words.terms.needed}</dt>
        <dd>{said.needs[trouble.needed]}</dd>
        <dt>{words.terms.before}</dt>
        <dd>
          {trouble.beforeFrom === null
            ? said.before[trouble.before]
            : fill(words.said, { what: said.before[trouble.before], from: said.beforeFrom[trouble.beforeFrom] })}
          {trouble.beforeDisagrees && <span className={styles.warn}> {said.beforeDisagrees}</span>}
        </dd>
        <dt>{words.terms.lasting}</dt>
        <dd>{said.lasting[trouble.lasting]}</dd>
        <dt>{words.terms.held}</dt>
        <dd>
          <Held trouble={trouble} />
        </dd>
        {trouble.text !== null && (
          <>
            <dt>{words.terms.words}</dt>
            <dd>{trouble.text}</dd>
          </>
        )}
      </dl>
      <GradesPart trouble={trouble} />
      <p className="soft" data-screen-only>
        {words.terms.from}:{' '}
        {trouble.from.map((entry, place) => (
          <span key={entry}>
            {place > 0 && ', '}
            <Link href={entryHref(id, entry)}>{nameOfEntry(entry)}</Link>
          </span>
        ))}
      </p>
      <Act trouble={trouble} operation={operation} />
    </article>
  )
}

function upper(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}

function Whose({ trouble: { side } }: Pick<About, 'trouble'>) {
  if (side === null) return <span className={styles.whose}>{words.animal}</span>
  const [before, after] = words.ear.split('{side}')
  return (
    <span className={styles.whose}>
      {before}
      <SideWord side={side} />
      {after}
    </span>
  )
}

/** When, and in which stretch of time; of an infection also whether surveillance counts it. */
function First({ trouble, operation, zone }: About & { readonly zone: string }) {
  const operated = dayOf({ at: operation.moment.at, zone })
  const window = windowOf(operated, dayOf(trouble.firstNoticed), cookWindows.value)
  const within = isWithinDays(operated, trouble.firstNoticed, woundInfectionWindow.value)
  const key = within === null ? 'not-known' : within ? 'within' : 'after'
  return (
    <>
      {fill(words.firstIn, {
        when: sayMoment(trouble.firstNoticed),
        window: window === null ? said.unknown : said.windows[window],
      })}{' '}
      <Provenance fact={cookWindows} />
      {trouble.event === 'wound-infection' && (
        <span className={styles.line}>
          {fill(said.woundWindow[key], { days: String(woundInfectionWindow.value) })}{' '}
          <Provenance fact={woundInfectionWindow} />
        </span>
      )}
    </>
  )
}

/** What a person decided; else what the record shows; else the proposal, said to be one. */
function Held({ trouble }: Pick<About, 'trouble'>) {
  const { file } = useCaseView()
  const held = classOf(trouble)
  const { decision } = trouble
  if (decision) {
    const about = { class: said.classes[decision.class], person: decision.by ? personNamed(file, decision.by) : '' }
    return (
      <>
        {decision.by === null ? about.class : fill(words.decided, about)}
        {decision.because !== null && <span className={styles.line}>{decision.because}</span>}
      </>
    )
  }
  if (held !== null) return fill(words.shown, { class: said.classes[held] })
  const proposed = troubleRules.proposed[trouble.event]
  if (proposed === null) return words.nothingProposed
  return (
    <>
      {fill(words.proposed, { class: said.classes[proposed.value] })} <Provenance fact={proposed} />
    </>
  )
}

/** Corrects the entry that was written; or writes one, with what other entries already say filled in. */
function Act({ trouble, operation }: About) {
  const { id } = useCaseView()
  const { me } = useWho()
  if (!writersOf('complication').includes(me.role)) return null
  const { side, written, event, firstNoticed } = trouble
  const subject =
    side === null ? ({ kind: 'animal', animal: '' } as const) : ({ kind: 'ear', animal: '', side } as const)
  const answers = { event, operation: operation.id, firstNoticed: sayMoment(firstNoticed) }
  return (
    <p data-screen-only>
      <Link
        className={styles.write}
        href={writeHref(id, 'complication', written ? { subject, amend: written } : { subject, answers })}
      >
        {written ? words.correct : words.decide}
      </Link>
    </p>
  )
}
