import { type ReactNode, useMemo } from 'react'
import { Link } from 'wouter'
import { provenanceInEnglish } from '#content/wording/app-provenance.ts'
import { sourcesInEnglish as words } from '#content/wording/app-sources.ts'
import { factsIn } from '#core/evidence/facts-in.ts'
import type { SourceId } from '#core/evidence/sourced.ts'
import { fill } from '#core/outcome/finding.ts'
import { Caution } from '../../design/caution.tsx'
import { CitedNumbers } from '../../design/cited.ts'
import { Crumbs } from '../../design/crumbs.tsx'
import { Page } from '../../design/page.tsx'
import styles from './frame.module.css'
import { hrefOf, sourceNamed } from './library.ts'

const home = ['/sources', words.title] as const
type Part = keyof typeof words.parts

/** A page of the sources: the way back, its title, its facts, the list of what they rest on, and the caution. */
export function SourcesPage(props: {
  readonly title: string
  readonly lead?: ReactNode
  /** The part the page belongs to; absent for the first page of all. */
  readonly part?: Part
  /** True for the list of a part itself. */
  readonly isList?: boolean
  /** What is shown, to number and list what it cites. */
  readonly cites?: unknown
  readonly children: ReactNode
}) {
  const { title, lead, part, isList = false, cites, children } = props
  const cited = useMemo(() => citedInOrder(cites), [cites])
  const numbers = useMemo(() => new Map(cited.map((id, index) => [id, index + 1])), [cited])
  return (
    <CitedNumbers value={numbers}>
      {part && (
        <Crumbs label={words.crumbs} steps={isList ? [home] : [home, [`/sources/${part}`, words.parts[part].title]]} />
      )}
      <Page title={title} lead={lead} wide>
        {children}
        {cited.length > 0 && <SourceList ids={cited} />}
        <Caution />
      </Page>
    </CitedNumbers>
  )
}

/** In the order in which a reader meets them. */
function citedInOrder(cites: unknown): readonly SourceId[] {
  return [...new Set(factsIn(cites).flatMap(({ fact }) => fact.sources))]
}

function SourceList({ ids }: { readonly ids: readonly SourceId[] }) {
  return (
    <section aria-labelledby="cited" className={styles.cited}>
      <h2 id="cited">{words.onThisPage}</h2>
      <ol>
        {ids.map((id) => {
          const source = sourceNamed(id)
          return (
            <li key={id}>
              <Link href={hrefOf('reference', id)}>{source?.citation ?? id}</Link>
              {source?.seenAt && (
                <span className="soft"> {fill(provenanceInEnglish.seenAt, { place: source.seenAt })}</span>
              )}
            </li>
          )
        })}
      </ol>
    </section>
  )
}

/** An address of a page that the content does not hold. */
export function NoSuchPage({ part }: { readonly part: Part }) {
  return (
    <SourcesPage title={words.parts[part].title} part={part}>
      <p>{words.noSuch}</p>
      <p>
        <Link href={`/sources/${part}`}>{words.parts[part].title}</Link>
      </p>
    </SourcesPage>
  )
}
