import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { resultsInEnglish } from '#content/wording/app-results.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { CasesBehind } from './cases-behind.tsx'
import { IncidenceChart } from './incidence-chart.tsx'
import styles from './results.module.css'
import { wholeEnds } from './say-count.ts'
import { TractTable } from './tract-table.tsx'

type Times = OwnFiguresAnswer['times'][number]
type Tract = Times['tract']

const { time: words, blink: blinkWords } = resultsInEnglish

type Said = { readonly text: string; readonly behind?: { readonly day: number | null; readonly label: string } }

/** Late tracts and the blink over time: sentences first, then the curve, then its table; the cases behind each count. */
export function OverTime({ times, enough }: { readonly times: Times; readonly enough: number }) {
  const { species, procedure, tract, blink } = times
  const drawn = tract.steps.flatMap(({ share, ...step }) => (share === null ? [] : [{ ...step, share }]))
  return (
    <>
      <h3>{words.title}</h3>
      {saidOf(tract, enough).map(({ text, behind }) => (
        <div key={text} className={styles.said}>
          <p>{text}</p>
          {behind && (
            <CasesBehind
              ask={{ about: 'tract', species, procedure, day: behind.day }}
              groups={behind.day === null ? words.behindAll : words.behind}
              label={behind.label}
            />
          )}
        </div>
      ))}
      {drawn.some(({ share }) => share > 0) && <IncidenceChart steps={drawn} />}
      <details>
        <summary>{words.table}</summary>
        <TractTable species={species} procedure={procedure} steps={tract.steps} />
      </details>
      {drawn.length > 0 && <p className="soft">{words.method}</p>}
      <h3>{blinkWords.title}</h3>
      {blinkSaid(blink, enough).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {blink && <CasesBehind ask={{ about: 'blink', species, procedure }} groups={blinkWords.behind} />}
      {blink && blink.ears >= enough && <p className="soft">{blinkWords.method}</p>}
    </>
  )
}

function saidOf(tract: Tract, enough: number): Said[] {
  const about = {
    ears: String(tract.ears),
    animals: String(tract.animals),
    from: sayCalendarDay(tract.from),
    until: sayCalendarDay(tract.until),
    events: String(tract.events),
    died: String(tract.died),
  }
  const after = tract.steps.filter(({ share }) => share === null).reduce((sum, { events }) => sum + events, 0)
  return [
    { text: fill(words.counted, about), behind: { day: null, label: resultsInEnglish.behind } },
    ...(tract.events === 0 ? [{ text: fill(words.none, about) }] : []),
    ...tract.at.flatMap((one) => saidAt(one, tract.died > 0)),
    ...(after > 0 ? [{ text: fill(words.after, { enough: String(enough), events: String(after) }) }] : []),
    ...(tract.mean
      ? [
          {
            text: fill(words.mean, {
              months: String(tract.mean.months),
              days: String(Math.round(tract.mean.days)),
              error: tract.mean.error.toFixed(1),
            }),
          },
        ]
      : []),
  ]
}

function saidAt(one: Tract['at'][number], someDied: boolean): Said[] {
  const when = { months: String(one.months), followed: String(one.followed) }
  if (one.followed === 0) return [{ text: fill(words.notYet, when) }]
  const behind = { day: one.day, label: fill(words.behindAt, when) }
  if (one.kind === 'too-few') return [{ text: fill(words.tooFew, when), behind }]
  if (one.interval === null)
    return [{ text: fill(words.atNone, { ...when, upTo: String(Math.ceil(100 * (one.upTo ?? 1))) }), behind }]
  const [low, high] = one.interval
  const text = fill(words.at, { ...when, share: whole(one.share), ...wholeEnds({ low, high }) })
  const wrong = someDied && whole(one.withoutDeaths) !== whole(one.share)
  return [{ text, behind }, ...(wrong ? [{ text: fill(words.wrong, { share: whole(one.withoutDeaths) }) }] : [])]
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

function whole(share: number): string {
  return String(Math.round(100 * share))
}
