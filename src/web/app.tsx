import { useLocation } from 'wouter'
import { sessionInEnglish } from '#content/wording/app-session.ts'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { useSignal } from './journal/signal.ts'
import { Door } from './session/door.tsx'
import { FirstRun } from './session/first-run.tsx'
import { type FrontDoor, isOfCase, session } from './session/session.ts'
import { SignIn } from './session/sign-in.tsx'
import { Shell } from './shell/shell.tsx'

/** What stands on the screen: the way in, or the clinic. */
export function App() {
  const now = useSignal(session)
  const [path] = useLocation()
  switch (now.kind) {
    case 'starting':
      return <p role="status">{words.connection.starting}</p>
    case 'nobody-answers':
      return <NobodyAnswers />
    case 'out':
      return <WayIn door={now.door} because={now.because} />
    case 'in':
      return now.lapsed && !isOfCase(path) ? <WayIn door={now.door} because={null} /> : <Shell />
  }
}

function WayIn({ door, because }: { readonly door: FrontDoor | null; readonly because: string | null }) {
  if (door === null) return <NobodyAnswers />
  return door.state === 'first-run' ? <FirstRun door={door} /> : <SignIn door={door} because={because} />
}

function NobodyAnswers() {
  return (
    <Door title={sessionInEnglish.nobodyAnswers.title}>
      <p role="status">{sessionInEnglish.nobodyAnswers.help}</p>
    </Door>
  )
}
