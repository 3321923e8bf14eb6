import { useState } from 'react'
import { Link } from 'wouter'
import type { EarsBehindAnswer, EarsBehindAsked } from '#actions/evidence/read-ears-behind.ts'
import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useAction, useLists } from '../../journal/cases.ts'
import styles from './results.module.css'

/** Where a case may stand in the count, in the order in which the groups are shown, each with its name. */
export type BehindGroups = Readonly<Record<string, string>>
type About = { readonly ask: EarsBehindAsked; readonly groups: BehindGroups }

/** The cases behind one count, asked for when somebody opens it. */
export function CasesBehind({ label = words.behind, ...about }: About & { readonly label?: string }) {
  const [open, setOpen] = useState(false)
  return (
    <details data-screen-only onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{label}</summary>
      {open && <Behind {...about} />}
    </details>
  )
}

/** The cases themselves, group by group; a group with nobody in it is left out. */
export function Behind({ ask, groups }: About) {
  const found = useAction<EarsBehindAnswer>('read-ears-behind', ask)
  return (
    <ReadingView reading={found} again={found.again}>
      {({ behind }) => {
        const some = Object.entries(groups).map(([standing, name]) => ({
          name,
          cases: behind.filter((one) => one.standing === standing),
        }))
        if (behind.length === 0) return <p>{words.behindNobody}</p>
        return (
          <dl className={styles.behind}>
            {some
              .filter(({ cases }) => cases.length > 0)
              .map(({ name, cases }) => (
                <div key={name}>
                  <dt>{`${name}: ${cases.length}`}</dt>
                  <dd>
                    <Lines cases={cases} />
                  </dd>
                </div>
              ))}
          </dl>
        )
      }}
    </ReadingView>
  )
}

function Lines({ cases }: { readonly cases: EarsBehindAnswer['behind'] }) {
  const lists = useLists()
  const names = new Map(lists.kind === 'read' ? lists.value.cases.map(({ stream, name }) => [stream, name]) : [])
  return (
    <ul>
      {cases.map(({ stream, sides, on, after }, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: one ear may stand in a group twice, once for each trouble
        <li key={`${stream} ${sides} ${on} ${place}`}>
          <Link href={`/case/${stream.replace(/^case:/, '')}`}>
            {fill(after === null ? words.behindLine : words.behindAfter, {
              name: names.get(stream) ?? stream,
              sides: sides.join(' + '),
              day: sayCalendarDay(on),
              after: String(after),
            })}
          </Link>
        </li>
      ))}
    </ul>
  )
}
