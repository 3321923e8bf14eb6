import { type ReactNode, useEffect } from 'react'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { Mark } from '../design/mark.tsx'
import styles from './door.module.css'

/** The sheet before anybody is signed in. */
export function Door(props: {
  readonly title: string
  readonly clinic?: string | null
  readonly invented?: boolean
  readonly children: ReactNode
}) {
  const { title, clinic, invented, children } = props
  useEffect(() => {
    document.title = `${title} · ${shell.product}`
  }, [title])
  return (
    <div className={styles.door}>
      <header className={styles.head}>
        <Mark />
        <p className={styles.product}>{shell.product}</p>
        {clinic && <p className={styles.clinic}>{clinic}</p>}
        {invented && <p className={styles.invented}>{shell.invented}</p>}
      </header>
      <main className={styles.sheet}>
        <h1>{title}</h1>
        {children}
      </main>
    </div>
  )
}
