import { type ReactNode, useEffect, useRef } from 'react'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import styles from './page.module.css'

/** One page: its heading, which takes the focus when the page is opened, and what stands under it. */
export function Page(props: {
  readonly title: string
  readonly lead?: ReactNode
  /** Whose page it is: stays in sight however far the page is moved. */
  readonly whose?: ReactNode
  readonly actions?: ReactNode
  readonly wide?: boolean
  readonly children: ReactNode
}) {
  const { title, lead, whose, actions, wide = false, children } = props
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    document.title = `${title} · ${words.product}`
    heading.current?.focus({ preventScroll: true })
  }, [title])
  return (
    <article className={wide ? styles.wide : styles.page}>
      {whose && <div className={styles.whose}>{whose}</div>}
      <header className={styles.head}>
        <div>
          <h1 ref={heading} tabIndex={-1} className={styles.title}>
            {title}
          </h1>
          {lead && <div className={styles.lead}>{lead}</div>}
        </div>
        {actions && <div className={styles.actions}>{actions}</div>}
      </header>
      {children}
    </article>
  )
}
