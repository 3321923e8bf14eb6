import type { z } from 'zod'
import type { listDevices } from '#actions/people/list-devices.ts'
import { devicesInEnglish as words } from '#content/wording/app-settings.ts'
import { fill } from '#core/outcome/finding.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { call } from '../../journal/api.ts'
import { useAction } from '../../journal/cases.ts'
import { lookWho } from '../../session/session.ts'
import { usePeople } from '../../session/use-people.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import { SettingsPage } from './frame.tsx'
import styles from './settings.module.css'

type Devices = z.output<(typeof listDevices)['output']>

/** Where people are signed in; a lost tablet is signed out from here. */
export function DevicesScreen() {
  const reading = useAction<Devices>('list-devices', {})
  const { me, pen } = useWho()
  const { nameOf } = usePeople()
  const { doing, run, working } = useDoing()
  const end = (session: string, name: string, here: boolean) =>
    run(async () => {
      await call('end-session', { session })
      if (here) await lookWho()
      else reading.again()
      return fill(words.ended, { name })
    })
  return (
    <SettingsPage part="devices">
      {!me.keeper && <p className="soft">{words.mineOnly}</p>}
      <DoingNote doing={doing} />
      <ReadingView reading={reading} again={reading.again}>
        {({ devices }) => (
          <ul className={`bare ${styles.lines}`}>
            {devices.map(({ session, name: given, since, expiresAt, people, here }) => {
              const name = given || words.unnamed
              return (
                <li key={session} className={styles.line}>
                  <div>
                    <p className={styles.name}>
                      {name} {here && <span className="soft">({words.here})</span>}
                    </p>
                    <p>{people.map(nameOf).join(', ')}</p>
                    <p className="soft">
                      {fill(words.since, { when: sayWhen(since, pen.zone) })},{' '}
                      {fill(words.until, { when: sayWhen(expiresAt, pen.zone) })}
                    </p>
                  </div>
                  <button
                    type="button"
                    disabled={working}
                    onClick={() => confirm(fill(words.endSure, { name })) && void end(session, name, here)}
                  >
                    {words.end}
                  </button>
                </li>
              )
            })}
          </ul>
        )}
      </ReadingView>
    </SettingsPage>
  )
}
