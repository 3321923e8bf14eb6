import type { ReactNode } from 'react'
import styles from './list-group.module.css'

/** A stretch of a list page: its heading over a strong line, a count or a word beside it, and what stands under it. */
export function ListGroup(props: {
  readonly id: string
  readonly title: string
  readonly beside?: ReactNode
  /** A stretch that can wait has a lighter line. */
  readonly quiet?: boolean
  readonly children: ReactNode
}) {
  const { id, title, beside, quiet = false, children } = props
  return (
    <section aria-labelledby={id} className={styles.group}>
      <h2 id={id} className={quiet ? styles.quiet : styles.heading}>
        {title}
        {beside !== undefined && <span className={styles.beside}>{beside}</span>}
      </h2>
      {children}
    </section>
  )
}
