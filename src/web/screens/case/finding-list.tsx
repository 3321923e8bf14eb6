import { caseInEnglish as words } from '#content/wording/app-case.ts'
import type { DoseFinding } from '#core/dosing/findings.ts'
import { bySeverity } from '#core/outcome/finding.ts'
import { sayFinding } from './dosing.ts'
import styles from './finding-list.module.css'

/** What a check found, worst first; the level stands as a word before the sentence. */
export function FindingList({ findings }: { readonly findings: readonly DoseFinding[] }) {
  if (findings.length === 0) return null
  return (
    <ul className={styles.findings}>
      {bySeverity(findings).map((finding) => {
        const said = sayFinding(finding)
        return (
          <li key={`${finding.code} ${said}`} data-level={finding.level}>
            <strong>{words.findings[finding.level]}</strong> {said}
          </li>
        )
      })}
    </ul>
  )
}
