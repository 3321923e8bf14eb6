import { Link } from 'wouter'
import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { type Ledger, wholeMinutes } from '#core/theatre/ledger.ts'
import { Caution } from '../../../../design/caution.tsx'
import { Page } from '../../../../design/page.tsx'
import { useWho } from '../../../../session/use-who.ts'
import { roomHref, writeHref } from '../../case-hrefs.ts'
import { CaseLine } from '../../case-line.tsx'
import { useCaseView } from '../../case-view.ts'
import { MayNotWrite } from '../../may-correct.tsx'
import { useOperationHere } from '../../use-operation-here.ts'
import { WithCase } from '../../with-case.tsx'
import { EmergencyBar } from '../now/emergency-bar.tsx'
import { Timers } from '../timers.tsx'
import { useAwake } from '../use-awake.ts'
import { useTheatreTheme } from '../use-theatre-theme.ts'
import { EntryPart } from './entry-part.tsx'
import styles from './ledger.module.css'
import { RecoveryPart } from './recovery-part.tsx'
import { RowsPart } from './rows-part.tsx'
import { StripsPart } from './strips-part.tsx'
import { useLedger } from './use-ledger.ts'

/** The anaesthetic of one operation: the next look in a few taps, its strips, and the whole column of time. */
export default function LedgerScreen() {
  return (
    <WithCase>
      <LedgerPage />
    </WithCase>
  )
}

function LedgerPage() {
  const { wanted, operation, subject } = useOperationHere()
  const { id } = useCaseView()
  useTheatreTheme()
  return (
    <Page title={words.title} whose={<CaseLine about={subject} />} wide>
      {operation ? <LedgerOf key={operation.id} operation={operation} /> : <p>{roomInEnglish.noOperation}</p>}
      <p data-screen-only>
        <Link href={roomHref(id, wanted)}>{words.toRoom}</Link>
      </p>
      {operation && <EmergencyBar operation={operation} />}
    </Page>
  )
}

/** A day after it nothing is measured any more that belongs here; what was forgotten is written with its own time. */
function isOver({ tubeOut, start, rows }: Ledger, now: string): boolean {
  const from = tubeOut ?? start ?? rows[0]?.at
  return from !== undefined && wholeMinutes(from, now) >= 24 * 60
}

function LedgerOf({ operation }: { readonly operation: OperationOnFile }) {
  const { me } = useWho()
  const { file, id } = useCaseView()
  const { ledger, now } = useLedger(operation)
  const subject = aboutOperation(file, operation.id)
  useAwake()
  const mayWrite = writersOf('observation').includes(me.role)
  const over = isOver(ledger, now)
  const recovery = <RecoveryPart operation={operation} now={now} mayWrite={mayWrite} isOver={over} />
  const wakes = ledger.tubeOut !== null
  return (
    <>
      {!mayWrite && <MayNotWrite kind="observation" />}
      <Timers operation={operation} only={['anaesthesia', 'observation', 'no-observation']} />
      {wakes && recovery}
      {mayWrite && !over && <EntryPart operation={operation} ledger={ledger} />}
      {mayWrite && (
        <p data-screen-only>
          <Link href={writeHref(id, 'observation', { subject })} className={styles.history}>
            {words.otherTime}
          </Link>
        </p>
      )}
      <StripsPart ledger={ledger} />
      <RowsPart operation={operation} ledger={ledger} mayWrite={mayWrite} />
      {!wakes && recovery}
      <Caution />
    </>
  )
}
