import { Link } from 'wouter'
import { choiceInEnglish } from '#content/wording/app-choice.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import type { EarFactId } from '#core/choice/ear-fact.ts'
import { settledBy } from '#core/choice/settled-by.ts'
import type { EarSheet } from '#core/choice/worksheet.ts'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './choice.module.css'

/** The way to the form that would settle it. */
export function SettleLink({ fact, sheet }: { readonly fact: EarFactId; readonly sheet: EarSheet }) {
  const { id, file } = useCaseView()
  const kind = settledBy[fact]
  return (
    <Link
      href={writeHref(id, kind, { subject: { kind: 'ear', animal: animalIn(file), side: sheet.side } })}
      className={styles.settle}
      aria-label={`${choiceInEnglish.routes.write}: ${choiceInEnglish.facts[fact]}`}
      data-screen-only
    >
      {choiceInEnglish.routes.write}
    </Link>
  )
}
