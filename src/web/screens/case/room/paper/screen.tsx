import { type FormEvent, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { procedures } from '#content/procedures/index.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { paperSheetInEnglish as words } from '#content/wording/app-paper-sheet.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { pauseRunOf } from '#core/theatre/pause-run.ts'
import { pausesOf } from '#core/theatre/spoken-pause.ts'
import { toStamp } from '#core/theatre/stamps.ts'
import { Caution } from '../../../../design/caution.tsx'
import { Page } from '../../../../design/page.tsx'
import { TextField } from '../../../../design/text-field.tsx'
import { useMinute } from '../../../../journal/use-minute.ts'
import { useWho } from '../../../../session/use-who.ts'
import { roomHref, writeHref } from '../../case-hrefs.ts'
import { CaseLine } from '../../case-line.tsx'
import { useCaseView } from '../../case-view.ts'
import { MayNotWrite } from '../../may-correct.tsx'
import { useFaultFocus } from '../../use-fault-focus.ts'
import { useOperationHere } from '../../use-operation-here.ts'
import { WithCase } from '../../with-case.tsx'
import { DrugsPart } from './drugs-part.tsx'
import { LooksPart } from './looks-part.tsx'
import styles from './paper.module.css'
import { PausesPart } from './pauses-part.tsx'
import { PointsPart } from './points-part.tsx'
import { sayFault, useSheet } from './use-sheet.ts'

/** The theatre sheet that was written by hand becomes entries, all in one stroke, marked as typed in from paper. */
export default function PaperScreen() {
  return (
    <WithCase>
      <PaperPage />
    </WithCase>
  )
}

function PaperPage() {
  const { wanted, operation, subject } = useOperationHere()
  const { id } = useCaseView()
  const { me } = useWho()
  const mayWrite = writersOf('theatre-stamp').includes(me.role)
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} whose={<CaseLine about={subject} />} wide>
      {!operation && <p>{roomInEnglish.noOperation}</p>}
      {operation && !mayWrite && <MayNotWrite kind="theatre-stamp" />}
      {operation && mayWrite && <Typing key={me.id} operation={operation} />}
      <p>
        <Link href={roomHref(id, wanted)}>{words.toRoom}</Link>
      </p>
    </Page>
  )
}

function Typing({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id, operations } = useCaseView()
  const [, go] = useLocation()
  const now = useMinute()
  const { draft, change, ready, day, planned, read, keep } = useSheet(operation)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  if (!ready) return null
  const { entries, faults: found } = read(now)
  const faults = tries > 0 ? found : []
  const pair = oneAnaesthetic(operation, operations, file.theCase)
  const runs = pausesOf(operation.id, pair, spokenPauses).map((pause) => pauseRunOf(file.theCase, operation.id, pause))
  const items = toStamp(file.theCase, operation.id, procedureNamed(operation.procedure, procedures).checkpoints)
  const subject = aboutOperation(file, operation.id)
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (day === null || read(new Date().toISOString()).faults.length > 0) return
    await keep()
    go(roomHref(id, operation.id))
  }
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <TextField
        label={words.day}
        error={tries > 0 && day === null ? words.dayWrong : null}
        autoComplete="off"
        value={draft.day}
        onText={(text) => change({ ...draft, day: text })}
      />
      <PausesPart
        runs={runs}
        pauses={draft.pauses}
        faults={faults}
        onPauses={(pauses) => change({ ...draft, pauses })}
      />
      <PointsPart
        items={items}
        points={draft.points}
        faults={faults}
        onPoints={(points) => change({ ...draft, points })}
      />
      <DrugsPart
        planned={planned}
        doses={draft.doses}
        faults={faults}
        otherHref={writeHref(id, 'drug-given', { subject })}
        onDoses={(doses) => change({ ...draft, doses })}
      />
      <LooksPart looks={draft.looks} faults={faults} onLooks={(looks) => change({ ...draft, looks })} />
      <p>
        {words.elsewhere} <Link href={writeHref(id, 'blood-loss', { subject })}>{words.loss}</Link>{' '}
        <Link href={writeHref(id, 'count', { subject })}>{words.count}</Link>
      </p>
      {faults.length > 0 && (
        <p className={styles.fault} role="alert">
          {sayFault(faults, 'sheet') ?? sayCount(words.wrong, faults.length)}
        </p>
      )}
      <p>
        <button type="submit" data-weight="main">
          {entries.length === 0 ? words.keep : sayCount(words.keepCount, entries.length)}
        </button>
      </p>
      <Caution />
    </form>
  )
}
