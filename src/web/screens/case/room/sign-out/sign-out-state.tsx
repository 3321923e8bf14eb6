import { Link } from 'wouter'
import { signOutInEnglish as words } from '#content/wording/app-sign-out.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { pauseHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import room from '../room.module.css'
import { useSignOut } from './use-sign-out.ts'

/** Whether an operation that was begun is signed out, in one line, with the way there. */
export function SignOutState({ operation }: { readonly operation: OperationOnFile }) {
  const { id } = useCaseView()
  const { state, unsettled } = useSignOut(operation)
  if (!operation.done) return null
  return (
    <p>
      <strong className={state === 'signed-out' ? undefined : room.stop}>{words.states[state]}</strong>
      {unsettled.length > 0 && `, ${sayCount(words.count, unsettled.length)}`}.{' '}
      <Link href={`${pauseHref(id, operation.id, 'before-leaving')}?at=end`}>{words.toSignOut}</Link>
    </p>
  )
}
