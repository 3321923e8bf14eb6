import { contactsInEnglish as words } from '#content/wording/app-contacts.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { mayPut } from '#core/people/may-put.ts'
import { Notice } from '../../../design/notice.tsx'
import { useWho } from '../../../session/use-who.ts'

/** Whether who acts now may change how people are reached; the server decides by the same table. */
export function useMayPut(): boolean {
  const { role } = useWho().me
  return mayPut.contact.some((one) => one === role)
}

export function MayNotPut() {
  const { role } = useWho().me
  const roles = mayPut.contact.map((one) => shell.roles[one])
  return <Notice title={fill(words.mayNot, { role: shell.roles[role], roles: roles.join(', ') })} />
}
