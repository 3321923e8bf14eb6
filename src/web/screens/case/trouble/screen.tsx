import { useMemo } from 'react'
import { Link } from 'wouter'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { troubleScreenInEnglish as words } from '#content/wording/app-trouble.ts'
import type { Side } from '#core/animal/species.ts'
import { troublesOf } from '#core/complications/troubles-of.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { Caution } from '../../../design/caution.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, entryHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { WithCase } from '../with-case.tsx'
import { DefinitionsDiffer } from './definitions-differ.tsx'
import styles from './trouble.module.css'
import { TroublePart } from './trouble-part.tsx'

/** What went wrong in or after the operations of one animal, with the grade of every published scheme. */
export default function TroubleScreen() {
  return (
    <WithCase>
      <TroublePage />
    </WithCase>
  )
}

function TroublePage() {
  const { file, id, operations } = useCaseView()
  const { troubles, unplaced } = useMemo(() => troublesOf(file, ownCounting), [file])
  const done = operations.filter(({ done }) => done !== null)
  return (
    <Page title={words.title} lead={words.lead} whose={<CaseLine />}>
      {unplaced.map(({ header }) => (
        <Notice key={header.id} tone="warn">
          <p>
            {words.unplaced} <Link href={entryHref(id, header.id)}>{words.open}</Link>
          </p>
        </Notice>
      ))}
      {done.length === 0 ? (
        <p role="status">{words.notOperated}</p>
      ) : (
        <>
          {troubles.length === 0 && <p role="status">{words.none}</p>}
          <div className={styles.troubles}>
            {troubles.map((trouble) => {
              const operation = done.find((one) => one.id === trouble.operation)
              return operation ? <TroublePart key={trouble.id} trouble={trouble} operation={operation} /> : null
            })}
          </div>
          <WriteLinks sides={[...new Set(done.map(({ side }) => side))]} />
        </>
      )}
      <DefinitionsDiffer said={words.differs} />
      <Caution />
      <p data-screen-only>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function WriteLinks({ sides }: { readonly sides: readonly Side[] }) {
  const { id, operations } = useCaseView()
  const { me } = useWho()
  if (!writersOf('complication').includes(me.role)) return <p className="soft">{words.mayNot}</p>
  // The last operation of that ear is the one that trouble of today most likely follows; the form shows it to be changed.
  const last = (side: Side | null) =>
    operations.findLast((one) => one.done !== null && (side === null || one.side === side))?.id
  const answers = (side: Side | null) => {
    const operation = last(side)
    return operation === undefined ? {} : { answers: { operation } }
  }
  return (
    <ul className="bare" data-screen-only>
      {sides.map((side) => (
        <li key={side}>
          <Link
            className={styles.write}
            href={writeHref(id, 'complication', { subject: { kind: 'ear', animal: '', side }, ...answers(side) })}
          >
            {fill(words.write, { side })}
          </Link>
        </li>
      ))}
      <li>
        <Link
          className={styles.write}
          href={writeHref(id, 'complication', { subject: { kind: 'animal', animal: '' }, ...answers(null) })}
        >
          {words.writeAnimal}
        </Link>
      </li>
    </ul>
  )
}
