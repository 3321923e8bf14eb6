import { Link, useParams } from 'wouter'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { isRoomCall, type RoomCall } from '#core/theatre/room-call.ts'
import { suspectedIn } from '#core/theatre/shouts.ts'
import { sheetOfCase } from '#documents/emergency-sheet/sheet-of-case.ts'
import { Caution } from '../../../../design/caution.tsx'
import { Page } from '../../../../design/page.tsx'
import { nowHref, roomHref, writeHref } from '../../case-hrefs.ts'
import { CaseLine } from '../../case-line.tsx'
import { useCaseView } from '../../case-view.ts'
import { useOperationHere } from '../../use-operation-here.ts'
import { WithCase } from '../../with-case.tsx'
import { useAwake } from '../use-awake.ts'
import { useTheatreTheme } from '../use-theatre-theme.ts'
import { BloodPart } from './blood-part.tsx'
import { ClockPart } from './clock-part.tsx'
import { DrawPart } from './draw-part.tsx'
import { IncidentLink } from './incident-link.tsx'
import styles from './now.module.css'
import { ShockPart } from './shock-part.tsx'
import { StepsPart } from './steps-part.tsx'
import { useShouts } from './use-shouts.ts'
import { WeightPart } from './weight-part.tsx'

/** One emergency: its clock, what is drawn up for this animal, what is done. All of it is worked out on this device. */
export default function EmergencyScreen() {
  return (
    <WithCase>
      <EmergencyPage />
    </WithCase>
  )
}

function EmergencyPage() {
  const { operation } = useOperationHere()
  const { call = '' } = useParams()
  useTheatreTheme()
  useAwake()
  if (!operation) return <Page title={words.title}>{roomInEnglish.noOperation}</Page>
  if (!isRoomCall(call)) return <Page title={words.title}>{words.noSuchCall}</Page>
  return (
    <div className={styles.screen}>
      <Page title={words.calls[call]} wide>
        <Emergency operation={operation} call={call} />
      </Page>
    </div>
  )
}

/** Rhythms that are shocked. */
const shocked: ReadonlySet<RoomCall> = new Set(['no-pulse', 'fast-wide-rhythm'])
/** Where the blood is counted. */
const bleeds: ReadonlySet<RoomCall> = new Set(['bleeding', 'low-pressure'])

function Emergency({ operation, call }: { readonly operation: OperationOnFile; readonly call: RoomCall }) {
  const { file, id } = useCaseView()
  const { shouts } = useShouts(operation)
  const made = sheetOfCase(file, suspectedIn(shouts))
  const subject = aboutOperation(file, operation.id)
  return (
    <div className={styles.now}>
      {/* Not `whose` of the page: that line stays put, and nothing may lie over a dose. */}
      <CaseLine about={subject} />
      <ClockPart operation={operation} call={call} />
      <WeightPart made={made} />
      <div className={styles.columns}>
        <DrawPart made={made} call={call} />
        <div className={styles.beside}>
          <StepsPart call={call} />
          {shocked.has(call) && made.kind === 'sheet' && <ShockPart sheet={made.sheet} />}
        </div>
      </div>
      {bleeds.has(call) && <BloodPart operation={operation} made={made} />}
      <Caution />
      <nav aria-label={words.write} className={styles.links}>
        <Link href={writeHref(id, 'drug-given', { subject })}>{words.given}</Link>
        <Link href={writeHref(id, 'blood-loss', { subject })}>{words.loss}</Link>
        <IncidentLink operation={operation} call={call} />
        <Link href={nowHref(id, operation.id)}>{words.all}</Link>
        <Link href={roomHref(id, operation.id)}>{words.back}</Link>
      </nav>
    </div>
  )
}
