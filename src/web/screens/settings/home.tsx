import { Link } from 'wouter'
import { settingsInEnglish as words } from '#content/wording/app-settings.ts'
import { Page } from '../../design/page.tsx'
import type { Part } from './frame.tsx'
import styles from './home.module.css'

const groups = {
  people: ['me', 'people', 'devices'],
  doses: ['shelf', 'register', 'plans', 'doses'],
  house: ['policies', 'breakpoints', 'prices', 'closed-days', 'clinic'],
  server: ['backup', 'read-log'],
} as const satisfies Record<keyof typeof words.groups, readonly Part[]>

const elsewhere = [
  ['/connect', words.elsewhere.connect, words.elsewhere.connectLead],
  ['/kept', words.elsewhere.kept, words.elsewhere.keptLead],
] as const

/** The parts of the settings. */
export function SettingsScreen() {
  return (
    <Page title={words.title} lead={words.lead}>
      <div className={styles.groups}>
        {(Object.keys(groups) as (keyof typeof groups)[]).map((group) => (
          <section key={group} aria-labelledby={`settings-${group}`} className={styles.group}>
            <h2 id={`settings-${group}`}>{words.groups[group]}</h2>
            <ul className="bare">
              {groups[group].map((part) => (
                <li key={part} className={styles.part}>
                  <Link href={`/settings/${part}`}>{words.parts[part].title}</Link>
                  <p className="soft">{words.parts[part].lead}</p>
                </li>
              ))}
              {group === 'server' &&
                elsewhere.map(([href, title, lead]) => (
                  <li key={href} className={styles.part}>
                    {/* The page of the connection is the server's own and not one of the app's. */}
                    {href === '/connect' ? <a href={href}>{title}</a> : <Link href={href}>{title}</Link>}
                    <p className="soft">{lead}</p>
                  </li>
                ))}
            </ul>
          </section>
        ))}
      </div>
    </Page>
  )
}
