import { useMemo } from 'react'
import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { wardInEnglish as words } from '#content/wording/app-ward.ts'
import { fill } from '#core/outcome/finding.ts'
import { dueInWard } from '#core/ward/due-list.ts'
import { Caution } from '../../design/caution.tsx'
import { ListsBehind } from '../../design/lists-behind.tsx'
import { Notice } from '../../design/notice.tsx'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { lists, useCases, useLists } from '../../journal/cases.ts'
import type { Lists } from '../../journal/database.ts'
import { outbox } from '../../journal/outbox.ts'
import { useSignal } from '../../journal/signal.ts'
import { useServerNow } from '../../journal/use-server-now.ts'
import { useWho } from '../../session/use-who.ts'
import { wardPageHref, writeHref } from '../case/case-hrefs.ts'
import type { WardDue } from './due-line.tsx'
import { DueList } from './due-list.tsx'
import styles from './ward.module.css'
import { type InWard, inWardOf, silentSince, wardStreams } from './ward-of.ts'

/** Everything that is due for the animals in the ward, by lateness; worked out on this device, with what it wrote itself. */
export function WardScreen() {
  const reading = useLists()
  return (
    <Page title={words.title} lead={words.lead} wide>
      <ReadingView reading={reading} again={() => void lists.refresh()}>
        {(known) => <Ward known={known} />}
      </ReadingView>
    </Page>
  )
}

function Ward({ known }: { readonly known: Lists }) {
  const waiting = useSignal(outbox)
  const now = useServerNow(20_000)
  const { pen, clinic } = useWho()
  const streams = useMemo(() => wardStreams(known.owed, waiting), [known.owed, waiting])
  const cases = useCases(streams)
  const { animals, missing } = useMemo(() => {
    const open = [...cases].map(([stream, reading]) => ({
      stream,
      one: reading.kind === 'read' ? inWardOf(reading.value.file) : null,
      isRead: reading.kind === 'read',
    }))
    return {
      animals: open.flatMap(({ one }) => one ?? []),
      missing: open.filter(({ isRead }) => !isRead).map(({ stream }) => stream),
    }
  }, [cases])
  const names = new Map(known.cases.map(({ stream, name }) => [stream, name]))
  const dues: WardDue[] = dueInWard(
    // Of an animal that may have gone home days ago one question is asked instead of a dozen late rounds.
    animals
      .filter((animal) => silentSince(animal, now) === null)
      .flatMap((animal) => animal.owed.map((item) => ({ ...item, animal }))),
    now,
  ).map((due) => ({ due, file: due.item.animal.file, place: placeOf(due.item.animal), name: nameOf(due.item.animal) }))
  return (
    <>
      <p className={styles.printed}>{fill(words.printed, { clinic: clinic.row.name, when: sayWhen(now, pen.zone) })}</p>
      <ListsBehind remaking={known.remaking} />
      {missing.length > 0 && (
        <Notice title={words.notHere}>
          <p>{missing.map((stream) => names.get(stream) ?? stream).join(', ')}</p>
        </Notice>
      )}
      {animals.length === 0 && missing.length === 0 ? (
        <div className="stack">
          <p role="status">{words.none}</p>
          <p>
            <Link href="/theatre">{words.theatre}</Link>
          </p>
        </div>
      ) : (
        <>
          <Animals animals={animals} now={now} />
          <DueList dues={dues} now={now} named />
          <Caution />
        </>
      )}
    </>
  )
}

/** Who lies here, and of whom nothing was heard for days. */
function Animals({ animals, now }: { readonly animals: readonly InWard[]; readonly now: string }) {
  const { pen } = useWho()
  return (
    <>
      <ul className={`bare ${styles.animals}`} aria-label={words.title}>
        {animals.map((one) => (
          <li key={one.file.stream}>
            <Link href={wardPageHref(placeOf(one))} data-weight="side">
              {fill(words.oneAnimal, { name: nameOf(one) })}
            </Link>
          </li>
        ))}
      </ul>
      {animals.map((one) => {
        const last = silentSince(one, now)
        if (last === null) return null
        return (
          <Notice
            key={one.file.stream}
            tone="warn"
            title={fill(words.silent, { name: nameOf(one), when: sayWhen(last, pen.zone) })}
          >
            <p>
              <Link href={writeHref(placeOf(one), 'discharge')}>{words.writeDischarge}</Link>
            </p>
            <p>{words.silentHelp}</p>
          </Notice>
        )
      })}
    </>
  )
}

function placeOf({ file }: InWard): string {
  return file.stream.replace(/^case:/, '')
}

function nameOf({ file }: InWard): string {
  return file.theCase.latest('identity')?.body.name ?? caseInEnglish.untitled
}
