import type { PublishedCount } from '#core/evidence/published.ts'
import styles from './interval-line.module.css'

/**
 * The same numbers as beside it, drawn from 0 to 100 of 100: the exact interval thick, Wilson's thin beneath it, the
 * share as a dot.
 */
export function IntervalLine({ found: { share, exact, wilson } }: { readonly found: PublishedCount }) {
  const at = (part: number) => 4 + part * 192
  return (
    <svg viewBox="0 0 200 22" className={styles.drawn} aria-hidden="true" focusable="false">
      <line x1={at(0)} y1="11" x2={at(1)} y2="11" className={styles.axis} />
      {[0, 0.25, 0.5, 0.75, 1].map((mark) => (
        <line key={mark} x1={at(mark)} y1="8" x2={at(mark)} y2="14" className={styles.axis} />
      ))}
      <line x1={at(exact.low)} y1="11" x2={at(exact.high)} y2="11" className={styles.exact} />
      <line x1={at(wilson.low)} y1="18" x2={at(wilson.high)} y2="18" className={styles.wilson} />
      <circle cx={at(share)} cy="11" r="4" className={styles.share} />
    </svg>
  )
}
