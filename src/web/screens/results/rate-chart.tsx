import { resultsInEnglish } from '#content/wording/app-results.ts'
import { ownOutcomeNames } from '#content/wording/own-figures.ts'
import { type OwnRate, ownRateOf } from '#core/evidence/own/own-rate.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Interval } from '#core/stats/proportion-interval.ts'
import { ScrollBox } from '../../design/scroll-box.tsx'
import type { OwnCounts } from './own-counts.ts'
import styles from './results.module.css'

type Count = OwnCounts[number]

const { rates: words } = resultsInEnglish

/** The rates of a list as dots with their intervals, each beside its numbers in words: chart and table are one. */
export function RateChart(props: { readonly caption: string; readonly counts: OwnCounts; readonly shownFrom: number }) {
  const { caption, counts, shownFrom } = props
  const rows = counts.map((count) => ({ count, rate: ownRateOf(count, shownFrom) }))
  const drawn = rows.flatMap(({ rate }) => spanOf(rate) ?? [])
  if (drawn.length === 0) return null
  const top = ceilingOf(Math.max(...drawn.map(({ high }) => high)))
  return (
    <ScrollBox label={caption}>
      <table className={styles.rates}>
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
          </tr>
        </thead>
        <tbody>
          {rows.map(({ count, rate }) => (
            <tr key={count.question.outcome}>
              <th scope="row">{ownOutcomeNames[count.question.outcome]}</th>
              <td>{countedOf(count)}</td>
              <td>{shareOf(rate)}</td>
              <td>{intervalOf(rate)}</td>
              <td className={styles.drawn}>
                <RateLine rate={rate} top={top} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

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

function countedOf({ events, total }: Count): string {
  return total === 0 ? words.none : fill(words.counted, { events: String(events), total: String(total) })
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
  const ends = { low: String(Math.floor(100 * span.low)), high: String(Math.ceil(100 * span.high)) }
  return fill(rate.kind === 'none-yet' ? words.upTo : words.between, ends)
}

function RateLine({ rate, top }: { readonly rate: OwnRate; readonly top: number }) {
  const span = spanOf(rate)
  const at = (share: number) => 6 + (share / top) * 228
  return (
    <svg viewBox="0 0 240 24" className={styles.line} aria-hidden="true" focusable="false">
      {[0, 0.25, 0.5, 0.75, 1].map((part) => (
        <line key={part} x1={at(part * top)} y1="0" x2={at(part * top)} y2="24" className={styles.rule} />
      ))}
      {span && (
        <line
          x1={at(span.low)}
          y1="12"
          x2={at(span.high)}
          y2="12"
          className={rate.kind === 'shown' ? styles.interval : styles.reach}
        />
      )}
      {rate.kind === 'none-yet' && <path d={`M${at(rate.upTo)} 7V17`} className={styles.reach} />}
      {rate.kind === 'shown' && <circle cx={at(rate.share)} cy="12" r="4.5" className={styles.dot} />}
    </svg>
  )
}

/** Ten, twenty, fifty or a hundred of 100: the shortest axis that holds every line. */
function ceilingOf(share: number): number {
  return [0.1, 0.2, 0.5].find((one) => share <= one) ?? 1
}
