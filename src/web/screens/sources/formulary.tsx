import { Link } from 'wouter'
import { groupsInEnglish, usesInEnglish } from '#content/wording/app-formulary.ts'
import { sourcesInEnglish, drugPage as words } from '#content/wording/app-sources.ts'
import { type Species, speciesList } from '#core/animal/species.ts'
import type { Drug } from '#core/formulary/drug.ts'
import { SourcesPage } from './frame.tsx'
import { drugs, hrefOf } from './library.ts'
import styles from './lists.module.css'
import { Searched } from './searched.tsx'

const { formulary } = sourcesInEnglish.parts

/** Every drug, with what it is used for in each animal, and where it must not be. */
export function FormularyScreen() {
  return (
    <SourcesPage title={formulary.title} lead={formulary.lead} part="formulary" isList>
      <Searched rows={drugs} textOf={textOf} help={words.searchHelp}>
        {(found) => (
          <table className={styles.list}>
            <thead>
              <tr>
                <th scope="col">{words.list.drug}</th>
                {speciesList.map((species) => (
                  <th key={species} scope="col">
                    {words.list[species]}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {found.map((drug) => (
                <tr key={drug.id}>
                  <th scope="row">
                    <Link href={hrefOf('formulary', drug.id)}>{drug.name}</Link>
                    <span className={styles.under}>{drug.class}</span>
                  </th>
                  {speciesList.map((species) => (
                    <td key={species} data-head={words.list[species]}>
                      <Uses drug={drug} species={species} />
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </Searched>
    </SourcesPage>
  )
}

function Uses({ drug, species }: { readonly drug: Drug; readonly species: Species }) {
  const uses = [...new Set(drug.doses.filter((row) => row.species === species).map((row) => usesInEnglish[row.use]))]
  const none = drug.none.filter((one) => one.species === species)
  if (uses.length + none.length === 0) return <span className="soft">{words.notListed}</span>
  return (
    <>
      {uses.join(', ')}
      {none.map((one) => (
        <span key={`${one.use ?? ''} ${one.because}`} className={styles.none}>
          <strong>{one.why === 'never' ? words.never : words.noDose}</strong>{' '}
          {one.use ? usesInEnglish[one.use] : words.everyUse}
        </span>
      ))}
    </>
  )
}

function textOf(drug: Drug): string {
  const { name, id, aliases, groups, doses } = drug
  const uses = doses.map(({ use }) => usesInEnglish[use])
  return [name, id, ...aliases, drug.class, ...groups, ...groups.map((one) => groupsInEnglish[one]), ...uses].join(' ')
}
