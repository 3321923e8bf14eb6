import { type FormEvent, useState } from 'react'
import { sessionInEnglish } from '#content/wording/app-session.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { Field } from '../design/field.tsx'
import { Modal } from '../design/modal.tsx'
import { Refused } from '../journal/api.ts'
import styles from './people.module.css'
import { pinIsRight } from './pin.ts'
import { type Enrolled, signOut, takeOver } from './session.ts'
import { SignInForm } from './sign-in.tsx'
import { useWho } from './use-who.ts'

const words = sessionInEnglish.people

/** Who acts at this shared device: take over with a PIN, sign in beside the others, sign out. */
export function People({ onClose }: { readonly onClose: () => void }) {
  const { people, me } = useWho()
  const [chosen, setChosen] = useState<string | null>(null)
  return (
    <Modal title={words.title} close={words.close} onClose={onClose}>
      <ul className={`bare ${styles.people}`}>
        {people.map((person) => (
          <li key={person.id} className={styles.person}>
            {person.id === me.id ? (
              <p>
                <span>
                  <strong>{person.name}</strong>, {shell.roles[person.role]}
                </span>
                <span className="soft">({words.you})</span>
              </p>
            ) : (
              <button
                type="button"
                className={styles.take}
                aria-expanded={chosen === person.id}
                onClick={() => setChosen(person.id)}
              >
                {person.name}, {shell.roles[person.role]}
              </button>
            )}
            {chosen === person.id && <PinForm person={person} onDone={onClose} />}
          </li>
        ))}
      </ul>
      <hr />
      {chosen === 'other' ? (
        <SignInForm done={onClose} />
      ) : (
        <div className={styles.others}>
          <button type="button" onClick={() => setChosen('other')}>
            {words.other}
          </button>
          <div className={styles.outs}>
            <button type="button" data-weight="quiet" onClick={() => void signOut(false)}>
              {fill(words.signOut, { name: me.name })}
            </button>
            {people.length > 1 && (
              <button type="button" data-weight="quiet" onClick={() => void signOut(true)}>
                {words.everyoneOut}
              </button>
            )}
          </div>
        </div>
      )}
    </Modal>
  )
}

function PinForm({ person, onDone }: { readonly person: Enrolled; readonly onDone: () => void }) {
  const [pin, setPin] = useState('')
  const [error, setError] = useState<string | null>(null)
  const [checking, setChecking] = useState(false)
  if (person.pin === null) return <p className="soft">{fill(words.noPin, { name: person.name })}</p>
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    setChecking(true)
    setError(null)
    try {
      if (await pinIsRight(person, pin)) {
        await takeOver(person.id)
        onDone()
        return
      }
      setError(fill(words.wrongPin, { name: person.name }))
    } catch (failure) {
      if (!(failure instanceof Refused)) throw failure
      setError(failure.message)
    }
    setPin('')
    setChecking(false)
  }
  return (
    <form onSubmit={submit} className={styles.pin}>
      <Field label={fill(words.pin, { name: person.name })} error={error}>
        {(control) => (
          <input
            {...control}
            // biome-ignore lint/a11y/noAutofocus: the person has just asked for this field
            autoFocus
            type="password"
            inputMode="numeric"
            autoComplete="off"
            required
            value={pin}
            onChange={(event) => setPin(event.target.value)}
          />
        )}
      </Field>
      <button type="submit" data-weight="main" disabled={checking}>
        {checking ? words.checking : words.take}
      </button>
    </form>
  )
}
