import { resultsInEnglish } from '#content/wording/app-results.ts'
import styles from './results.module.css'

type Step = { readonly day: number; readonly share: number; readonly interval: readonly [number, number] | null }
type Steps = readonly Step[]

const width = 640
const height = 220
const left = 44
const bottom = 28

/** The share with a tract by days, as a staircase with its interval; the table beside it says the same. */
export function IncidenceChart({ steps }: { readonly steps: Steps }) {
  const last = Math.max(1, steps.at(-1)?.day ?? 1)
  const top = ceilingOf(Math.max(...steps.map(({ share, interval }) => interval?.[1] ?? share)))
  const x = (day: number) => left + ((width - left - 8) * day) / last
  const y = (share: number) => 8 + (height - 8 - bottom) * (1 - share / top)
  const years = Array.from({ length: Math.floor(last / 365) + 1 }, (_, i) => 365 * i)
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className={styles.chart}
      role="img"
      aria-label={resultsInEnglish.time.chart}
    >
      {[0, top / 2, top].map((share) => (
        <g key={share}>
          <line x1={left} x2={width - 8} y1={y(share)} y2={y(share)} className={styles.rule} />
          <text x={left - 6} y={y(share) + 4} textAnchor="end">
            {Math.round(100 * share)}
          </text>
        </g>
      ))}
      {years.map((day) => (
        <text key={day} x={x(day)} y={height - 8} textAnchor="middle">
          {day}
        </text>
      ))}
      <path d={`${staircase(steps, (step) => step.interval?.[1] ?? null, x, y)}`} className={styles.limit} />
      <path d={`${staircase(steps, (step) => step.interval?.[0] ?? null, x, y)}`} className={styles.limit} />
      <path d={staircase(steps, ({ share }) => share, x, y)} className={styles.curve} />
    </svg>
  )
}

/** Along to the day of the next line, then up; where there is no value yet nothing is drawn. */
function staircase(
  steps: Steps,
  of: (step: Step) => number | null,
  x: (day: number) => number,
  y: (share: number) => number,
): string {
  let drawn = ''
  let before: number | null = null
  for (const step of steps) {
    const value = of(step)
    if (value === null) continue
    drawn += before === null ? `M${x(step.day)} ${y(value)}` : `H${x(step.day)}V${y(value)}`
    before = value
  }
  return drawn
}

/** Five, ten, twenty, fifty or a hundred of 100: an axis that is never nought. */
function ceilingOf(share: number): number {
  return [0.05, 0.1, 0.2, 0.5].find((one) => share <= one) ?? 1
}
