import type { ReactNode } from 'react'
import { sourcesInEnglish as words } from '#content/wording/app-sources.ts'
import { factsIn } from '#core/evidence/facts-in.ts'
import type { Provenance as Fact } from '#core/evidence/sourced.ts'
import { inWords, sayFact } from '#documents/sources/say-content.ts'
import { Provenance } from '../../design/provenance.tsx'
import styles from './facts.module.css'

export type FactLine = {
  readonly key: string
  readonly what: ReactNode
  readonly value: ReactNode
  readonly fact: Fact | readonly Fact[]
}

/** Facts one under the other: what it is, what it says, how it is known. On a narrow screen each is a small block. */
export function FactTable({ caption, lines }: { readonly caption: string; readonly lines: readonly FactLine[] }) {
  return (
    <table className={styles.facts}>
      <caption className="said">{caption}</caption>
      <thead className={styles.head}>
        <tr>
          <th scope="col">{words.columns.what}</th>
          <th scope="col">{words.columns.value}</th>
          <th scope="col">{words.columns.known}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ key, what, value, fact }) => (
          <tr key={key}>
            <th scope="row">{what}</th>
            <td className={styles.value}>{value}</td>
            <td>
              {[fact].flat().map((one, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: the facts of one line never move
                <Provenance key={index} fact={one as Fact} />
              ))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Several sentences of one fact: one stands alone, several are a list; none says what none means. */
export function Sentences({ list, none }: { readonly list: readonly string[]; readonly none: string }) {
  if (list.length === 0) return <span className="soft">{none}</span>
  if (list.length === 1) return <>{list[0]}</>
  return (
    <ul className={styles.sentences}>
      {list.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  )
}

/** Every fact inside a value of content, by the names that lead to it. */
export function linesOf(value: unknown, saidAlone: string): FactLine[] {
  return factsIn(value).map(({ path, fact }, index) => ({
    key: `${index} ${path.join('.')}`,
    what: path.map((step) => (/^\d+$/.test(step) ? String(Number(step) + 1) : inWords(step))).join(', ') || '·',
    value: sayFact(fact) || saidAlone,
    fact,
  }))
}
