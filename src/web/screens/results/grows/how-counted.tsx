import { Link } from 'wouter'
import { provenanceInEnglish } from '#content/wording/app-provenance.ts'
import { whatGrowsInEnglish as words } from '#content/wording/app-what-grows.ts'
import styles from './grows.module.css'
import type { GrowsAnswer } from './grows-answer.ts'

/** The method in sentences, and what a reader must know before using the table; on paper too. */
export function HowCounted({ grown }: { readonly grown: GrowsAnswer }) {
  const second = grown.organisms.some(({ site }) => site === 'second-operation')
  return (
    <section aria-labelledby="grows-how" className={`stack ${styles.how}`}>
      <h2 id="grows-how">{words.how}</h2>
      <ul>
        {[...grown.method.text, ...grown.notes.map(({ text }) => text), ...(second ? [words.secondOperation] : [])].map(
          (text) => (
            <li key={text}>{text}</li>
          ),
        )}
      </ul>
      <details>
        <summary>{words.sources}</summary>
        <ul>
          {grown.sources.map(({ id, citation, where, known, confidence }) => (
            <li key={`${id} ${where} ${known} ${confidence}`}>
              <Link href={`/sources/reference/${encodeURIComponent(id)}`}>{citation}</Link>
              {where !== null && <p className={styles.where}>{where}</p>}
              <p className={styles.where}>{provenanceInEnglish.longKnown[known]}</p>
            </li>
          ))}
        </ul>
      </details>
    </section>
  )
}
