import { Link } from 'wouter'
import { forestInEnglish as words } from '#content/wording/app-forest.ts'
import { outcomeTitles } from '#content/wording/app-outcomes.ts'
import { asideReasonsInEnglish, oddsInEnglish } from '#content/wording/odds.ts'
import { forestOf } from '#core/evidence/forest.ts'
import type { Told } from '#core/evidence/told.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Interval } from '#core/stats/proportion-interval.ts'
import { sayCount, sayInterval, sayPerHundred } from '#documents/sources/say-study.ts'
import drawn from '../../design/drawn-table.module.css'
import { ScrollBox } from '../../design/scroll-box.tsx'
import styles from './forest.module.css'
import { ForestLine } from './forest-line.tsx'
import { hrefOf } from './library.ts'
import { shortName } from './studies.tsx'

/** Every study of one outcome on one axis, what is made of them together, and what was left out and why. */
export function ForestPlot({ told }: { readonly told: Told }) {
  const { published } = told
  const { question } = published
  const forest = forestOf(told)
  const { columns } = words
  const caption = fill(words.caption, {
    outcome: outcomeTitles[question.outcome],
    animals: oddsInEnglish.animals[question.species].many,
    unit: oddsInEnglish.units[question.unit],
  })
  return (
    <div className="stack">
      {forest.studies.length > 0 && (
        <ScrollBox label={caption}>
          <table className={`${drawn.table} ${styles.forest}`}>
            <caption>{caption}</caption>
            <thead>
              <tr>
                <th scope="col">{columns.study}</th>
                <th scope="col">{columns.counted}</th>
                <th scope="col">{columns.share}</th>
                <th scope="col">{columns.interval}</th>
                <th scope="col" className={styles.drawn}>
                  {columns.drawn}
                </th>
              </tr>
            </thead>
            <tbody>
              {forest.studies.map(({ row, share, exact }) => (
                <tr key={`${row.study} ${row.reading ?? ''}`}>
                  <th scope="row">
                    <Link href={hrefOf('studies', row.study)}>
                      {row.reading === undefined
                        ? shortName({ id: row.study })
                        : fill(words.reading, { study: shortName({ id: row.study }), reading: row.reading })}
                    </Link>
                  </th>
                  <td>{sayCount(row)}</td>
                  <Numbers share={share} interval={exact} shape="study" />
                </tr>
              ))}
              {forest.typical && (
                <tr className={styles.together}>
                  <th scope="row">{words.typical}</th>
                  <td>{words.typicalHow}</td>
                  <Numbers
                    share={forest.typical.share}
                    interval={forest.typical.interval}
                    reach={forest.typical.prediction}
                    shape="typical"
                    note={
                      forest.typical.prediction
                        ? fill(words.prediction, ends(forest.typical.prediction))
                        : words.noPrediction
                    }
                  />
                </tr>
              )}
              {forest.expected && (
                <tr className={styles.together}>
                  <th scope="row">{words.expected}</th>
                  <td>{words.expectedHow}</td>
                  <Numbers share={forest.expected.mean} interval={forest.expected.interval} shape="expected" />
                </tr>
              )}
            </tbody>
          </table>
        </ScrollBox>
      )}
      <Apart forest={forest} />
      <LeftOut told={told} />
    </div>
  )
}

function Numbers(props: {
  readonly share: number | null
  readonly interval: Interval
  readonly reach?: Interval | null
  readonly shape: 'study' | 'typical' | 'expected'
  readonly note?: string
}) {
  const { share, interval, reach = null, shape, note } = props
  return (
    <>
      <td>{share === null ? words.none : sayPerHundred(share)}</td>
      <td>
        {sayInterval(interval)}
        {note !== undefined && <span className={styles.note}>{note}</span>}
      </td>
      <td className={styles.drawn}>
        <ForestLine share={share} interval={interval} reach={reach} shape={shape} />
      </td>
    </>
  )
}

/** How far the studies lie apart, and what each of them does to the whole. */
function Apart({ forest: { pooled, without } }: { readonly forest: ReturnType<typeof forestOf> }) {
  const apart = pooled?.heterogeneity
  return (
    <>
      {apart && pooled.tau2 !== null && (
        <p className="soft">
          {fill(words.apart, {
            tau2: pooled.tau2.toFixed(3),
            i2: (100 * apart.i2).toFixed(0),
            q: apart.q.toFixed(2),
            df: String(apart.qDf),
            p: apart.qP.toFixed(3),
          })}
        </p>
      )}
      {without.length > 0 && (
        <details>
          <summary>{words.withoutTitle}</summary>
          <ul>
            {without.map(({ study, share, interval }) => (
              <li key={study}>
                {shortName({ id: study })}: {share === null ? words.none : sayPerHundred(share)} (
                {sayInterval(interval)})
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  )
}

function LeftOut({ told: { published } }: { readonly told: Told }) {
  if (published.aside.length === 0) return null
  return (
    <details>
      <summary>{words.leftOut}</summary>
      <ul>
        {published.aside.map(({ row, because }) => (
          <li key={JSON.stringify([row.study, row.unit, row.subgroup, row.reading, row.counted, row.procedure])}>
            <Link href={hrefOf('studies', row.study)}>{shortName({ id: row.study })}</Link>, {sayCount(row)}
            {row.subgroup !== undefined && ` (${row.subgroup})`}: {asideReasonsInEnglish[because]}
            {row.printed !== undefined && `. ${row.printed}`}
          </li>
        ))}
      </ul>
    </details>
  )
}

function ends({ low, high }: Interval) {
  return { low: sayPerHundred(low), high: sayPerHundred(high) }
}
