import { useEffect, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { loadAhead } from '../ahead.tsx'
import { Mark } from '../design/mark.tsx'
import { connection } from '../journal/live.ts'
import { useSignal } from '../journal/signal.ts'
import { Routes } from '../routes.tsx'
import { People } from '../session/people.tsx'
import { useWho } from '../session/use-who.ts'
import { Fault } from './fault.tsx'
import { Line } from './line.tsx'
import styles from './shell.module.css'

const pages = [
  ['/', words.pages.owed],
  ['/find', words.pages.find],
  ['/new', words.pages.newReferral],
  ['/theatre', words.pages.theatreList],
  ['/ward', words.pages.ward],
  ['/tray', words.pages.tray],
  ['/results', words.pages.results],
  ['/sources', words.pages.sources],
  ['/settings', words.pages.settings],
] as const

/** The first page comes first; the rest of the app is loaded when it stands. */
const restAfterStart = 1_000

/** The frame around every page: where to go, who acts, whether the server hears us. */
export function Shell() {
  const { me, clinic, invented } = useWho()
  const [menu, setMenu] = useState(false)
  const [people, setPeople] = useState(false)
  const [location] = useLocation()
  const line = useSignal(connection)
  useEffect(() => {
    if (line !== 'live') return
    const timer = setTimeout(() => void loadAhead(), restAfterStart)
    return () => clearTimeout(timer)
  }, [line])
  return (
    <div className={styles.shell}>
      <a href="#page" className={styles.skip}>
        {words.skip}
      </a>
      <header className={styles.rail} data-open={menu}>
        <div className={styles.top}>
          <Link href="/" className={styles.product}>
            <Mark />
            <span className={styles.productName}>{words.product}</span>
          </Link>
          <button type="button" className={styles.acting} onClick={() => setPeople(true)}>
            <span className={styles.name}>{me.name}</span>
            <span className="said"> {words.changePerson}</span>
          </button>
          <button type="button" className={styles.menu} aria-expanded={menu} onClick={() => setMenu(!menu)}>
            {menu ? words.closeMenu : words.menu}
          </button>
        </div>
        {invented && <p className={styles.invented}>{words.invented}</p>}
        <div className={styles.folded}>
          <nav aria-label={words.navigation}>
            <ul className={`bare ${styles.pages}`}>
              {pages.map(([path, name]) => (
                <li key={path}>
                  <Link
                    href={path}
                    aria-current={isHere(location, path) ? 'page' : undefined}
                    className={styles.link}
                    onClick={() => setMenu(false)}
                  >
                    {name}
                  </Link>
                </li>
              ))}
            </ul>
          </nav>
          <div className={styles.foot}>
            <p className={styles.clinic}>{clinic.row.name}</p>
            <p>{fill(words.acting, { name: me.name, role: words.roles[me.role] })}</p>
            <button type="button" className={styles.changePerson} onClick={() => setPeople(true)}>
              {words.changePerson}
            </button>
          </div>
        </div>
      </header>
      <main id="page" className={styles.main}>
        <Line />
        <Fault page key={location}>
          <Routes />
        </Fault>
      </main>
      {people && <People onClose={() => setPeople(false)} />}
    </div>
  )
}

function isHere(location: string, path: string): boolean {
  return path === '/' ? location === '/' : location === path || location.startsWith(`${path}/`)
}
