import { Link } from 'wouter'
import type { TheatreListAnswer } from '#actions/theatre/read-theatre-list.ts'
import { theatreListInEnglish as words } from '#content/wording/app-theatre-list.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { Caution } from '../../design/caution.tsx'
import { ListGroup } from '../../design/list-group.tsx'
import { ListsBehind } from '../../design/lists-behind.tsx'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayNearDay } from '../../design/say-near-day.ts'
import { sayWhen } from '../../design/say-when.ts'
import { theatreList, useTheatreList } from '../../journal/cases.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { useWho } from '../../session/use-who.ts'
import { OperationLine } from './operation-line.tsx'
import styles from './screen.module.css'

/** Agreed operations by date, as a plain list that prints on one sheet. */
export function TheatreListScreen() {
  const reading = useTheatreList()
  const { pen, clinic } = useWho()
  const now = useMinute()
  const today = dayOf({ at: now, zone: pen.zone })
  const print = (
    <button type="button" data-weight="main" onClick={() => window.print()}>
      {words.print}
    </button>
  )
  return (
    <Page title={words.title} lead={words.lead} actions={reading.kind === 'read' && print}>
      <ReadingView reading={reading} again={() => void theatreList.refresh()}>
        {({ asOf, days, remaking }) => (
          <>
            <p className={styles.printed}>
              {fill(words.printed, { when: sayWhen(asOf, pen.zone), clinic: clinic.row.name })}
            </p>
            <ListsBehind remaking={remaking} />
            <Days days={shownFrom(days, today)} today={today} />
            <Caution />
          </>
        )}
      </ReadingView>
    </Page>
  )
}

/** Of the days that have passed only what was not done: it is still to be settled. */
function shownFrom(days: TheatreListAnswer['days'], today: string): TheatreListAnswer['days'] {
  return days
    .map(({ day, lines }) => ({ day, lines: day < today ? lines.filter(({ state }) => state !== 'done') : lines }))
    .filter(({ lines }) => lines.length > 0)
}

function Days({ days, today }: { readonly days: TheatreListAnswer['days']; readonly today: string }) {
  if (days.length === 0) {
    return (
      <div className="stack">
        <p role="status">{words.none}</p>
        <p>
          <Link href="/find">{words.find}</Link>
        </p>
      </div>
    )
  }
  return days.map(({ day, lines }) => (
    <ListGroup
      key={day}
      id={`theatre-${day}`}
      title={sayNearDay(day, today)}
      beside={day < today ? words.passed : undefined}
    >
      <ul className="bare">
        {lines.map((line) => (
          <OperationLine key={`${line.stream} ${line.operation}`} line={line} day={day} />
        ))}
      </ul>
    </ListGroup>
  ))
}
