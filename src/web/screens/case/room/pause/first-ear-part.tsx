import type { RefObject } from 'react'
import { procedures } from '#content/procedures/index.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { nowInEnglish } from '#content/wording/app-now.ts'
import { pauseInEnglish } from '#content/wording/app-pause.ts'
import { localRoomOf } from '#core/dosing/local-room.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { stampSentences } from '#core/procedures/stamp-sentences.ts'
import { lossSoFar } from '#core/theatre/loss-so-far.ts'
import { doneAt } from '#core/theatre/stamps.ts'
import { clockOf, minutesBetween } from '#core/time/moment.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { sayAmount } from '#core/why/why.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { sheetOfCase } from '#documents/emergency-sheet/sheet-of-case.ts'
import { useMinute } from '../../../../journal/use-minute.ts'
import { saySpan } from '../../blood.tsx'
import { useCaseView } from '../../case-view.ts'
import { SidesPart } from '../../sides-part.tsx'
import { Lost } from '../lost.tsx'
import styles from './pause.module.css'

const words = pauseInEnglish.second

/** What the first ear left behind, read aloud before anybody says GO for the second. */
export function FirstEarPart(props: {
  readonly operation: OperationOnFile
  readonly heading: RefObject<HTMLHeadingElement | null>
}) {
  const { operation, heading } = props
  const { file, operations } = useCaseView()
  const now = useMinute()
  const pair = oneAnaesthetic(operation, operations, file.theCase)
  if (!pair) return null
  const { first } = pair
  const facts: readonly (readonly [string, React.ReactNode])[] = [
    [words.loss, <Loss key="loss" ids={[first.id, operation.id]} />],
    [words.temperature, sayTemperature(first, file, now)],
    [words.hours, sayHours(first, file, now)],
    [words.nerve, sayNerve(first, file)],
    [words.local, sayLocal(file, now)],
  ]
  return (
    <section aria-labelledby="pause-start" className="stack">
      <h2 id="pause-start" ref={heading} tabIndex={-1} className={styles.title}>
        {words.title}
      </h2>
      <p>{sayFirst(first, file)}</p>
      <dl className={styles.facts}>
        {facts.map(([term, said]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
      <SidesPart of={operation.id} open />
    </section>
  )
}

type File = ReturnType<typeof useCaseView>['file']

function sayFirst({ id, side, procedure }: OperationOnFile, { theCase, clinic }: File): string {
  const at = (mark: string) => {
    const found = doneAt(theCase, id, mark)
    return found === null ? words.unknown : clockOf(found, clinic.zone)
  }
  const { name } = procedureNamed(procedure, procedures)
  return fill(words.earSaid, { side, procedure: name, cut: at('incision'), closed: at('closed') })
}

function Loss({ ids }: { readonly ids: readonly string[] }) {
  const { file } = useCaseView()
  const made = sheetOfCase(file)
  const loss = lossSoFar(file.theCase, ids, bloodInSwabs)
  if (made.kind === 'sheet') return <Lost loss={loss} sheet={made.sheet} />
  return <>{loss.sum ? saySpan(loss.sum) : nowInEnglish.lostNone}</>
}

/** The last measured one that nobody marked as an artefact; how old it is stands beside it. */
function sayTemperature({ id }: OperationOnFile, { theCase, clinic }: File, now: string): string {
  const last = linesAbout(theCase, 'observation', id)
    .flatMap((line) => line.body.values.map((one) => ({ ...one, at: line.at })))
    .filter(({ what, artefact, at }) => what === 'temperature' && !artefact && at <= now)
    .at(-1)
  if (!last) return words.unknown
  return fill(words.temperatureSaid, {
    value: sayAmount(fromStored(last.value)),
    at: clockOf(last.at, clinic.zone),
    minutes: String(Math.floor(minutesBetween(last, { at: now }))),
  })
}

function sayHours({ id }: OperationOnFile, { theCase }: File, now: string): string {
  const start = doneAt(theCase, id, 'anaesthesia-start')
  if (start === null) return words.unknown
  const minutes = Math.floor(minutesBetween({ at: start }, { at: now }))
  return fill(words.hoursSaid, { hours: String(Math.floor(minutes / 60)), minutes: String(minutes % 60) })
}

function sayNerve({ id, procedure }: OperationOnFile, { theCase }: File): string {
  const checkpoint = procedureNamed(procedure, procedures).checkpoints.find((one) => one.id.endsWith('-facial-nerve'))
  const stamp = linesAbout(theCase, 'theatre-stamp', id).findLast(({ body }) => body.checkpoint === checkpoint?.id)
  return checkpoint && stamp ? stampSentences(checkpoint, stamp.body).join(' ') : words.unknown
}

function sayLocal(file: File, now: string): string {
  const room = localRoomOf(file, now, knowledgeOf(file))
  if (!room) return words.localUnknown
  const percent = plain(room.taken.times(100).toDecimalPlaces(0, Decimal.ROUND_UP))
  return [fill(words.localSaid, { percent }), ...(room.uncounted ? [words.localUncounted] : [])].join(' ')
}
