import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { missingReasons } from '#content/follow-up/missing-reasons.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import type { ChapterView } from '#core/chapters/chapters-of.ts'
import type { Missing } from '#core/chapters/missing.ts'
import { sayMissing } from '#core/chapters/say-missing.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { type DayOfLines, daysOf, type Run } from '#core/reading/days-of.ts'
import { writeHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import styles from './chapter.module.css'
import { EntryLine, kindName } from './entry.tsx'
import { NextList } from './next.tsx'
import { PlanLink } from './plan-link.tsx'
import { WriteMenu } from './write-menu.tsx'

const words = caseInEnglish.chapter

/** One chapter: what is there, what is missing and why, what is next, and what can be written. */
export function ChapterPart({ view, children }: { readonly view: ChapterView; readonly children?: ReactNode }) {
  const { chapter, state, there, before, missing, next } = view
  const heading = `chapter-${chapter.toLowerCase()}`
  return (
    <section
      id={heading}
      aria-labelledby={`${heading}-title`}
      className={styles.chapter}
      data-state={state}
      tabIndex={-1}
    >
      <header className={styles.heading}>
        <h2 id={`${heading}-title`}>{chaptersInEnglish.chapters[chapter]}</h2>
        <p className={styles.state}>{chaptersInEnglish.states[state]}</p>
      </header>
      <div className={styles.columns} data-calm={next.length + missing.length === 0 || undefined}>
        <div className={styles.there}>
          {children}
          {there.length === 0 ? <p className="soft">{words.nothing}</p> : <Days days={daysOf(there)} />}
          {before.length > 0 && (
            <details className={styles.before}>
              <summary>{sayCount(words.before, before.length)}</summary>
              <Days days={daysOf(before)} />
            </details>
          )}
        </div>
        <aside className={styles.open} aria-label={chaptersInEnglish.chapters[chapter]}>
          {next.length + missing.length === 0 && there.length > 0 && <p className="soft">{words.calm}</p>}
          <NextList items={next} />
          <MissingList missing={missing} />
          <WriteMenu chapter={chapter} />
        </aside>
      </div>
    </section>
  )
}

function Days({ days }: { readonly days: readonly DayOfLines[] }) {
  return days.map(({ said, runs }) => (
    <div key={said} className={styles.day}>
      <h3 className={styles.date}>{said}</h3>
      <ol className={styles.entries}>
        {runs.map((run) => (
          <RunOfLines key={run.lines[0]?.header.id} run={run} />
        ))}
      </ol>
    </div>
  ))
}

/** Many of one kind in a row fold into one line. */
function RunOfLines({ run }: { readonly run: Run }) {
  const [first] = run.lines
  if (first && run.lines.length === 1) return <EntryLine line={first} />
  return (
    <li className={styles.run}>
      <details>
        <summary>
          {fill(caseInEnglish.entry.run, { kind: kindName(run.kind), count: String(run.lines.length) })}
        </summary>
        <ol className={styles.entries}>
          {run.lines.map((line) => (
            <EntryLine key={line.header.id} line={line} />
          ))}
        </ol>
      </details>
    </li>
  )
}

function MissingList({ missing }: { readonly missing: readonly Missing[] }) {
  const needed = missing.filter(({ weight }) => weight === 'needed')
  const useful = missing.filter(({ weight }) => weight === 'useful')
  return (
    <>
      {needed.length > 0 && <h3 className={styles.part}>{words.missing}</h3>}
      {needed.length > 0 && <MissingItems missing={needed} />}
      {useful.length > 0 && <h3 className={styles.part}>{words.missingHelps}</h3>}
      {useful.length > 0 && <MissingItems missing={useful} />}
    </>
  )
}

/** Three or more of one kind of thing share their reason: a long operation misses many checkpoints for the same one. */
const leastTogether = 3

function MissingItems({ missing }: { readonly missing: readonly Missing[] }) {
  const codes = [...new Set(missing.map(({ code }) => code))]
  return (
    <ul className={styles.items}>
      {codes.flatMap((code) => {
        const same = missing.filter((one) => one.code === code)
        return same.length >= leastTogether
          ? [<MissingTogether key={code} same={same} why={missingReasons[code].value} />]
          : same.map((one) => <MissingOne key={sayMissing(one, chaptersInEnglish)} one={one} />)
      })}
    </ul>
  )
}

function MissingOne({ one }: { readonly one: Missing }) {
  const said = sayMissing(one, chaptersInEnglish)
  return (
    <li>
      <p>{said}</p>
      <p className={styles.why}>{missingReasons[one.code].value}</p>
      <p data-screen-only>
        <MissingLink one={one} className={styles.act} what={said}>
          {one.amends === null ? words.writeIt : words.correctIt}
        </MissingLink>
      </p>
      {one.code === 'planned-lines-missing' && one.subject?.kind === 'operation' && (
        <PlanLink operation={one.subject.operation} />
      )}
    </li>
  )
}

function MissingTogether({ same, why }: { readonly same: readonly Missing[]; readonly why: string }) {
  return (
    <li>
      <p className={styles.why}>{why}</p>
      <ul className={styles.together}>
        {same.map((one) => {
          const said = sayMissing(one, chaptersInEnglish)
          return (
            <li key={said}>
              <MissingLink one={one}>{said}</MissingLink>
            </li>
          )
        })}
      </ul>
    </li>
  )
}

/** The way to the form that would settle it, or to the entry that says too little. */
function MissingLink(props: {
  readonly one: Missing
  readonly className?: string | undefined
  /** Said after the words of the link, where it stands beside what it is about. */
  readonly what?: string
  readonly children: string
}) {
  const { one, className, what, children } = props
  const { id } = useCaseView()
  const about = { subject: one.subject, ...(one.amends !== null && { amend: one.amends }) }
  return (
    <Link
      href={writeHref(id, one.kind, about)}
      className={className}
      aria-label={what === undefined ? undefined : `${children}: ${what}`}
    >
      {children}
    </Link>
  )
}
