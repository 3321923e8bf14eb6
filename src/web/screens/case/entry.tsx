import { useState } from 'react'
import { Link, useSearchParams } from 'wouter'
import { readingInEnglish, caseInEnglish as words } from '#content/wording/app-case.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { authorNamed, personNamed } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { badgesOf } from '#core/reading/badges-of.ts'
import { sideOf } from '#core/reading/names-of.ts'
import { sayMoment } from '#core/time/moment.ts'
import { sayWhen } from '../../design/say-when.ts'
import { SideWord } from '../../design/side-word.tsx'
import { Attachments } from './attachments.tsx'
import { conflictHref, historyHref, refileHref, withdrawHref, writeHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import styles from './entry.module.css'
import { EntryBody } from './entry-body.tsx'
import { EntryFigures } from './entry-figures.tsx'
import { formNamed } from './entry-words.ts'

/** One entry: when, what, of which ear, in one line; all of it and what can be done with it when opened. */
export function EntryLine({ line }: { readonly line: Line }) {
  const view = useCaseView()
  const { id, kind, happenedAt, author } = line.header
  const [open, setOpen] = useState(false)
  const side = sideOf(line, view.file)
  const badges = badgesOf(line, view.file.theCase, view.unsent)
  return (
    <li id={`entry-${id}`} className={styles.line} data-state={line.state} tabIndex={-1}>
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary className={styles.summary}>
          <span className={styles.time}>{timeOf(line)}</span>
          <span className={styles.main}>
            <span className={styles.what}>
              <span className={styles.kind}>{kindName(kind)}</span>
              {side && <SideWord side={side} />}
              <span className={styles.by}>{fill(words.entry.by, { who: authorNamed(view.file, author) })}</span>
            </span>
            <span className={styles.gist}>{gistOf(line, view.gist(line))}</span>
            {badges.length > 0 && (
              <span className={styles.badges}>
                {badges.map((badge) => (
                  <span key={badge} className={styles.badge} data-badge={badge}>
                    {words.badges[badge]}
                  </span>
                ))}
              </span>
            )}
          </span>
        </summary>
        <div className={styles.open}>
          <Kept id={id} />
          <EntryContent line={line} />
          <Written line={line} />
          <Actions line={line} />
        </div>
      </details>
      <span className="said">{sayMoment(happenedAt)}</span>
    </li>
  )
}

/** Said at an entry that was just written: only here yet, or with the server. */
function Kept({ id }: { readonly id: string }) {
  const { unsent } = useCaseView()
  const [query] = useSearchParams()
  if (query.get('kept') !== id) return null
  return (
    <p role="status" className={styles.kept}>
      {unsent.has(id) ? words.kept.here : words.kept.server}
    </p>
  )
}

/** All that an entry says; or, in words, why it cannot be said. */
export function EntryContent({ line }: { readonly line: Line }) {
  const { rows, file } = useCaseView()
  if (line.erased) {
    const erasure = file.house
      .live('erasure')
      .concat(file.theCase.live('erasure'))
      .findLast(({ body }) => body.entry === line.header.id)
    const about = {
      day: erasure ? sayMoment({ ...erasure.header.happenedAt, precision: 'day' }) : readingInEnglish.unknownDay,
      who: erasure ? personNamed(file, erasure.body.orderedBy) : readingInEnglish.unknownPerson,
    }
    return <p>{fill(readingInEnglish.erased, about)}</p>
  }
  if (!line.known) return <p>{readingInEnglish.unknown}</p>
  return (
    <>
      <EntryBody rows={rows(line)} />
      <EntryFigures line={line} />
      <Attachments line={line} />
    </>
  )
}

/** When it was written and why, where that differs from what the line already says. */
function Written({ line }: { readonly line: Line }) {
  const { file } = useCaseView()
  const { writtenAt, author, reason } = line.header
  const about = { when: sayWhen(writtenAt, file.clinic.zone), who: authorNamed(file, author) }
  return (
    <div className={styles.written}>
      <p>{fill(words.entry.writtenAt, about)}</p>
      {reason !== null && <p>{fill(words.entry.reason, { reason })}</p>}
    </div>
  )
}

function Actions({ line }: { readonly line: Line }) {
  const { id: place, file } = useCaseView()
  const { id, kind } = line.header
  const stands = line.state === 'live' && line.known && !line.erased
  const side = file.theCase.conflicts.some(({ between }) => between.includes(id))
  const amendable = formNamed(kind)?.arrangement.amendable === true
  return (
    <ul className={styles.actions} aria-label={words.entry.actions} data-screen-only>
      {side && (
        <li>
          <Link href={conflictHref(place, id)}>{words.entry.settle}</Link>
        </li>
      )}
      {stands && amendable && (
        <li>
          <Link href={writeHref(place, kind, { amend: id })}>{words.entry.amend}</Link>
        </li>
      )}
      <li>
        <Link href={historyHref(place, id)}>{words.entry.history}</Link>
      </li>
      {stands && (
        <>
          <li>
            <Link href={withdrawHref(place, id)}>{words.entry.withdraw}</Link>
          </li>
          <li>
            <Link href={refileHref(place, id)}>{words.entry.refile}</Link>
          </li>
        </>
      )}
    </ul>
  )
}

/** The time of day, when it is known; the day stands above. */
function timeOf({ header }: Line): string {
  const { happenedAt } = header
  if (happenedAt.precision !== 'minute' && happenedAt.precision !== 'second') return ''
  return sayMoment(happenedAt).split(', ')[1] ?? ''
}

function gistOf(line: Line, gist: string): string {
  if (line.erased) return words.badges.erased
  return line.known ? gist : words.badges.unknown
}

export function kindName(kind: string): string {
  return (kindsInEnglish as Readonly<Record<string, string>>)[kind] ?? kind
}
