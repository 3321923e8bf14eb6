import type { ReactNode } from 'react'
import styles from './notice.module.css'

/** Something a person should read before going on. `warn` has a heavier line and a sign, never only another colour. */
export function Notice(props: {
  readonly tone?: 'plain' | 'warn'
  readonly title?: string
  readonly children?: ReactNode
  /** Said by a screen reader as soon as it appears. */
  readonly live?: boolean
}) {
  const { tone = 'plain', title, children, live = false } = props
  return (
    <div className={tone === 'warn' ? styles.warn : styles.plain} role={live ? 'alert' : undefined}>
      {title && <p className={styles.title}>{title}</p>}
      {children}
    </div>
  )
}
