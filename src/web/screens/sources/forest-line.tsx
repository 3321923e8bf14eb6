import type { Interval } from '#core/stats/proportion-interval.ts'
import drawn from '../../design/drawn-table.module.css'
import styles from './forest.module.css'

/**
 * One row of a forest plot, the same numbers as beside it: a square for a study, a lozenge for the typical one with a
 * thin line as far as another study would lie, an open circle for what a clinic should expect that nobody has counted.
 */
export function ForestLine(props: {
  readonly share: number | null
  readonly interval: Interval
  readonly reach: Interval | null
  readonly shape: 'study' | 'typical' | 'expected'
}) {
  const { share, interval, reach, shape } = props
  const at = (part: number) => 6 + part * 228
  const middle = share === null ? null : at(share)
  return (
    <svg viewBox="0 0 240 24" className={drawn.line} aria-hidden="true" focusable="false">
      {[0, 0.25, 0.5, 0.75, 1].map((mark) => (
        <line key={mark} x1={at(mark)} y1="0" x2={at(mark)} y2="24" className={styles.grid} />
      ))}
      {reach && <line x1={at(reach.low)} y1="12" x2={at(reach.high)} y2="12" className={drawn.reach} />}
      {shape === 'typical' && middle !== null ? (
        <path
          d={`M${at(interval.low)} 12L${middle} 6L${at(interval.high)} 12L${middle} 18Z`}
          className={styles.lozenge}
        />
      ) : (
        <line
          x1={at(interval.low)}
          y1="12"
          x2={at(interval.high)}
          y2="12"
          className={shape === 'expected' ? drawn.reach : drawn.interval}
        />
      )}
      {shape === 'study' && middle !== null && (
        <rect x={middle - 4} y="8" width="8" height="8" className={styles.square} />
      )}
      {shape === 'expected' && middle !== null && <circle cx={middle} cy="12" r="4.5" className={styles.open} />}
    </svg>
  )
}
