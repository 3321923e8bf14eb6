import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { papersScreen } from '#content/wording/app-papers.ts'
import type { PlanNow } from '#core/dosing/plan-now.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { connection } from '../../../journal/live.ts'
import { useSignal } from '../../../journal/signal.ts'
import { paperHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './dose-plan.module.css'

const words = dosePlanInEnglish.papers

/** The papers of the plan: sheet for the wall, labels of the syringes, emergency sheet. The server makes them. */
export function PlanPapers({ operation, plan }: { readonly operation: OperationOnFile; readonly plan: PlanNow }) {
  const { file, unsent } = useCaseView()
  const away = useSignal(connection) === 'lost'
  const names = [
    ...(plan.lines.length > 0 ? [['dose-sheet', `dose-sheet-${operation.id}`] as const] : []),
    ...(plan.lines.length > 0 && !operation.done
      ? [['syringe-labels', `syringe-labels-${operation.id}`] as const]
      : []),
    ...(plan.animal?.weight ? [['emergency-sheet', 'emergency-sheet'] as const] : []),
  ]
  return (
    <section aria-labelledby="plan-papers" data-screen-only>
      <h2 id="plan-papers">{words.title}</h2>
      {away ? (
        <p role="status">{papersScreen.away}</p>
      ) : (
        <ul className={styles.papers}>
          {names.map(([paper, name]) => (
            <li key={paper}>
              <a href={paperHref(file.stream, `${name}.pdf`)} target="_blank" rel="noreferrer">
                {fill(papersScreen.formOf, { paper: words.names[paper], form: papersScreen.forms.pdf })}
              </a>
            </li>
          ))}
        </ul>
      )}
      {unsent.size > 0 && <p>{papersScreen.unsent}</p>}
      <p className="soft">{words.help}</p>
    </section>
  )
}
