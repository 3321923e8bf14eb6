import { Link } from 'wouter'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { emergencyNotes } from '#content/wording/emergency.ts'
import { emergencySheetWords } from '#content/wording/papers-emergency.ts'
import { fill } from '#core/outcome/finding.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { whenOf } from '#documents/case/case-words.ts'
import type { SheetOfCase } from '#documents/emergency-sheet/sheet-of-case.ts'
import { writeHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import styles from './now.module.css'

/** The weight that every volume stands on and how it was measured, or that there is none and what that means. */
export function WeightPart({ made }: { readonly made: SheetOfCase }) {
  const { id } = useCaseView()
  if (made.kind !== 'sheet') {
    const isWeight = made.kind === 'no-weight'
    return (
      <div className={styles.warn} role="alert">
        <p>{words.gaps[made.kind]}</p>
        <Link href={writeHref(id, isWeight ? 'weight' : 'identity')} data-weight="main">
          {isWeight ? words.writeWeight : words.writeIdentity}
        </Link>
      </div>
    )
  }
  const { weighed, sheet } = made
  const about = {
    shown: inBothUnits(sheet.weight),
    how: emergencySheetWords.how[weighed.body.how],
    date: whenOf(weighed),
  }
  return (
    <div>
      <p className={styles.weight}>{fill(words.weight, about)}</p>
      {sheet.findings.map(({ code, about: named }) => (
        <p key={code} className={code.startsWith('weight') ? styles.warn : undefined}>
          {fill(emergencyNotes[code], named)}
        </p>
      ))}
    </div>
  )
}
