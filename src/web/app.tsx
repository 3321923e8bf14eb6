import { sessionInEnglish } from '#content/wording/app-session.ts'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { useSignal } from './journal/signal.ts'
import { Door } from './session/door.tsx'
import { FirstRun } from './session/first-run.tsx'
import { session } from './session/session.ts'
import { SignIn } from './session/sign-in.tsx'
import { Shell } from './shell/shell.tsx'

/** What stands on the screen: the way in, or the clinic. */
export function App() {
  const now = useSignal(session)
  switch (now.kind) {
    case 'starting':
      return <p role="status">{words.connection.starting}</p>
    case 'nobody-answers':
      return (
        <Door title={sessionInEnglish.nobodyAnswers.title}>
          <p role="status">{sessionInEnglish.nobodyAnswers.help}</p>
        </Door>
      )
    case 'out':
      return now.door.state === 'first-run' ? (
        <FirstRun door={now.door} />
      ) : (
        <SignIn door={now.door} because={now.because} />
      )
    case 'in':
      return <Shell />
  }
}
