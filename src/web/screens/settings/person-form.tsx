import { type FormEvent, useState } from 'react'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { peopleInEnglish as words } from '#content/wording/app-settings-people.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { personRow } from '#core/journal/registers.ts'
import { fill } from '#core/outcome/finding.ts'
import { Field } from '../../design/field.tsx'
import { Modal } from '../../design/modal.tsx'
import { TextField } from '../../design/text-field.tsx'
import { call } from '../../journal/api.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import type { Person } from './staff.ts'

const roles = personRow.shape.role.options

/** A person of the clinic; nobody changes their own role. */
export function PersonForm({ person, onClose }: { readonly person: Person | null; readonly onClose: () => void }) {
  const { me } = useWho()
  const [name, setName] = useState(person?.name ?? '')
  const [role, setRole] = useState<string>(person?.role ?? '')
  const [letters, setLetters] = useState(person?.letters ?? '')
  const { doing, run, working } = useDoing()
  const own = person?.id === me.id
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    const body = { name: name.trim(), role, letters: letters.trim() || null }
    const done = await run(async () => {
      await call('put-person', { id: person?.id ?? null, body })
      return settingsInEnglish.saved
    })
    if (done) onClose()
  }
  return (
    <Modal
      title={person ? fill(words.changeTitle, { name: person.name }) : words.addTitle}
      close={settingsInEnglish.cancel}
      onClose={onClose}
    >
      <form onSubmit={submit} className="stack">
        <TextField label={words.name} required maxLength={300} value={name} onText={setName} />
        <Field label={words.role} help={own ? words.ownRole : undefined}>
          {(control) => (
            <select {...control} required disabled={own} value={role} onChange={(event) => setRole(event.target.value)}>
              <option value="">{words.chooseRole}</option>
              {roles.map((one) => (
                <option key={one} value={one}>
                  {shell.roles[one]}
                </option>
              ))}
            </select>
          )}
        </Field>
        <TextField
          label={`${words.letters} (${settingsInEnglish.optional})`}
          maxLength={300}
          value={letters}
          onText={setLetters}
        />
        <DoingNote doing={doing} />
        <p>
          <button type="submit" data-weight="main" disabled={working}>
            {working ? settingsInEnglish.saving : settingsInEnglish.save}
          </button>
        </p>
      </form>
    </Modal>
  )
}
