import { useState } from 'react'
import { Link } from 'wouter'
import { paperSheetInEnglish } from '#content/wording/app-paper-sheet.ts'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { sides } from '#core/animal/species.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { stampSentences } from '#core/procedures/stamp-sentences.ts'
import { type GateCode, sayMark } from '#core/theatre/stamp-gates.ts'
import type { Stamp, ToStamp } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { conflictHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { AnswersPart } from './answers-part.tsx'
import { GatePart, useTapWaiting } from './gate-part.tsx'
import { ReasonPart } from './reason-part.tsx'
import styles from './room.module.css'
import { SampleHint } from './specimens/sample-hint.tsx'
import { useStamping } from './use-stamping.ts'

/** Where the way to the first point that nobody stamped ends. */
export const firstOpenPlace = 'first-open'

/** What one thing to be stamped is called. */
export function titleOf({ mark, checkpoint, id }: ToStamp): string {
  if (mark !== null) return reportInEnglish.clockMarks[mark]
  return checkpoint?.title ?? id
}

/** One checkpoint or mark: what to mind, one tap to stamp it, and what was stamped. */
export function StampRow(props: {
  readonly item: ToStamp
  readonly operation: OperationOnFile
  /** The first one that nobody stamped yet: its button is the largest. */
  readonly isNext: boolean
  readonly mayStamp: boolean
  /** What stands open before it: then a tap waits for its reason. */
  readonly gates: readonly GateCode[]
}) {
  const { item, operation, isNext, mayStamp, gates } = props
  const [open, setOpen] = useState<'not-done' | 'answers' | null>(null)
  const waiting = useTapWaiting(operation.id, item.id)
  const { stamp, takeBack } = useStamping(operation)
  const { id } = useCaseView()
  const what = titleOf(item)
  const [only, second] = item.stamps
  const close = () => setOpen(null)
  return (
    <li
      id={isNext ? firstOpenPlace : undefined}
      className={styles.row}
      data-next={isNext}
      data-stamped={only !== undefined}
    >
      <div>
        <h2 className={styles.what}>{what}</h2>
        {item.checkpoint && !only && <p className={styles.mind}>{fill(words.mind, { words: item.checkpoint.mind })}</p>}
        {item.stamps.map((one) => (
          <Stamped key={one.header.id} stamp={one} item={item} />
        ))}
        {item.id.endsWith('-sample') && <SampleHint operation={operation} />}
        {second && only && (
          <p className={styles.stop}>
            {words.two} <Link href={conflictHref(id, only.header.id)}>{words.settle}</Link>
          </p>
        )}
      </div>
      {mayStamp && (
        <div className={styles.acts} data-screen-only>
          {!only && (
            <>
              {item.mark === 'skin-mark' ? (
                sides.map((side) => (
                  <button key={side} type="button" onClick={() => void stamp(item.id, { detail: { side } })}>
                    {words.mark[side]}
                  </button>
                ))
              ) : (
                <button
                  type="button"
                  data-weight={isNext ? 'main' : undefined}
                  aria-label={fill(words.doneSaid, { what })}
                  onClick={() => void (gates.length > 0 ? waiting.tap() : stamp(item.id))}
                >
                  {words.done}
                </button>
              )}
              <button
                type="button"
                data-weight="quiet"
                aria-label={fill(words.notDoneSaid, { what })}
                onClick={() => setOpen('not-done')}
              >
                {words.notDone}
              </button>
            </>
          )}
          {only && !second && (
            <>
              {item.checkpoint && only.body.answer === 'done' && (
                <button type="button" aria-label={fill(words.answersSaid, { what })} onClick={() => setOpen('answers')}>
                  {words.answers}
                </button>
              )}
              <button
                type="button"
                data-weight="quiet"
                aria-label={fill(words.takeBackSaid, { what })}
                onClick={() => void takeBack(only)}
              >
                {words.taken}
              </button>
            </>
          )}
        </div>
      )}
      {waiting.at !== null && !only && mayStamp && (
        <GatePart at={waiting.at} gates={gates} item={item} operation={operation} onClose={waiting.clear} />
      )}
      {open === 'not-done' && !only && (
        <ReasonPart
          place={`not-done ${operation.id} ${item.id}`}
          words={{
            label: words.because,
            missing: words.becauseMissing,
            keep: words.keepNotDone,
            close: words.close,
          }}
          onKeep={async (text) => {
            await stamp(item.id, { answer: 'not-done', text })
            return true
          }}
          onClose={close}
        />
      )}
      {open === 'answers' && only && item.checkpoint && (
        <AnswersPart stamp={only} checkpoint={item.checkpoint} operation={operation} onClose={close} />
      )}
    </li>
  )
}

/** When, by whom, whether it is sent yet, and what was answered. */
function Stamped({ stamp, item }: { readonly stamp: Stamp; readonly item: ToStamp }) {
  const { file, unsent } = useCaseView()
  const { header, body, at } = stamp
  const about = { at: clockOf(at, header.happenedAt.zone), who: authorNamed(file, header.author) }
  const said = item.checkpoint ? stampSentences(item.checkpoint, body) : sayMark(body, reportInEnglish)
  const waits = unsent.has(header.id)
  return (
    <>
      <p className={styles.stamped}>
        <strong>{fill(words.stampedAt, about)}</strong>{' '}
        <span className={styles.kept} data-waits={waits}>
          {waits ? words.here : words.sent}
        </span>
        {header.reason === paperSheetInEnglish.fromPaper && <span className="soft"> {header.reason}</span>}
      </p>
      <p>
        {body.answer === 'not-done' && <strong>{words.isNotDone} </strong>}
        {said.join(' ')}
      </p>
    </>
  )
}
