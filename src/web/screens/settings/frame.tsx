import type { ReactNode } from 'react'
import { settingsInEnglish as words } from '#content/wording/app-settings.ts'
import { Crumbs } from '../../design/crumbs.tsx'
import { Page } from '../../design/page.tsx'

const home = ['/settings', words.title] as const
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
      <Crumbs label={words.crumbs} steps={title ? [home, [`/settings/${part}`, words.parts[part].title]] : [home]} />
      <Page title={title ?? words.parts[part].title} lead={lead} actions={actions}>
        {children}
      </Page>
    </>
  )
}
