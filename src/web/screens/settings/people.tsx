import { useState } from 'react'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { peopleInEnglish as words } from '#content/wording/app-settings-people.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useAction } from '../../journal/cases.ts'
import { useWho } from '../../session/use-who.ts'
import { AccountForm } from './account-form.tsx'
import { SettingsPage } from './frame.tsx'
import { LeaveForm, Leaves } from './leaves.tsx'
import { PersonForm } from './person-form.tsx'
import styles from './settings.module.css'
import type { Person, Staff } from './staff.ts'

type Opened = { readonly form: 'person' | 'account' | 'leave'; readonly person: Person | null }

/** Everybody who works here: role, account, leave. */
export function PeopleScreen() {
  const reading = useAction<Staff>('list-people', {})
  const { me } = useWho()
  const [opened, setOpened] = useState<Opened | null>(null)
  const refusal = me.keeper ? null : words.keeperOnly
  const close = () => {
    setOpened(null)
    reading.again()
  }
  return (
    <SettingsPage
      part="people"
      actions={
        <button
          type="button"
          data-weight="main"
          disabled={refusal !== null}
          onClick={() => setOpened({ form: 'person', person: null })}
        >
          {words.add}
        </button>
      }
    >
      {refusal && (
        <p className="soft">
          {refusal} {words.ownLeave}
        </p>
      )}
      <ReadingView reading={reading} again={reading.again}>
        {(staff) => (
          <>
            <ul className={`bare ${styles.lines}`}>
              {staff.people.map((person) => (
                <PersonLine key={person.id} person={person} staff={staff} refusal={refusal} onOpen={setOpened} />
              ))}
            </ul>
            <Leaves staff={staff} onDone={reading.again} />
            {opened?.form === 'person' && <PersonForm person={opened.person} onClose={close} />}
            {opened?.form === 'account' && opened.person && <AccountForm person={opened.person} onClose={close} />}
            {opened?.form === 'leave' && opened.person && (
              <LeaveForm person={opened.person} staff={staff} onClose={close} />
            )}
          </>
        )}
      </ReadingView>
    </SettingsPage>
  )
}

function PersonLine(props: {
  readonly person: Person
  readonly staff: Staff
  readonly refusal: string | null
  readonly onOpen: (opened: Opened) => void
}) {
  const { person, staff, refusal, onOpen } = props
  const { me } = useWho()
  const deputy = staff.people.find(({ id }) => id === person.today)
  return (
    <li className={styles.line}>
      <div>
        <p className={styles.name}>
          {person.name}
          {person.letters && <span className="soft">, {person.letters}</span>}
        </p>
        <p>
          {shell.roles[person.role]} · {sayAccount(person)} ·{' '}
          {person.today === person.id || !deputy ? words.todayHere : fill(words.todayDeputy, { name: deputy.name })}
        </p>
      </div>
      <div className="row">
        <button type="button" disabled={refusal !== null} onClick={() => onOpen({ form: 'person', person })}>
          {settingsInEnglish.change}
          <span className="said"> {person.name}</span>
        </button>
        <button type="button" disabled={refusal !== null} onClick={() => onOpen({ form: 'account', person })}>
          {words.account}
          <span className="said"> {person.name}</span>
        </button>
        <button
          type="button"
          disabled={refusal !== null && person.id !== me.id}
          onClick={() => onOpen({ form: 'leave', person })}
        >
          {words.leave}
          <span className="said"> {person.name}</span>
        </button>
      </div>
    </li>
  )
}

function sayAccount({ account, login }: Person): string {
  if (account !== 'active') return words.accounts[account]
  return login === null ? words.accounts.activeHidden : fill(words.accounts.active, { login })
}
