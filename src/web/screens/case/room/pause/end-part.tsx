import type { RefObject } from 'react'
import { Link } from 'wouter'
import { pauseInEnglish } from '#content/wording/app-pause.ts'
import { sidesInEnglish } from '#content/wording/app-sides.ts'
import { personNamed } from '#core/journal/clinic.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { ItemToSay, PauseRun } from '#core/theatre/pause-run.ts'
import { Notice } from '../../../../design/notice.tsx'
import { casePageHref, conflictHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import room from '../room.module.css'
import { SignOutPart } from '../sign-out/sign-out-part.tsx'
import { Answered } from './answered-part.tsx'
import styles from './pause.module.css'
import { saySpan } from './say-span.ts'

const words = pauseInEnglish.end

/** The whole pause: what is not settled and what settles it, how long it lasted, every item with its answer. */
export function EndPart(props: {
  readonly run: PauseRun
  readonly operation: OperationOnFile
  readonly hrefOf: (item: string) => string
  readonly heading: RefObject<HTMLHeadingElement | null>
}) {
  const { run, operation, hrefOf, heading } = props
  const { file } = useCaseView()
  const answers = run.items.flatMap((item) => item.answers)
  const names = (ids: readonly (string | null)[]) =>
    [...new Set(ids)].map((id) => (id === null ? pauseInEnglish.notSaid : personNamed(file, id))).join(', ')
  return (
    <section aria-labelledby="pause-end" className="stack">
      <h2 id="pause-end" ref={heading} tabIndex={-1} className={styles.title}>
        {words.title}
      </h2>
      <Stops run={run} operation={operation} hrefOf={hrefOf} />
      {run.open.length > 0 && (
        <Notice title={sayCount(words.openTitle, run.open.length)}>
          <ul>
            {run.open.map((item) => (
              <li key={item.id}>
                <Link href={hrefOf(item.id)}>{stated(item)}</Link>
              </li>
            ))}
          </ul>
        </Notice>
      )}
      {run.open.length === 0 && run.unsettled.length === 0 && <p className={room.stamped}>{words.whole}</p>}
      <dl className={styles.facts}>
        <div>
          <dt>{words.lasted}</dt>
          <dd>{run.span ? saySpan(run.span) : pauseInEnglish.noSpan}</dd>
        </div>
        {answers.length > 0 && (
          <>
            <div>
              <dt>{words.led}</dt>
              <dd>{names(answers.map(({ body }) => body.ledBy))}</dd>
            </div>
            <div>
              <dt>{words.spoke}</dt>
              <dd>{names(answers.map(({ body }) => body.spokenBy))}</dd>
            </div>
          </>
        )}
      </dl>
      {run.pause === 'before-leaving' && <SignOutPart operation={operation} />}
      <h3>{words.items}</h3>
      <ol className={styles.list}>
        {run.items.map((item) => (
          <li key={item.id}>
            <Link href={hrefOf(item.id)} className={styles.statedLink}>
              {stated(item)}
            </Link>
            {item.answers.length === 0 && <p className={room.stop}>{words.open}</p>}
            {item.answers.map((answer) => (
              <Answered key={answer.header.id} answer={answer} />
            ))}
          </li>
        ))}
      </ol>
    </section>
  )
}

function stated({ asked, id }: ItemToSay): string {
  return asked?.states ?? id
}

/** What must be settled before going on, and what settles it; what was said could be written down all the same. */
function Stops({ run, operation, hrefOf }: Omit<Parameters<typeof EndPart>[0], 'heading'>) {
  const { id, sides } = useCaseView()
  const disagreement = sides.disagreements.find((one) => one.operation === operation.id)
  if (!disagreement && run.unsettled.length === 0) return null
  return (
    <Notice tone="warn" title={words.stops[run.pause]}>
      {disagreement && (
        <p>
          {words.sides} <strong>{sidesInEnglish.settle[disagreement.level]}</strong>{' '}
          <Link href={`${casePageHref(id)}#sides`}>{words.sidesLink}</Link>
        </p>
      )}
      {run.unsettled.length > 0 && (
        <>
          <ul>
            {run.unsettled.map((item) => (
              <li key={item.id}>
                <Link href={hrefOf(item.id)}>{stated(item)}</Link>: <Unsettled item={item} />
              </li>
            ))}
          </ul>
          <p>{words.settles}</p>
        </>
      )}
    </Notice>
  )
}

function Unsettled({ item: { answers } }: { readonly item: ItemToSay }) {
  const { id } = useCaseView()
  const [first, second] = answers
  if (!first) return null
  if (second) {
    return (
      <>
        <strong>{words.two}</strong> <Link href={conflictHref(id, first.header.id)}>{words.settle}</Link>
      </>
    )
  }
  const { answer, because } = first.body
  return (
    <>
      <strong>{pauseInEnglish.answers[answer]}</strong>
      {because !== null && `. ${because}`}
    </>
  )
}
