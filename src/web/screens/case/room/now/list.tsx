import { Link, useLocation } from 'wouter'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { type RoomCall, roomCalls } from '#core/theatre/room-call.ts'
import { Caution } from '../../../../design/caution.tsx'
import { Page } from '../../../../design/page.tsx'
import { useNow } from '../../../../journal/use-now.ts'
import { nowHref, roomHref } from '../../case-hrefs.ts'
import { CaseLine } from '../../case-line.tsx'
import { useCaseView } from '../../case-view.ts'
import { useOperationHere } from '../../use-operation-here.ts'
import { WithCase } from '../../with-case.tsx'
import { useTheatreTheme } from '../use-theatre-theme.ts'
import styles from './now.module.css'
import { sayClock } from './say-clock.ts'
import { useShouts } from './use-shouts.ts'

/** What is shouted in the theatre: one large button each, and one tap from here to what is drawn up. */
export default function EmergencyListScreen() {
  return (
    <WithCase>
      <ListPage />
    </WithCase>
  )
}

function ListPage() {
  const { operation } = useOperationHere()
  const { file, id } = useCaseView()
  useTheatreTheme()
  if (!operation) return <Page title={words.title}>{roomInEnglish.noOperation}</Page>
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} wide>
      <CaseLine about={aboutOperation(file, operation.id)} />
      <Calls operation={operation} />
      <p>
        <Link href={roomHref(id, operation.id)}>{words.back}</Link>
      </p>
      <Caution />
    </Page>
  )
}

function Calls({ operation }: { readonly operation: OperationOnFile }) {
  const { id } = useCaseView()
  const [, go] = useLocation()
  const { last, begin, mayStamp } = useShouts(operation)
  const now = useNow(1_000)
  const tap = (call: RoomCall) => {
    const known = last(call)
    // What lasts is only opened; what is over begins anew. The screen never waits for the disk.
    if (mayStamp && (!known || known.ended)) void begin(call)
    go(nowHref(id, operation.id, call))
  }
  return (
    <ul className={`bare ${styles.calls}`}>
      {roomCalls.map((call) => {
        const known = last(call)
        const what = words.calls[call]
        return (
          <li key={call}>
            <button type="button" onClick={() => tap(call)}>
              {known && !known.ended ? fill(words.runs, { what, clock: sayClock(known, now) }) : what}
            </button>
          </li>
        )
      })}
    </ul>
  )
}
