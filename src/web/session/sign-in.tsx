import { type FormEvent, useState } from 'react'
import { sessionInEnglish } from '#content/wording/app-session.ts'
import { Notice } from '../design/notice.tsx'
import { TextField } from '../design/text-field.tsx'
import { Refused, Unreachable } from '../journal/api.ts'
import { outbox } from '../journal/outbox.ts'
import { useSignal } from '../journal/signal.ts'
import { useFaultFocus } from '../screens/case/use-fault-focus.ts'
import { Door } from './door.tsx'
import { type FrontDoor, signIn } from './session.ts'

const words = sessionInEnglish.signIn

/** The front door of a clinic that exists: name and password. */
export function SignIn({ door, because }: { readonly door: FrontDoor; readonly because: string | null }) {
  const waiting = useSignal(outbox)
  return (
    <Door title={words.title} clinic={door.clinicName} invented={door.invented}>
      {because && <Notice>{because}</Notice>}
      {waiting.length > 0 && <Notice>{words.waitingHere}</Notice>}
      <SignInForm />
      {door.connection === 'plain' && (
        <Notice>
          <p>{words.plain}</p>
          <p>
            <a href="/connect">{words.connect}</a>
          </p>
        </Notice>
      )}
    </Door>
  )
}

/** Also used by the second person who signs in at a shared device. */
export function SignInForm({ done }: { readonly done?: () => void }) {
  const [login, setLogin] = useState('')
  const [password, setPassword] = useState('')
  const [error, setError] = useState<string | null>(null)
  const [wrong, setWrong] = useState<string | null>(null)
  const [working, setWorking] = useState(false)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    setWorking(true)
    setError(null)
    setWrong(null)
    try {
      await signIn(login, password)
      done?.()
    } catch (failure) {
      if (failure instanceof Unreachable) setError(words.unreachable)
      // Which of the two is wrong nobody is told; the password is what is typed again.
      else if (failure instanceof Refused && failure.code === 'wrong-login') setWrong(failure.message)
      else if (failure instanceof Refused) setError(failure.message)
      else throw failure
      setWorking(false)
      setTries((before) => before + 1)
    }
  }
  return (
    <form ref={form} onSubmit={submit} className="stack">
      <TextField
        label={words.login}
        autoComplete="username"
        autoCapitalize="none"
        spellCheck={false}
        required
        value={login}
        onText={setLogin}
      />
      <TextField
        label={words.password}
        error={wrong}
        type="password"
        autoComplete="current-password"
        required
        value={password}
        onText={setPassword}
      />
      {error && (
        <Notice tone="warn" live>
          {error}
        </Notice>
      )}
      <p>
        <button type="submit" data-weight="main" disabled={working}>
          {working ? words.working : words.enter}
        </button>
      </p>
    </form>
  )
}
