import { Link } from 'wouter'
import { sourcesInEnglish as words } from '#content/wording/app-sources.ts'
import { fill } from '#core/outcome/finding.ts'
import { SourcesPage } from './frame.tsx'
import styles from './home.module.css'
import { allEditions, allProcedures, allSources, allStudies, drugs, emergency, ruleNames } from './library.ts'

const counts = {
  formulary: drugs.length,
  breakpoints: allEditions.length,
  studies: allStudies.length,
  procedures: allProcedures.length,
  protocols: emergency.length + ruleNames.length,
  policies: 0,
  reference: allSources.length,
} as const satisfies Record<keyof typeof words.parts, number>

/** The parts of what the tool knows. */
export function SourcesScreen() {
  const parts = Object.keys(counts) as (keyof typeof counts)[]
  return (
    <SourcesPage title={words.title} lead={words.lead}>
      <ul className={`bare ${styles.parts}`}>
        {parts.map((part) => (
          <li key={part} className={styles.part}>
            <h2>
              <Link href={`/sources/${part}`}>{words.parts[part].title}</Link>
            </h2>
            <p className="soft">{fill(words.parts[part].count, { count: String(counts[part]) })}</p>
            <p>{words.parts[part].lead}</p>
          </li>
        ))}
      </ul>
    </SourcesPage>
  )
}
