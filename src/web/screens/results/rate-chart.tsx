import { resultsInEnglish } from '#content/wording/app-results.ts'
import { bestAndWorst, type OwnRate, ownRateOf } from '#core/evidence/own/own-rate.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Interval, wilsonInterval } from '#core/stats/proportion-interval.ts'
import drawn from '../../design/drawn-table.module.css'
import { ScrollBox } from '../../design/scroll-box.tsx'
import styles from './results.module.css'
import { wholeEnds } from './say-count.ts'

/** One counted thing with its name: an outcome, or a kind of trouble. */
export type RateRow = {
  readonly name: string
  readonly events: number
  readonly total: number
  readonly lost: number
  readonly acrossAnimals: Interval | null
}

const { rates: words } = resultsInEnglish

/** The rates of a list as dots with their intervals, each beside its numbers in words: chart and table are one. */
export function RateChart(props: {
  readonly caption: string
  readonly rows: readonly RateRow[]
  readonly shownFrom: number
}) {
  const { caption, shownFrom } = props
  const rows = props.rows.filter(({ total }) => total > 0).map((row) => ({ row, rate: ownRateOf(row, shownFrom) }))
  const spans = rows.flatMap(({ rate }) => spanOf(rate) ?? [])
  if (spans.length === 0) return null
  const top = ceilingOf(Math.max(...spans.map(({ high }) => high)))
  const more = moreColumns.filter(({ of }) => rows.some(({ row, rate }) => of(row, rate) !== null))
  return (
    <ScrollBox label={caption}>
      <table className={`${drawn.table} ${styles.rates}`}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.columns.outcome}</th>
            <th scope="col">{words.columns.counted}</th>
            <th scope="col">{words.columns.share}</th>
            <th scope="col">{words.columns.interval}</th>
            <th scope="col" className={styles.drawn}>
              {fill(words.scale, { top: String(100 * top) })}
            </th>
            {more.map(({ head }) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ row, rate }) => (
            <tr key={row.name}>
              <th scope="row">{row.name}</th>
              <td>{fill(words.counted, { events: String(row.events), total: String(row.total) })}</td>
              <td>{shareOf(rate)}</td>
              <td>{intervalOf(rate)}</td>
              <td className={styles.drawn}>
                <RateLine rate={rate} top={top} />
              </td>
              {more.map(({ head, of }) => (
                <td key={head}>{of(row, rate) ?? words.noInterval}</td>
              ))}
            </tr>
          ))}
          {rows.length < props.rows.length && (
            <tr>
              <th scope="row">{words.others}</th>
              <td colSpan={4 + more.length}>{words.othersNone}</td>
            </tr>
          )}
        </tbody>
      </table>
    </ScrollBox>
  )
}

type More = { readonly head: string; readonly of: (row: RateRow, rate: OwnRate) => string | null }

/** What the sentences say beside the exact interval; a column that no row has anything for is left out. */
const moreColumns: readonly More[] = [
  {
    head: words.more.wilson,
    of: (row, rate) => {
      const wilson = wilsonInterval(row)
      return rate.kind === 'shown' && wilson.kind === 'answer' ? fill(words.between, wholeEnds(wilson.answer)) : null
    },
  },
  {
    head: words.more.across,
    of: ({ acrossAnimals }, rate) =>
      rate.kind === 'shown' && acrossAnimals ? fill(words.between, wholeEnds(acrossAnimals)) : null,
  },
  { head: words.more.lost, of: ({ lost }) => (lost > 0 ? String(lost) : null) },
  {
    head: words.more.span,
    of: (row) => {
      const span = bestAndWorst(row)
      if (!span || row.lost === 0) return null
      const ends = { low: String(Math.round(100 * span.low)), high: String(Math.round(100 * span.high)) }
      return fill(words.between, ends)
    },
  },
]

/** What is drawn of a rate: its interval, or how high it could still be; nothing of one that is withheld. */
function spanOf(rate: OwnRate): Interval | null {
  switch (rate.kind) {
    case 'nobody':
    case 'withheld':
      return null
    case 'none-yet':
      return { low: 0, high: rate.upTo }
    case 'shown':
      return rate.interval
  }
}

function shareOf(rate: OwnRate): string {
  switch (rate.kind) {
    case 'shown':
      return String(Math.round(100 * rate.share))
    case 'withheld':
      return words.withheld
    case 'none-yet':
    case 'nobody':
      return words.noInterval
  }
}

function intervalOf(rate: OwnRate): string {
  const span = spanOf(rate)
  if (!span) return words.noInterval
  return fill(rate.kind === 'none-yet' ? words.upTo : words.between, wholeEnds(span))
}

function RateLine({ rate, top }: { readonly rate: OwnRate; readonly top: number }) {
  const span = spanOf(rate)
  const at = (share: number) => 6 + (share / top) * 228
  return (
    <svg viewBox="0 0 240 24" className={drawn.line} aria-hidden="true" focusable="false">
      {[0, 0.25, 0.5, 0.75, 1].map((part) => (
        <line key={part} x1={at(part * top)} y1="0" x2={at(part * top)} y2="24" className={styles.rule} />
      ))}
      {span && (
        <line
          x1={at(span.low)}
          y1="12"
          x2={at(span.high)}
          y2="12"
          className={rate.kind === 'shown' ? drawn.interval : drawn.reach}
        />
      )}
      {rate.kind === 'none-yet' && <path d={`M${at(rate.upTo)} 7V17`} className={drawn.reach} />}
      {rate.kind === 'shown' && <circle cx={at(rate.share)} cy="12" r="4.5" className={styles.dot} />}
    </svg>
  )
}

/** Ten, twenty, fifty or a hundred of 100: the shortest axis that holds every line. */
function ceilingOf(share: number): number {
  return [0.1, 0.2, 0.5].find((one) => share <= one) ?? 1
}
