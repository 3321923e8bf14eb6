import { useState } from 'react'
import { Link } from 'wouter'
import type { EarsBehindAnswer } from '#actions/evidence/read-ears-behind.ts'
import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import type { ReasonGroup } from '#core/animal/main-reason.ts'
import { standings } from '#core/evidence/own/count-own.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useAction, useLists } from '../../journal/cases.ts'
import type { OwnCounts } from './own-counts.ts'

type Question = OwnCounts[number]['question'] & { readonly reason?: ReasonGroup }

/** The cases behind one count, asked for when somebody opens it. */
export function CasesBehind({ question }: { readonly question: Question }) {
  const [open, setOpen] = useState(false)
  return (
    <details data-screen-only onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.behind}</summary>
      {open && <Behind question={question} />}
    </details>
  )
}

function Behind({ question }: { readonly question: Question }) {
  const found = useAction<EarsBehindAnswer>('read-ears-behind', question)
  const lists = useLists()
  const names = new Map(lists.kind === 'read' ? lists.value.cases.map(({ stream, name }) => [stream, name]) : [])
  return (
    <ReadingView reading={found} again={found.again}>
      {({ behind }) => (
        <dl>
          {standings.map((standing) => {
            const some = behind.filter((one) => one.standing === standing)
            return (
              <div key={standing}>
                <dt>{`${words.behindGroups[standing]}: ${some.length}`}</dt>
                <dd>
                  {some.length === 0 ? (
                    words.behindNobody
                  ) : (
                    <ul>
                      {some.map(({ stream, sides, on }) => (
                        <li key={`${stream} ${sides} ${on}`}>
                          <Link href={`/case/${stream.replace(/^case:/, '')}`}>
                            {fill(words.behindLine, {
                              name: names.get(stream) ?? stream,
                              sides: sides.join(' + '),
                              day: sayCalendarDay(on),
                            })}
                          </Link>
                        </li>
                      ))}
                    </ul>
                  )}
                </dd>
              </div>
            )
          })}
        </dl>
      )}
    </ReadingView>
  )
}
