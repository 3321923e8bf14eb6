import { type ReactNode, useMemo } from 'react'
import { Link } from 'wouter'
import { formulary } from '#content/formulary/index.ts'
import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import { fill } from '#core/outcome/finding.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { type Timer, timersOf } from '#core/theatre/timers.ts'
import { clockOf } from '#core/time/moment.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { sayMinutes } from '#documents/case/say-minutes.ts'
import { useServerNow } from '../../../journal/use-server-now.ts'
import { ledgerHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './room.module.css'

/** Every clock of the operation, read from two metres away; each runs from an entry, none from a button. */
export function Timers(props: {
  readonly operation: OperationOnFile
  /** Only these, and they do not stay in sight. */
  readonly only?: readonly Timer['what'][]
  /** What stands over them and stays in sight with them. */
  readonly children?: ReactNode
}) {
  const { operation, only, children } = props
  const { file, id, operations } = useCaseView()
  const now = useServerNow()
  const all = useMemo(() => {
    const together = anaestheticOf(operation, operations, file.theCase)
    return timersOf(file, operation.id, now, theatreTimers, formulary, together)
  }, [file, operation, operations, now])
  const timers = only ? all.filter(({ what }) => only.includes(what)) : all
  if (only && timers.length === 0) return null
  return (
    <section aria-label={words.timersLabel} className={only ? styles.still : styles.timers}>
      {children}
      {timers.length === 0 && <p>{words.noTimer}</p>}
      <ul className={`bare ${styles.clocks}`}>
        {timers.map((timer) => (
          <li key={`${timer.what} ${timer.drug}`} className={styles.clock} data-due={timer.isDue}>
            <span className={styles.clockName}>
              {timer.asks === 'look' && !only ? (
                <Link href={ledgerHref(id, operation.id)}>{words.timers[timer.what]}</Link>
              ) : (
                fill(words.timers[timer.what], { drug: timer.drug === null ? '' : drugName(timer.drug) })
              )}
            </span>
            <strong className={styles.clockMinutes}>
              <Far said={sayMinutes(timer.minutes)} />
            </strong>
            <span className={styles.clockSays}>{sayDue(timer, file.clinic.zone)}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}

/** The digits are what is read from afar; their units may be smaller. */
function Far({ said }: { readonly said: string }) {
  return (said.match(/\d+|\D+/g) ?? []).map((part) => (/\d/.test(part) ? part : <small key={part}>{part}</small>))
}

function sayDue({ asks, dueAt, isDue, beforeCut }: Timer, zone: string): string {
  const about = { at: dueAt === null ? '' : clockOf(dueAt, zone), minutes: String(beforeCut) }
  const before = beforeCut === null ? [] : [fill(words.beforeCut, about)]
  const due = (): string[] => {
    if (asks === null) return []
    if (dueAt === null) return [words.noInterval]
    return [fill(words.asks[asks][isDue ? 'due' : 'waits'], about)]
  }
  return [...before, ...due()].join('; ')
}
