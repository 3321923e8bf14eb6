import { Link } from 'wouter'
import { provenanceInEnglish } from '#content/wording/app-provenance.ts'
import { sourcesInEnglish, referencePage as words } from '#content/wording/app-sources.ts'
import { SourcesPage } from './frame.tsx'
import { allSources, hrefOf } from './library.ts'
import styles from './lists.module.css'
import { Searched } from './searched.tsx'

const { reference } = sourcesInEnglish.parts

/** Every publication, label, page and house decision. */
export function ReferencesScreen() {
  return (
    <SourcesPage title={reference.title} lead={reference.lead} part="reference" isList>
      <Searched
        rows={allSources}
        textOf={({ id, citation, strength }) => `${id} ${citation} ${provenanceInEnglish.strengths[strength]}`}
        help={words.searchHelp}
      >
        {(found) => (
          <ul className={`bare ${styles.plain}`}>
            {found.map(({ id, citation, strength }) => (
              <li key={id}>
                <Link href={hrefOf('reference', id)}>{citation}</Link>{' '}
                <span className="soft">{provenanceInEnglish.strengths[strength]}</span>
              </li>
            ))}
          </ul>
        )}
      </Searched>
    </SourcesPage>
  )
}
