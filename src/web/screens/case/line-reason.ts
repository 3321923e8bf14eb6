import { usualPlanInEnglish as words } from '#content/wording/app-plan.ts'
import type { DoseLine } from '#core/dosing/request.ts'
import { fill } from '#core/outcome/finding.ts'

/** The most characters that the reason of a planned line holds. */
const longest = 300

/** Whether a finding stands against the line that only a person can answer. */
export function asksReason({ findings }: Pick<DoseLine, 'findings'>): boolean {
  return findings.some(({ level }) => level === 'confirm')
}

/** Why this dose, and beside it why the line is right although the check asks. */
export function becauseOf(because: string, reason: string): string {
  const [dose, all] = [because.trim(), reason.trim()]
  return all === '' ? dose : fill(words.although, { because: dose, reason: all })
}

/** What is wrong with the reason that a line asks for; null when nothing is. Nothing is ever cut off in silence. */
export function reasonFault(line: Pick<DoseLine, 'findings'>, because: string, reason: string): string | null {
  if (!asksReason(line)) return null
  const said = reason.trim()
  if (said === '') return words.insistMissing
  const over = becauseOf(because, said).length - longest
  return over > 0 ? fill(words.insistLong, { most: String(Math.max(0, said.length - over)) }) : null
}
