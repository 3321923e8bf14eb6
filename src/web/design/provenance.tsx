import { useContext, useState } from 'react'
import { Link } from 'wouter'
import { sources } from '#content/sources/index.ts'
import { provenanceInEnglish as words } from '#content/wording/app-provenance.ts'
import type { Provenance as Fact, Source } from '#core/evidence/sourced.ts'
import { fill } from '#core/outcome/finding.ts'
import { CitedNumbers } from './cited.ts'
import styles from './provenance.module.css'
import { sayDay } from './say-when.ts'

const library: ReadonlyMap<string, Source> = new Map(sources.map((source) => [source.id, source]))

/**
 * How a number is known: a short mark in words beside it, all of it when opened.
 *
 * @example <Provenance fact={row.range} />
 */
export function Provenance({ fact }: { readonly fact: Fact }) {
  const [open, setOpen] = useState(false)
  const numbers = useContext(CitedNumbers)
  const cited = fact.sources.map((id) => numbers.get(id)).filter((number) => number !== undefined)
  return (
    <details className={styles.provenance} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="said">{words.said}</span>
        {sayMark(fact)}
        {cited.length > 0 && <span className={styles.numbers}> [{cited.join(', ')}]</span>}
      </summary>
      {open && <ProvenanceText fact={fact} />}
    </details>
  )
}

/** The whole of it: who says so, where to look, how we know it, how good the source is, when it was compared. */
export function ProvenanceText({ fact }: { readonly fact: Fact }) {
  const { heads } = words
  return (
    <dl className={styles.text}>
      <dt>{heads.source}</dt>
      {fact.sources.map((id) => (
        <dd key={id}>
          <Link href={`/sources/reference/${encodeURIComponent(id)}`}>{library.get(id)?.citation ?? id}</Link>
          {library.get(id)?.seenAt && (
            <span className={styles.seen}> {fill(words.seenAt, { place: library.get(id)?.seenAt ?? '' })}</span>
          )}
        </dd>
      ))}
      <dt>{heads.where}</dt>
      <dd>{fact.where ?? words.noWhere}</dd>
      <dt>{heads.known}</dt>
      <dd>{words.longKnown[fact.known]}</dd>
      <dt>{heads.strength}</dt>
      <dd>{words.longStrength[fact.strength]}</dd>
      <dt>{heads.confidence}</dt>
      <dd>{words.longConfidence[fact.confidence]}</dd>
      <dt>{heads.checked}</dt>
      <dd>{sayDay(`${fact.checked}T00:00:00.000Z`, 'UTC')}</dd>
    </dl>
  )
}

/** `label, read`; a practice is said once; low confidence is never left out. */
function sayMark({ strength, known, confidence }: Fact): string {
  const mark =
    strength === 'practice' && (known === 'house' || known === 'common-practice')
      ? words.known[known]
      : fill(words.mark, { strength: words.strengths[strength], known: words.known[known] })
  return confidence === 'low' ? fill(words.lowMark, { mark }) : mark
}
