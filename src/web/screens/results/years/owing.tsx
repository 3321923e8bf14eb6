import { Link } from 'wouter'
import { yearsInEnglish as words } from '#content/wording/app-years.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayWhys } from '#core/owed/owed-wording.ts'
import { sayCounted, sayNumber } from '#documents/yearly-report/errata-page.ts'
import { ColumnHeads } from '../../../design/column-heads.tsx'
import { Notice } from '../../../design/notice.tsx'
import { ScrollBox } from '../../../design/scroll-box.tsx'
import { useNames } from './use-names.ts'
import { WriteErratum } from './write-erratum.tsx'
import type { Frozen, OwingOf } from './year-answer.ts'
import styles from './years.module.css'

/** What a frozen report says that is otherwise now: ear by ear, then in its numbers. */
export function Owing(props: { readonly owing: OwingOf; readonly frozen: Frozen; readonly readUntil: number }) {
  const { owing, frozen, readUntil } = props
  const nameOf = useNames()
  const year = String(frozen.body.year)
  return (
    <Notice tone="warn" title={words.owing}>
      <div className="stack">
        <p>{words.owingLead}</p>
        <ul>
          {owing.cases.flatMap(({ stream, changes }) =>
            changes.map(({ operation, side, what, before, after }) => (
              <li key={`${stream} ${operation} ${what}`}>
                <Link href={`/case/${stream.replace(/^case:/, '')}`}>
                  {fill(words.owingCase, { name: nameOf(stream), side })}
                </Link>
                {'. '}
                {sayWhys([{ code: 'report-otherwise', about: { year, what, before, after } }], owedInEnglish)}
              </li>
            )),
          )}
        </ul>
        <Numbers numbers={owing.numbers} />
        <WriteErratum owing={owing} frozen={frozen} readUntil={readUntil} />
      </div>
    </Notice>
  )
}

function Numbers({ numbers }: Pick<OwingOf, 'numbers'>) {
  if (numbers.length === 0) return <p>{words.numbersNone}</p>
  return (
    <ScrollBox label={words.numbers}>
      <table className={`${styles.table} ${styles.numbers}`}>
        <caption className="said">{words.numbers}</caption>
        <ColumnHeads of={Object.values(words.numberColumns)} />
        <tbody>
          {numbers.map((one) => (
            <tr key={sayNumber(one)}>
              <th scope="row">{sayNumber(one)}</th>
              <td>{sayCounted(one.before)}</td>
              <td>{sayCounted(one.after)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}
