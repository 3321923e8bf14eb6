import { Link } from 'wouter'
import { formulary } from '#content/formulary/index.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { judgedAt } from '#core/dosing/plan-now.ts'
import { redCellsNow } from '#core/dosing/red-cells-now.ts'
import { fill } from '#core/outcome/finding.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { lossSoFar } from '#core/theatre/loss-so-far.ts'
import type { SheetOfCase } from '#documents/emergency-sheet/sheet-of-case.ts'
import { useMinute } from '../../../../journal/use-minute.ts'
import { saySpan } from '../../blood.tsx'
import { writeHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import { FindingList } from '../../finding-list.tsx'
import { Lost } from '../lost.tsx'
import styles from './now.module.css'

/** How much blood it has, how much is gone, and whether red cells may follow. */
export function BloodPart({ operation, made }: { readonly operation: OperationOnFile; readonly made: SheetOfCase }) {
  const { file, operations } = useCaseView()
  const loss = lossSoFar(file.theCase, anaestheticOf(operation, operations, file.theCase), bloodInSwabs)
  return (
    <section aria-labelledby="blood" className={styles.blood}>
      <h2 id="blood">{words.blood}</h2>
      {made.kind === 'sheet' ? (
        <Lost loss={loss} sheet={made.sheet} />
      ) : (
        <p className={styles.from}>{loss.sum ? fill(words.lostOnly, { span: saySpan(loss.sum) }) : words.lostNone}</p>
      )}
      {loss.refused > 0 && <p className={styles.warn}>{fill(words.refused, { count: String(loss.refused) })}</p>}
      <RedCells />
    </section>
  )
}

/** Group and match as the dose engine judges red cells; a cat that nobody typed gets none. */
function RedCells() {
  const { file, id } = useCaseView()
  const now = redCellsNow(file.theCase, judgedAt(file.theCase, useMinute()), formulary, dosingRules)
  if (!now) return null
  const { group, findings, species } = now
  return (
    <>
      <p className={styles.weight}>
        {fill(words.group, { group: group ? words.groups[group] : words.untyped })}{' '}
        {!group && species === 'cat' && words.noRedCells}
      </p>
      <FindingList findings={findings} />
      {!group && <Link href={writeHref(id, 'blood-type')}>{words.writeGroup}</Link>}
    </>
  )
}
