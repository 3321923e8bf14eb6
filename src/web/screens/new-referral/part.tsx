import { type ReactNode, useId } from 'react'
import type { FirstCall } from '#core/referral/first-call.ts'
import styles from './screen.module.css'

/** What every part of the page is given. */
export type PartProps = { readonly call: FirstCall; readonly put: (part: Partial<FirstCall>) => void }

/** One stretch of the page with its heading. */
export function Part({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const id = useId()
  return (
    <section aria-labelledby={id} className={styles.part}>
      <h2 id={id} className={styles.heading}>
        {title}
      </h2>
      {children}
    </section>
  )
}
