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
  const { me } = useWho()
  if (line.state !== 'live') {
    return (
      <Notice>
        <p>{caseInEnglish.write.standsNoMore}</p>
      </Notice>
    )
  }
  const roles = writersOf(line.header.kind).map((role) => shell.roles[role])
  return (
    <Notice title={fill(caseInEnglish.write.mayNot, { role: shell.roles[me.role], roles: roles.join(', ') })}>
      <p>{caseInEnglish.write.mayNotHelp}</p>
    </Notice>
  )
}
