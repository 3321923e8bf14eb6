import { Link } from 'wouter'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { nowInEnglish } from '#content/wording/app-now.ts'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { fill } from '#core/outcome/finding.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { lossSoFar } from '#core/theatre/loss-so-far.ts'
import { sheetOfCase } from '#documents/emergency-sheet/sheet-of-case.ts'
import { saySpan } from '../blood.tsx'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { Lost } from './lost.tsx'
import styles from './room.module.css'

/** The loss of this anaesthetic as "at least – at most", its share of this animal's blood, and the marks it reached. */
export function LossPart({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id, operations } = useCaseView()
  const loss = lossSoFar(file.theCase, anaestheticOf(operation, operations, file.theCase), bloodInSwabs)
  const made = sheetOfCase(file)
  const subject = aboutOperation(file, operation.id)
  return (
    <section aria-label={words.lossTitle} className={styles.loss}>
      {made.kind === 'sheet' ? (
        <Lost loss={loss} sheet={made.sheet} isShort />
      ) : (
        <p>
          {loss.sum ? fill(nowInEnglish.lostOnly, { span: saySpan(loss.sum) }) : nowInEnglish.lostNone}{' '}
          {words.lossNoVolume}
        </p>
      )}
      {loss.refused > 0 && <p className={styles.stop}>{fill(nowInEnglish.refused, { count: String(loss.refused) })}</p>}
      <p data-screen-only>
        <Link href={writeHref(id, 'blood-loss', { subject })}>{words.loss}</Link>
      </p>
    </section>
  )
}
