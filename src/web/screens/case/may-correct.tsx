import type { ReactNode } from 'react'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Role, writersOf } from '#core/people/may-write.ts'
import { Notice } from '../../design/notice.tsx'
import { useWho } from '../../session/use-who.ts'

/** Whoever may write a kind may take back, refile and settle it, as long as it still stands. */
export function mayCorrect(line: Line, role: Role): boolean {
  return line.state === 'live' && writersOf(line.header.kind).includes(role)
}

/** Why this person cannot do it, or that it was done already. */
export function MayNotCorrect({ line }: { readonly line: Line }) {
  if (line.state !== 'live') {
    return (
      <Notice>
        <p>{caseInEnglish.write.standsNoMore}</p>
      </Notice>
    )
  }
  return (
    <MayNotWrite kind={line.header.kind}>
      <p>{caseInEnglish.write.mayNotHelp}</p>
    </MayNotWrite>
  )
}

/** That the role of this person does not write a kind, and whose does. */
export function MayNotWrite({ kind, children }: { readonly kind: string; readonly children?: ReactNode }) {
  const { me } = useWho()
  const roles = writersOf(kind).map((role) => shell.roles[role])
  const title = fill(caseInEnglish.write.mayNot, { role: shell.roles[me.role], roles: roles.join(', ') })
  return <Notice title={title}>{children}</Notice>
}
