import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { resultsInEnglish } from '#content/wording/app-results.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { ColumnHeads } from '../../design/column-heads.tsx'
import { IncidenceChart } from './incidence-chart.tsx'
import styles from './results.module.css'

type Times = OwnFiguresAnswer['times'][number]
type Tract = Times['tract']

const { time: words, blink: blinkWords } = resultsInEnglish

/** Late tracts and the blink over time: sentences first, then the curve, then its table. */
export function OverTime({ tract, blink, enough }: Pick<Times, 'tract' | 'blink'> & { readonly enough: number }) {
  const drawn = tract.steps.flatMap(({ share, ...step }) => (share === null ? [] : [{ ...step, share }]))
  return (
    <>
      <h3>{words.title}</h3>
      {saidOf(tract, enough).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {drawn.some(({ share }) => share > 0) && <IncidenceChart steps={drawn} />}
      <details>
        <summary>{words.table}</summary>
        <Steps steps={tract.steps} />
      </details>
      <p className="soft">{words.method}</p>
      <h3>{blinkWords.title}</h3>
      {blinkSaid(blink, enough).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {blink && <p className="soft">{blinkWords.method}</p>}
    </>
  )
}

function saidOf(tract: Tract, enough: number): string[] {
  const about = {
    ears: String(tract.ears),
    animals: String(tract.animals),
    from: sayCalendarDay(tract.from),
    until: sayCalendarDay(tract.until),
    events: String(tract.events),
    died: String(tract.died),
  }
  const at = tract.at.flatMap((one) => {
    const when = { months: String(one.months), followed: String(one.followed) }
    if (one.kind === 'too-few') return [fill(one.followed === 0 ? words.notYet : words.tooFew, when)]
    if (one.interval === null) return [fill(words.atNone, { ...when, upTo: String(Math.ceil(100 * (one.upTo ?? 1))) })]
    const [low, high] = one.interval
    const said = fill(words.at, {
      ...when,
      share: whole(one.share),
      low: String(Math.floor(100 * low)),
      high: String(Math.ceil(100 * high)),
    })
    return tract.died > 0 && whole(one.withoutDeaths) !== whole(one.share)
      ? [said, fill(words.wrong, { share: whole(one.withoutDeaths) })]
      : [said]
  })
  const mean = tract.mean
    ? [
        fill(words.mean, {
          months: String(tract.mean.months),
          days: String(Math.round(tract.mean.days)),
          error: tract.mean.error.toFixed(1),
        }),
      ]
    : []
  const after = tract.steps.filter(({ share }) => share === null).reduce((sum, { events }) => sum + events, 0)
  return [
    fill(words.counted, about),
    ...(tract.events === 0 ? [fill(words.none, about)] : []),
    ...at,
    ...(after > 0 ? [fill(words.after, { enough: String(enough), events: String(after) })] : []),
    ...mean,
  ]
}

function blinkSaid(blink: Times['blink'], enough: number): string[] {
  if (!blink) return [blinkWords.none]
  const { value, low, high } = blink.half
  const counted = fill(blinkWords.counted, { ears: String(blink.ears), back: String(blink.back) })
  if (blink.ears < enough) return [counted, fill(blinkWords.tooFew, { enough: String(enough) })]
  if (value === null) return [counted, blinkWords.halfNotReached]
  const ends = { low: String(low), high: String(high) }
  const range = low === null ? '' : fill(high === null ? blinkWords.rangeOpen : blinkWords.range, ends)
  return [counted, fill(blinkWords.half, { day: String(Math.round(value)), range })]
}

function Steps({ steps }: { readonly steps: Tract['steps'] }) {
  return (
    <div className={styles.wide}>
      <table>
        <ColumnHeads of={Object.values(words.columns)} />
        <tbody>
          {steps.map(({ day, followed, events, died, share, interval }) => (
            <tr key={day}>
              <td>{day}</td>
              <td>{followed}</td>
              <td>{events}</td>
              <td>{died}</td>
              <td>{share === null ? words.tooFewInTable : share === 0 ? words.noneInTable : tenth(share)}</td>
              <td>{interval === null ? '–' : `${tenth(interval[0])}–${tenth(interval[1])}`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

function whole(share: number): string {
  return String(Math.round(100 * share))
}

function tenth(share: number): string {
  return (100 * share).toFixed(1)
}
