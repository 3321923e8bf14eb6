import { Link } from 'wouter'
import { speciesInEnglish } from '#content/wording/app-formulary.ts'
import { sourcesInEnglish } from '#content/wording/app-sources.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { SourcesPage } from './frame.tsx'
import { allProcedures, hrefOf } from './library.ts'
import styles from './lists.module.css'

const { procedures } = sourcesInEnglish.parts

/** Every operation this tool knows. */
export function ProceduresScreen() {
  return (
    <SourcesPage title={procedures.title} lead={procedures.lead} part="procedures" isList>
      <ul className={`bare ${styles.plain}`}>
        {allProcedures.map(({ id, name, species }) => (
          <li key={id}>
            <h2>
              <Link href={hrefOf('procedures', id)}>{name}</Link>
            </h2>
            <p>{oddsInEnglish.procedures[id]}</p>
            <p className="soft">{species.map((one) => speciesInEnglish[one]).join(', ')}</p>
          </li>
        ))}
      </ul>
    </SourcesPage>
  )
}
