import { settingsInEnglish as words } from '#content/wording/app-settings.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Role } from '#core/people/may-write.ts'
import { useWho } from '../../session/use-who.ts'

/**
 * Null when the person acting now may do it; otherwise the sentence that says who may. `keeper`: whoever opened the
 * clinic may as well. The server decides; this only says it before.
 */
export function useRefusal(roles: readonly Role[], keeper = false): string | null {
  const { me } = useWho()
  if (roles.includes(me.role) || (keeper && me.keeper)) return null
  const named = [...roles.map((role) => shell.roles[role]), ...(keeper ? [words.orKeeper] : [])]
  return fill(words.mayNot, { role: shell.roles[me.role], roles: named.join(', ') })
}
