import { Link } from 'wouter'
import { sourcesInEnglish, studyPage as words } from '#content/wording/app-sources.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import type { Study } from '#core/evidence/study.ts'
import { ColumnHeads } from '../../design/column-heads.tsx'
import { SourcesPage } from './frame.tsx'
import { allStudies, hrefOf, sourceNamed } from './library.ts'
import styles from './lists.module.css'
import { Searched } from './searched.tsx'

const { parts, species: speciesWords } = sourcesInEnglish

/** Every published study that counted something. */
export function StudiesScreen() {
  return (
    <SourcesPage title={parts.studies.title} lead={parts.studies.lead} part="studies" isList>
      <Searched rows={allStudies} textOf={textOf} help={words.searchHelp}>
        {(found) => (
          <table className={styles.list}>
            <ColumnHeads of={[words.list.study, words.list.animals, words.list.rows, words.list.aside]} />
            <tbody>
              {found.map((study) => (
                <tr key={study.id}>
                  <th scope="row">
                    <Link href={hrefOf('studies', study.id)}>{shortName(study)}</Link>
                    <span className={styles.under}>{operationsOf(study).join('; ')}</span>
                  </th>
                  <td data-head={words.list.animals}>{speciesOf(study).join(', ')}</td>
                  <td data-head={words.list.rows}>{study.rows.filter(({ pool }) => pool.use === 'primary').length}</td>
                  <td data-head={words.list.aside}>{study.rows.filter(({ pool }) => pool.use !== 'primary').length}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </Searched>
    </SourcesPage>
  )
}

/** The first author and the year, from the name of the file: `Fox 2008`. */
export function shortName({ id }: Pick<Study, 'id'>): string {
  return id
    .split('-')
    .map((part) => part.charAt(0).toUpperCase() + part.slice(1))
    .join(' ')
}

function speciesOf({ rows }: Study): string[] {
  return [...new Set(rows.map(({ species }) => speciesWords[species]))]
}

function operationsOf({ rows }: Study): string[] {
  return [...new Set(rows.map(({ procedure }) => oddsInEnglish.procedures[procedure]))]
}

function textOf(study: Study): string {
  const citation = sourceNamed(study.source)?.citation ?? ''
  return [study.id, citation, ...speciesOf(study), ...operationsOf(study)].join(' ')
}
