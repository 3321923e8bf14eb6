import { useMemo } from 'react'
import { Link } from 'wouter'
import { procedures } from '#content/procedures/index.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { ledgerScreenInEnglish } from '#content/wording/app-ledger.ts'
import { paperSheetInEnglish } from '#content/wording/app-paper-sheet.ts'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { fill } from '#core/outcome/finding.ts'
import { anaestheticOf, oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { gatesOf } from '#core/theatre/stamp-gates.ts'
import { toStamp } from '#core/theatre/stamps.ts'
import { theatreLine } from '#core/theatre/theatre-list.ts'
import { theatreRules } from '#documents/agreement/consent-today.ts'
import { Caution } from '../../../design/caution.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { useServerNow } from '../../../journal/use-server-now.ts'
import { useWho } from '../../../session/use-who.ts'
import {
  casePageHref,
  dosePlanHref,
  ledgerHref,
  paperHref,
  paperSheetHref,
  roomHref,
  writeHref,
} from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { MayNotWrite } from '../may-correct.tsx'
import { useOperationHere } from '../use-operation-here.ts'
import { WithCase } from '../with-case.tsx'
import { BesideLinks } from './beside-links.tsx'
import { DeviceNotices } from './device-notices.tsx'
import { FarPart } from './far-part.tsx'
import { FreePart } from './free-part.tsx'
import { LossPart } from './loss-part.tsx'
import { EmergencyBar } from './now/emergency-bar.tsx'
import { PauseLinks } from './pause-links.tsx'
import { ReportLinks } from './report-links.tsx'
import { RetractionPart } from './retraction-part.tsx'
import styles from './room.module.css'
import { SignOutState } from './sign-out/sign-out-state.tsx'
import { StampRow } from './stamp-row.tsx'
import { Timers } from './timers.tsx'
import { useTheatreTheme } from './use-theatre-theme.ts'

/** The screen beside the operating table: clocks to be read from two metres, one tap for each point of the operation. */
export default function RoomScreen() {
  return (
    <WithCase>
      <RoomPage />
    </WithCase>
  )
}

function RoomPage() {
  const { operation, subject } = useOperationHere()
  const { id } = useCaseView()
  useTheatreTheme()
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} whose={<CaseLine about={subject} />} wide>
      {operation ? <Room operation={operation} /> : <p>{words.noOperation}</p>}
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
      {operation && <EmergencyBar operation={operation} />}
    </Page>
  )
}

function Room({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id, sides, operations, owed } = useCaseView()
  const { me } = useWho()
  const { checkpoints } = procedureNamed(operation.procedure, procedures)
  const items = toStamp(file.theCase, operation.id, checkpoints, anaestheticOf(operation, operations, file.theCase))
  const next = items.find(({ stamps }) => stamps.length === 0)
  const line = useMemo(() => theatreLine(operation, { file, owed }, theatreRules), [operation, file, owed])
  const now = useServerNow()
  const gates = {
    theCase: file.theCase,
    operations,
    sides: sides.disagreements,
    missing: line.missing,
    pauses: spokenPauses,
    now,
  }
  const writers = writersOf('theatre-stamp')
  const mayStamp = writers.includes(me.role)
  const unsettled = sides.disagreements.some((one) => one.operation === operation.id)
  return (
    <>
      {unsettled && (
        <Notice tone="warn" title={words.side}>
          <p>
            <Link href={`${casePageHref(id)}#sides`}>{words.sideLink}</Link>
          </p>
        </Notice>
      )}
      <DeviceNotices />
      {!mayStamp && <MayNotWrite kind="theatre-stamp" />}
      <BothEars operation={operation} />
      <Timers operation={operation}>
        <FarPart operation={operation} next={next} />
      </Timers>
      <LossPart operation={operation} />
      <PauseLinks operation={operation} />
      <SignOutState operation={operation} />
      <BesideLinks operation={operation} />
      <RetractionPart operation={operation} mayStamp={mayStamp} />
      <ol className={`bare ${styles.rows}`}>
        {items.map((item) => (
          <StampRow
            key={item.id}
            item={item}
            operation={operation}
            isNext={item === next}
            mayStamp={mayStamp}
            gates={item.stamps.length > 0 ? [] : gatesOf(item.id, operation, gates)}
          />
        ))}
      </ol>
      <FreePart operation={operation} mayStamp={mayStamp} />
      <Further operation={operation} />
      <Caution />
    </>
  )
}

/** Both ears under one anaesthetic: which this one is, and the way to the other. */
function BothEars({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id, operations } = useCaseView()
  const pair = oneAnaesthetic(operation, operations, file.theCase)
  if (!pair) return null
  const isFirst = pair.first.id === operation.id
  const other = isFirst ? pair.second : pair.first
  const about = { side: operation.side, other: other.side }
  return (
    <p className={styles.bothEars}>
      <strong>{fill(words.bothEars[isFirst ? 'first' : 'second'], about)}</strong>{' '}
      <Link href={roomHref(id, other.id)}>{fill(words.bothEars.link, { side: other.side })}</Link>
    </p>
  )
}

/** What else is written or looked at during an operation. */
function Further({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const subject = aboutOperation(file, operation.id)
  const writes = [
    ['observation', words.observe],
    ['count', words.count],
    ['drug-given', words.given],
  ] as const
  return (
    <nav aria-label={words.after} className={styles.further}>
      <Link href={dosePlanHref(id, operation.id)}>{words.plan}</Link>
      <a href={paperHref(file.stream, `theatre-sheet-${operation.id}.pdf`)}>{paperSheetInEnglish.print}</a>
      <Link href={paperSheetHref(id, operation.id)}>{paperSheetInEnglish.open}</Link>
      <Link href={ledgerHref(id, operation.id)}>{ledgerScreenInEnglish.open}</Link>
      {writes.map(([kind, said]) => (
        <Link key={kind} href={writeHref(id, kind, { subject })}>
          {said}
        </Link>
      ))}
      <ReportLinks operation={operation} />
    </nav>
  )
}
