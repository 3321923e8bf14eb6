import { type FormEvent, useState } from 'react'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { peopleInEnglish as words } from '#content/wording/app-settings-people.ts'
import { fill } from '#core/outcome/finding.ts'
import { Modal } from '../../design/modal.tsx'
import { TextField } from '../../design/text-field.tsx'
import { call } from '../../journal/api.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import type { Person } from './staff.ts'

/** The account of a person: login, first or new password, closed or open. */
export function AccountForm({ person, onClose }: { readonly person: Person; readonly onClose: () => void }) {
  const { me } = useWho()
  const [login, setLogin] = useState(person.login ?? '')
  const [password, setPassword] = useState('')
  const { doing, run, working } = useDoing()
  const isNew = person.account === 'none'
  const put = async (active: boolean) => {
    const done = await run(async () => {
      await call('put-account', { person: person.id, login, password: password === '' ? null : password, active })
      return settingsInEnglish.saved
    })
    if (done) onClose()
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    void put(person.account !== 'closed')
  }
  return (
    <Modal title={fill(words.accountTitle, { name: person.name })} close={settingsInEnglish.cancel} onClose={onClose}>
      <form onSubmit={submit} className="stack">
        <TextField
          label={words.login}
          help={words.loginHelp}
          required
          maxLength={80}
          autoCapitalize="none"
          autoComplete="off"
          spellCheck={false}
          value={login}
          onText={setLogin}
        />
        <TextField
          label={isNew ? words.firstPassword : words.newPassword}
          help={isNew ? words.passwordHelp : `${words.keepPassword} ${words.passwordHelp}`}
          type="password"
          autoComplete="new-password"
          required={isNew}
          value={password}
          onText={setPassword}
        />
        <DoingNote doing={doing} />
        <div className="row">
          <button type="submit" data-weight="main" disabled={working}>
            {isNew ? words.giveAccount : words.changeAccount}
          </button>
          {person.account === 'active' && person.id !== me.id && (
            <button
              type="button"
              disabled={working}
              onClick={() => confirm(fill(words.closeSure, { name: person.name })) && void put(false)}
            >
              {words.close}
            </button>
          )}
          {person.account === 'closed' && (
            <button type="button" disabled={working} onClick={() => void put(true)}>
              {words.reopen}
            </button>
          )}
        </div>
      </form>
    </Modal>
  )
}
