import { Link } from 'wouter'
import { breakpointsInEnglish as words } from '#content/wording/app-breakpoints.ts'
import { sourcesInEnglish } from '#content/wording/app-sources.ts'
import type { Edition } from '#core/culture/breakpoint.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { ownEditions } from '#core/culture/house-facts.ts'
import { ColumnHeads } from '../../design/column-heads.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import drugStyles from './drug.module.css'
import { SourcesPage } from './frame.tsx'
import { allEditions, hrefOf } from './library.ts'
import styles from './lists.module.css'
import { SecondHand } from './second-hand.tsx'

const { breakpoints } = sourcesInEnglish.parts

/** Every edition of breakpoints that is held, and that all of them are second-hand. */
export function BreakpointsScreen() {
  return (
    <SourcesPage title={breakpoints.title} lead={breakpoints.lead} part="breakpoints" isList>
      <SecondHand />
      <p>{words.never}</p>
      <Editions editions={allEditions} />
      <OwnCopies />
    </SourcesPage>
  )
}

/** What this clinic loaded itself, copies that were replaced among them. */
function OwnCopies() {
  const reading = useHouse()
  return (
    <section aria-labelledby="own-copies" className={drugStyles.species}>
      <h2 id="own-copies">{words.ownTitle}</h2>
      <p data-screen-only>
        <Link href="/settings/breakpoints">{words.ownChange}</Link>
      </p>
      <ReadingView reading={reading}>
        {({ file }) => {
          const own = ownEditions(file)
          return own.length === 0 ? <p>{words.noOwn}</p> : <Editions editions={own} />
        }}
      </ReadingView>
    </section>
  )
}

function Editions({ editions }: { readonly editions: readonly Edition[] }) {
  return (
    <table className={styles.list}>
      <ColumnHeads of={Object.values(words.list)} />
      <tbody>
        {editions.map((edition) => (
          <tr key={edition.id}>
            <th scope="row">
              <Link href={hrefOf('breakpoints', edition.id)}>{editionName(edition)}</Link>
            </th>
            <td data-head={words.list.of}>{words.audiences[edition.audience]}</td>
            <td data-head={words.list.rows}>{edition.rows.length}</td>
            <td data-head={words.list.state}>{stateOf(edition)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Whether it is in force; wild-type limits and proposals never are. */
function stateOf({ current, rows }: Edition): string {
  if (rows.every(({ kind }) => kind === 'proposal' || kind === 'wild-type-limit' || kind === 'none'))
    return words.notInForce
  return current ? words.current : words.former
}
