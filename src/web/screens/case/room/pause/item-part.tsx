import { type RefObject, useState } from 'react'
import { Link } from 'wouter'
import { pauseInEnglish as words } from '#content/wording/app-pause.ts'
import { isAboutSide } from '#core/chapters/side-sources.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { ItemToSay, PauseRun } from '#core/theatre/pause-run.ts'
import { Provenance } from '../../../../design/provenance.tsx'
import { conflictHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import { SidesPart } from '../../sides-part.tsx'
import { ReasonPart } from '../reason-part.tsx'
import room from '../room.module.css'
import { Answered } from './answered-part.tsx'
import { ChangePart } from './change-part.tsx'
import styles from './pause.module.css'
import { usePausing } from './use-pausing.ts'
import { type PauseWho, WhoPart } from './who-part.tsx'

/** One item fills the screen: the statement, why it is asked, three answers; what was answered stands there instead. */
export function ItemPart(props: {
  readonly item: ItemToSay
  readonly run: PauseRun
  readonly operation: OperationOnFile
  readonly mayWrite: boolean
  readonly who: PauseWho
  readonly onWho: (who: PauseWho) => void
  readonly heading: RefObject<HTMLHeadingElement | null>
}) {
  const { item, run, operation, mayWrite, who, onWho, heading } = props
  const { id, sides } = useCaseView()
  const { say } = usePausing(operation)
  const [open, setOpen] = useState<'no' | 'unknown' | 'change' | null>(null)
  const [tries, setTries] = useState(0)
  // Nobody is chosen yet: that comes before the item.
  const [asksWho] = useState(who.spokenBy === null)
  const [only, second] = item.answers
  const close = () => setOpen(null)
  // Nobody says yes to a side while its sources disagree; a NO of this pause itself is no source of another side.
  const stopped =
    isAboutSide(item.id) &&
    sides.disagreements.some((one) => one.operation === operation.id && one.LEFT.length > 0 && one.RIGHT.length > 0)
  const keep = async (answer: 'yes' | 'no' | 'unknown', because: string | null): Promise<boolean> => {
    const { spokenBy, ledBy } = who
    setTries(tries + 1)
    if (spokenBy === null) return false
    await say({ pause: run.pause, item: item.id, answer, because, spokenBy, ledBy })
    heading.current?.focus({ preventScroll: true })
    return true
  }
  const people = mayWrite && <WhoPart key={String(only === undefined)} who={who} tries={tries} onWho={onWho} />
  return (
    <>
      {asksWho && people}
      <section className={styles.item} aria-labelledby="pause-item">
        <p className={styles.place}>
          {fill(words.place, { number: String(run.items.indexOf(item) + 1), all: String(run.items.length) })}
        </p>
        <h2 id="pause-item" ref={heading} tabIndex={-1} className={styles.states}>
          {item.asked?.states ?? item.id}
        </h2>
        <div className={styles.because}>
          {item.asked ? (
            <>
              <p>{fill(words.why, { because: item.asked.because.value })}</p>
              <Provenance fact={item.asked.because} />
            </>
          ) : (
            <p>{words.ownWords}</p>
          )}
        </div>
        <div role="status" className="stack">
          {item.answers.map((answer) => (
            <Answered key={answer.header.id} answer={answer} />
          ))}
        </div>
        {second && only && (
          <p className={room.stop}>
            {words.end.two} <Link href={conflictHref(id, only.header.id)}>{words.end.settle}</Link>
          </p>
        )}
        {stopped && !only && (
          <>
            <p className={room.stop}>{words.sideStops}</p>
            <SidesPart of={operation.id} />
          </>
        )}
        {mayWrite && !only && (
          <div className={styles.answers} data-screen-only>
            {!stopped && (
              <button type="button" onClick={() => void keep('yes', null)}>
                {words.answers.yes}
              </button>
            )}
            {(['no', 'unknown'] as const).map((answer) => (
              <button key={answer} type="button" aria-expanded={open === answer} onClick={() => setOpen(answer)}>
                {words.answers[answer]}
              </button>
            ))}
          </div>
        )}
        {!only && (open === 'no' || open === 'unknown') && (
          <ReasonPart
            words={{
              label: words.whyNot[open],
              missing: words.whyNotMissing,
              keep: words.keepNot[open],
              close: words.close,
            }}
            place={`pause ${operation.id} ${run.pause} ${item.id}`}
            onKeep={(because) => keep(open, because)}
            onClose={close}
          />
        )}
        {mayWrite && only && !second && open !== 'change' && (
          <p data-screen-only>
            <button type="button" data-weight="quiet" onClick={() => setOpen('change')}>
              {words.change}
            </button>
          </p>
        )}
        {only && open === 'change' && (
          <ChangePart answer={only} operation={operation} who={who} mayBeYes={!stopped} onClose={close} />
        )}
      </section>
      {!asksWho && people}
    </>
  )
}
