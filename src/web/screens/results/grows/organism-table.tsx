import { antibiogramInEnglish } from '#content/wording/antibiogram.ts'
import { whatGrowsInEnglish as words } from '#content/wording/app-what-grows.ts'
import type { NamedFallback } from '#core/antibiogram/named-rows.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { besideOf, shareOf } from '#documents/what-grows/say-drug.ts'
import { ColumnHeads } from '../../../design/column-heads.tsx'
import { ScrollBox } from '../../../design/scroll-box.tsx'
import styles from './grows.module.css'
import type { GrowsAnswer } from './grows-answer.ts'

type Organism = GrowsAnswer['organisms'][number]

/** One organism: each drug with its count, share, interval and what stands beside it. No colour says anything. */
export function OrganismTable(props: { readonly organism: Organism; readonly method: GrowsAnswer['method'] }) {
  const { organism, method } = props
  const { n, flag, firstDay, lastDay, drugs, fallback } = organism
  const about = { organism: organism.organism, isolates: sayCount(antibiogramInEnglish.isolates, n) }
  const flagBelow = String(method.flagBelow)
  const caption = flag === null ? fill(words.caption, about) : fill(words.captionFew, { ...about, flagBelow })
  const days = { caption, from: sayCalendarDay(firstDay), until: sayCalendarDay(lastDay) }
  const whole = firstDay === lastDay ? `${caption}; ${days.from}` : fill(words.captionDays, days)
  const fewInAll = flag !== null
  return (
    <div className={styles.organism}>
      {drugs.length === 0 ? (
        <>
          <h3>{whole}</h3>
          <p>{words.noDrugs}</p>
        </>
      ) : (
        <DrugTable caption={whole} drugs={drugs} about={{ ...method, fewInAll }} />
      )}
      {fallback.length > 0 && (
        <>
          <p>{antibiogramInEnglish.fallback}</p>
          <DrugTable
            caption={fill(words.borrowed, { organism: organism.organism })}
            drugs={fallback}
            about={{ ...method, fewInAll }}
          />
        </>
      )}
    </div>
  )
}

function DrugTable(props: {
  readonly caption: string
  readonly drugs: readonly NamedFallback[]
  readonly about: Parameters<typeof besideOf>[1]
}) {
  const { columns } = antibiogramInEnglish
  return (
    <ScrollBox label={props.caption}>
      <table className={styles.table}>
        <caption>{props.caption}</caption>
        <ColumnHeads of={[columns.drug, columns.counted, columns.share, columns.interval]} />
        <tbody>
          {props.drugs.map((drug) => {
            const [counted, share, interval] = shareOf(drug)
            const beside = besideOf(drug, props.about)
            return (
              <tr key={drug.drug}>
                <th scope="row">
                  {drug.name}
                  {beside.length > 0 && <p className={styles.beside}>{beside.join(', ')}</p>}
                </th>
                <td>{counted}</td>
                <td>{share}</td>
                <td>{interval}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </ScrollBox>
  )
}
