import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { watching } from '#content/evidence/watching.ts'
import { resultsInEnglish } from '#content/wording/app-results.ts'
import { countUnitNames, ownOutcomeNames } from '#content/wording/own-figures.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { ColumnHeads } from '../../design/column-heads.tsx'
import { Provenance } from '../../design/provenance.tsx'
import { CasesBehind } from './cases-behind.tsx'
import styles from './results.module.css'

type Watch = OwnFiguresAnswer['times'][number]['watched'][number]
type Drawn = Extract<Watch, { kind: 'watched' }>

const { watch: words } = resultsInEnglish
const limit = watching.limit.value

/** Results in the order of the operations against what studies let expect; one plain sentence where there are too few. */
export function Watched({ watched }: { readonly watched: readonly Watch[] }) {
  const tooFew = watched.filter(({ kind }) => kind === 'too-few')
  return (
    <>
      <h3>{words.title}</h3>
      {watched.length > tooFew.length && <p className="soft">{words.lead}</p>}
      {watched
        .filter((watch) => watch.kind !== 'too-few')
        .map((watch) => (
          <div key={watch.question.outcome}>
            <p>{saidOf(watch)}</p>
            {watch.kind === 'watched' && <p>{togetherOf(watch)}</p>}
            {watch.kind === 'watched' && <Line watch={watch} />}
            <CasesBehind ask={{ about: 'rate', ...watch.question }} groups={resultsInEnglish.behindGroups} />
          </div>
        ))}
      {tooFew.length > 0 && <p>{sayTooFew(tooFew)}</p>}
    </>
  )
}

function sayTooFew(some: readonly Watch[]): string {
  return fill(words.tooFew, {
    least: String(watching.least.value),
    outcomes: some.map((watch) => fill(words.tooFewOne, namedOf(watch))).join('; '),
  })
}

function namedOf({ question: { outcome, unit }, known }: Watch) {
  return { outcome: ownOutcomeNames[outcome], unit: countUnitNames[unit], known: String(known) }
}

function saidOf(watch: Exclude<Watch, { kind: 'too-few' }>): string {
  const about = { ...namedOf(watch), limit: String(limit) }
  switch (watch.kind) {
    case 'nothing-expected':
      return fill(words.nothing, about)
    case 'watched': {
      const first = watch.points.find(({ signal }) => signal)
      return fill(first ? words.signal : words.calm, {
        ...about,
        events: String(watch.points.filter(({ event }) => event).length),
        risk: String(Math.round(100 * watch.risk)),
        value: (watch.points.at(-1)?.value ?? 0).toFixed(2),
        day: first ? sayCalendarDay(first.on) : '',
      })
    }
  }
}

/** All of them together, over what the share of the studies would bring. */
function togetherOf({ points, together: { expected, ratio, interval, byChance } }: Drawn): string {
  return fill(words.together, {
    expected: expected.toFixed(1),
    events: String(points.filter(({ event }) => event).length),
    ratio: ratio.toFixed(1),
    low: (Math.floor(10 * interval[0]) / 10).toFixed(1),
    high: (Math.ceil(10 * interval[1]) / 10).toFixed(1),
    few: String(byChance[0]),
    many: String(byChance[1]),
  })
}

function Line({ watch }: { readonly watch: Drawn }) {
  const about = { outcome: ownOutcomeNames[watch.question.outcome], known: String(watch.known), limit: String(limit) }
  return (
    <>
      <Chart points={watch.points} label={fill(words.chart, about)} />
      <p className="soft">
        {fill(words.design, {
          ratio: String(watching.ratio.value),
          limit: String(limit),
          ahead: String(watching.ahead.value),
          false: String(Math.ceil(100 * watch.falseAlarm)),
          right: String(Math.floor(100 * watch.rightAlarm)),
        })}{' '}
        <Provenance fact={watching.ratio} /> <Provenance fact={watching.limit} />
      </p>
      <details>
        <summary>{words.table}</summary>
        <div className={styles.wide}>
          <table>
            <ColumnHeads of={Object.values(words.columns)} />
            <tbody>
              {watch.points.map(({ on, event, value, signal }, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a result is named by its place in the order
                <tr key={i}>
                  <td>{sayCalendarDay(on)}</td>
                  <td>{event ? words.yes : words.no}</td>
                  <td>{value.toFixed(2)}</td>
                  <td>{signal ? words.yes : words.no}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </>
  )
}

const width = 640
const height = 140
const left = 44

function Chart({ points, label }: { readonly points: Drawn['points']; readonly label: string }) {
  const top = Math.max(limit, ...points.map(({ value }) => value)) * 1.1
  const x = (i: number) => left + ((width - left - 8) * i) / points.length
  const y = (value: number) => 8 + (height - 24) * (1 - value / top)
  const path = points.map(({ value }, i) => `L${x(i + 1)} ${y(value)}`).join('')
  return (
    <svg viewBox={`0 0 ${width} ${height}`} className={styles.chart} role="img" aria-label={label}>
      <line x1={left} x2={width - 8} y1={y(0)} y2={y(0)} className={styles.rule} />
      <line x1={left} x2={width - 8} y1={y(limit)} y2={y(limit)} className={styles.limit} />
      <text x={left - 6} y={y(0) + 4} textAnchor="end">
        0
      </text>
      <text x={left - 6} y={y(limit) + 4} textAnchor="end">
        {limit}
      </text>
      <path d={`M${x(0)} ${y(0)}${path}`} className={styles.curve} />
    </svg>
  )
}
