import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { settingsInEnglish as words } from '#content/wording/app-settings.ts'
import { Page } from '../../design/page.tsx'
import styles from './frame.module.css'

export type Part = keyof typeof words.parts

/** A page of the settings: the way back, its title, what it holds. */
export function SettingsPage(props: {
  readonly part: Part
  /** The page of one thing within the part: its own title. */
  readonly title?: string
  readonly lead?: ReactNode
  readonly actions?: ReactNode
  readonly children: ReactNode
}) {
  const { part, title, lead = words.parts[part].lead, actions, children } = props
  return (
    <>
      <nav aria-label={words.crumbs} className={styles.crumbs}>
        <Link href="/settings">{words.title}</Link>
        {title && <Link href={`/settings/${part}`}>{words.parts[part].title}</Link>}
      </nav>
      <Page title={title ?? words.parts[part].title} lead={lead} actions={actions}>
        {children}
      </Page>
    </>
  )
}
