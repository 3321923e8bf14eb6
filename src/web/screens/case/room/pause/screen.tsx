import { useEffect, useRef, useState } from 'react'
import { Link, useParams, useSearchParams } from 'wouter'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { pauseInEnglish as words } from '#content/wording/app-pause.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { besides, type PauseRun, pauseRunOf, whoLast } from '#core/theatre/pause-run.ts'
import { pausesOf, type SpokenPause } from '#core/theatre/spoken-pause.ts'
import { Page } from '../../../../design/page.tsx'
import { useWho } from '../../../../session/use-who.ts'
import { pauseHref, roomHref } from '../../case-hrefs.ts'
import { CaseLine } from '../../case-line.tsx'
import { useCaseView } from '../../case-view.ts'
import { MayNotWrite } from '../../may-correct.tsx'
import { useOperationHere } from '../../use-operation-here.ts'
import { WithCase } from '../../with-case.tsx'
import { useAwake } from '../use-awake.ts'
import { useTheatreTheme } from '../use-theatre-theme.ts'
import { EndPart } from './end-part.tsx'
import { FirstEarPart } from './first-ear-part.tsx'
import { ItemPart } from './item-part.tsx'
import styles from './pause.module.css'
import { StartPart } from './start-part.tsx'
import type { PauseWho } from './who-part.tsx'

/** One of the three spoken pauses: one item to a screen, who leads, who answers, and a summary at the end. */
export default function PauseScreen() {
  return (
    <WithCase>
      <PausePage />
    </WithCase>
  )
}

function PausePage() {
  const { wanted, operation, subject } = useOperationHere()
  const { pause: named } = useParams()
  const { operations, file, id } = useCaseView()
  const { me } = useWho()
  const pair = operation ? oneAnaesthetic(operation, operations, file.theCase) : null
  const pause = pausesOf(wanted, pair, spokenPauses).find((one) => one.pause === named)
  useTheatreTheme()
  return (
    <Page title={pause ? words.titles[pause.pause] : words.noPause} whose={<CaseLine about={subject} />} wide>
      {operation && pause && <Pause key={`${me.id} ${pause.pause}`} operation={operation} pause={pause} />}
      {!operation && <p>{roomInEnglish.noOperation}</p>}
      <p>
        <Link href={roomHref(id, wanted)}>{words.toRoom}</Link>
      </p>
    </Page>
  )
}

/** Pauses before which everybody looks at what is on record. */
const beginsWithRecord: ReadonlySet<string> = new Set(['before-anaesthesia', 'before-second-ear'])

/** Where a pause is opened: at what is on record, at its first open item, or at the summary when it is whole. */
function firstStep({ pause, items, open }: PauseRun): string {
  if (beginsWithRecord.has(pause) && open.length === items.length) return 'start'
  return open[0]?.id ?? 'end'
}

function Pause({ operation, pause }: { readonly operation: OperationOnFile; readonly pause: SpokenPause }) {
  const { file, id } = useCaseView()
  const { me } = useWho()
  useAwake()
  const [query] = useSearchParams()
  const run = pauseRunOf(file.theCase, operation.id, pause)
  // An answer never turns the page by itself: a second tap of the same finger would answer what nobody read aloud.
  const [opened] = useState(() => firstStep(run))
  const [chosen, setChosen] = useState<PauseWho | null>(null)
  const who = chosen ?? whoLast(run, me.id)
  const at = query.get('at') ?? opened
  const item = run.items.find((one) => one.id === at)
  const writers = writersOf('pause-item')
  const mayWrite = writers.includes(me.role)
  const heading = useRef<HTMLHeadingElement>(null)
  // Another step begins at its top, for the eye and for whoever listens: what is not settled stands there.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the step that moves the page.
  useEffect(() => {
    scrollTo(0, 0)
    heading.current?.focus({ preventScroll: true })
  }, [at])
  const hrefOf = (step: string) => `${pauseHref(id, operation.id, pause.pause)}?at=${encodeURIComponent(step)}`
  const Start = pause.pause === 'before-second-ear' ? FirstEarPart : StartPart
  return (
    <>
      {!mayWrite && <MayNotWrite kind="pause-item" />}
      {at === 'start' && <Start operation={operation} heading={heading} />}
      {item && (
        <ItemPart
          key={item.id}
          item={item}
          run={run}
          operation={operation}
          mayWrite={mayWrite}
          who={who}
          onWho={setChosen}
          heading={heading}
        />
      )}
      {at !== 'start' && !item && <EndPart run={run} operation={operation} hrefOf={hrefOf} heading={heading} />}
      <Steps run={run} at={item?.id ?? (at === 'start' ? 'start' : 'end')} hrefOf={hrefOf} />
    </>
  )
}

/** Back and on; the way on is the heavy one. */
function Steps(props: { readonly run: PauseRun; readonly at: string; readonly hrefOf: (step: string) => string }) {
  const { run, at, hrefOf } = props
  const first = run.items[0]?.id ?? 'end'
  const { back, next } = besides(run.items, at)
  const start = beginsWithRecord.has(run.pause) ? 'start' : null
  const before = at === 'end' ? (run.items.at(-1)?.id ?? null) : at === 'start' ? null : (back ?? start)
  const after = at === 'end' ? null : at === 'start' ? first : (next ?? 'end')
  return (
    <nav aria-label={words.links} className={styles.steps} data-screen-only>
      {before !== null && <Link href={hrefOf(before)}>{before === 'start' ? words.toStart : words.back}</Link>}
      {after !== null && (
        <Link href={hrefOf(after)} className={styles.on}>
          {at === 'start' ? words.begin : after === 'end' ? words.toEnd : words.next}
        </Link>
      )}
      {at !== 'end' && after !== 'end' && at !== 'start' && <Link href={hrefOf('end')}>{words.toEnd}</Link>}
    </nav>
  )
}
