import type { OwnTroubleAnswer } from '#actions/evidence/read-own-trouble.ts'
import { complicationSchemes } from '#content/outcomes/schemes/index.ts'
import { troubleScreenInEnglish } from '#content/wording/app-trouble.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { TroubleQuestion } from '#core/results/trouble-groups.ts'
import { ColumnHeads } from '../../design/column-heads.tsx'
import { type BehindGroups, CasesBehind } from './cases-behind.tsx'
import styles from './results.module.css'

type Counted = OwnTroubleAnswer['ear']

const { results: words } = troubleScreenInEnglish

/** Each ear or animal once by its worst complication, with both denominators; one scheme never stands for another. */
export function TroubleSchemes({
  question,
  counted,
}: {
  readonly question: TroubleQuestion
  readonly counted: Counted
}) {
  const { unit, operated, followed, schemes } = counted
  return (
    <>
      <h4>{words.schemesTitle}</h4>
      <p className="soft">{fill(words.schemesLead, { unit: words.unitWord[unit] })}</p>
      <ul>
        {schemes.map((scheme) => (
          <li key={scheme.scheme}>
            {sayScheme(scheme, { followed, operated })}
            <CasesBehind ask={{ about: 'grade', ...question, scheme: scheme.scheme }} groups={groupsOf(scheme)} />
          </li>
        ))}
      </ul>
      <details>
        <summary>{words.table}</summary>
        <div className={styles.wide}>
          <table>
            <ColumnHeads of={Object.values(words.columns)} />
            <tbody>
              {schemes.flatMap((scheme) =>
                rowsOf(scheme).map(({ label, count }) => (
                  <tr key={`${scheme.scheme} ${label}`}>
                    <td>{nameOf(scheme.scheme)}</td>
                    <td>{label}</td>
                    <td>{count}</td>
                    <td>{fill(words.of, { count: String(count), total: String(followed) })}</td>
                    <td>{fill(words.of, { count: String(count), total: String(operated) })}</td>
                  </tr>
                )),
              )}
            </tbody>
          </table>
        </div>
      </details>
    </>
  )
}

function sayScheme(scheme: Counted['schemes'][number], { followed, operated }: Pick<Counted, 'followed' | 'operated'>) {
  const some = rowsOf(scheme).filter(({ count }) => count > 0)
  return fill(words.schemeLine, {
    scheme: nameOf(scheme.scheme),
    grades:
      some.map(({ label, count }) => fill(words.gradeCount, { grade: label, count: String(count) })).join(', ') ||
      words.schemeNone,
    followed: String(followed),
    operated: String(operated),
  })
}

/** The grades in their order, then what is not graded. */
function groupsOf({ grades }: Counted['schemes'][number]): BehindGroups {
  return {
    ...Object.fromEntries(grades.map(({ grade }) => [grade, grade])),
    between: capital(words.between),
    unknown: capital(words.unknown),
    ...words.behindGrades,
  }
}

function nameOf(id: Counted['schemes'][number]['scheme']): string {
  const scheme = complicationSchemes.find((one) => one.id === id)
  return scheme ? `${scheme.name} ${scheme.version}` : id
}

function rowsOf({ grades, between, unknown }: Counted['schemes'][number]) {
  return [
    ...grades.map(({ grade, count }) => ({ label: grade, count })),
    { label: words.between, count: between },
    { label: words.unknown, count: unknown },
  ]
}
