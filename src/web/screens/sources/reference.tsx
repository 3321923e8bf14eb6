import { Link, useParams } from 'wouter'
import { provenanceInEnglish } from '#content/wording/app-provenance.ts'
import { protocolPage, sourcesInEnglish, referencePage as words } from '#content/wording/app-sources.ts'
import type { Source } from '#core/evidence/sourced.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import styles from './drug.module.css'
import { FactTable, linesOf } from './facts.tsx'
import { NoSuchPage, SourcesPage } from './frame.tsx'
import { citing, type Entry, sourceNamed } from './library.ts'

/** One publication, and every fact that rests on it. */
export function ReferenceScreen() {
  const { id = '' } = useParams<{ id: string }>()
  const source = sourceNamed(id)
  return source ? <ReferencePage source={source} /> : <NoSuchPage part="reference" />
}

export function ReferencePage({ source }: { readonly source: Source }) {
  const uses = citing(source.id)
  return (
    <SourcesPage title={source.citation} part="reference" lead={<About source={source} />}>
      <section aria-labelledby="used" className={styles.species}>
        <h2 id="used">{sourcesInEnglish.usedIn}</h2>
        {uses.length === 0 && <p>{sourcesInEnglish.usedNowhere}</p>}
        {uses.map((one) => (
          <Use key={one.href} entry={one} source={source} />
        ))}
      </section>
    </SourcesPage>
  )
}

function About({ source }: { readonly source: Source }) {
  return (
    <dl className={styles.about}>
      <dt>{words.kind}</dt>
      <dd>{provenanceInEnglish.longStrength[source.strength]}</dd>
      <dt>{words.seenAt}</dt>
      <dd>{source.seenAt ?? words.notRecorded}</dd>
    </dl>
  )
}

function Use({ entry, source }: { readonly entry: Entry; readonly source: Source }) {
  const lines = linesOf(entry.value, protocolPage.restsOn).filter(({ fact }) =>
    [fact].flat().some(({ sources }) => sources.includes(source.id)),
  )
  const count = sayCount(words.factCount, lines.length)
  return (
    <article className={styles.row}>
      <h3>
        {sourcesInEnglish.parts[entry.part].title}: <Link href={entry.href}>{entry.title}</Link>
      </h3>
      <details open={lines.length <= 8}>
        <summary className={styles.facts}>{count}</summary>
        <FactTable caption={words.facts} lines={lines} />
      </details>
    </article>
  )
}
