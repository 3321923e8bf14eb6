import { Link } from 'wouter'
import { questionsApp as words } from '#content/wording/app-questions.ts'
import { fill } from '#core/outcome/finding.ts'
import { isOpen } from '#core/questionnaire/askings.ts'
import { questionsHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import panels from '../panels.module.css'
import styles from './questions.module.css'
import { StateLine } from './state-line.tsx'
import { sayOccasion, useAskings } from './use-askings.ts'

/** What the owner was asked and when, what came back, and what is not answered; nothing before the first time of asking. */
export function QuestionsPart() {
  const { file, id } = useCaseView()
  const all = useAskings()
  const hasDied = file.theCase.latest('death') !== undefined
  const shown = hasDied ? all.filter(({ state }) => state === 'answered') : all
  if (all.every(({ state }) => state === 'later')) return null
  return (
    <section className={panels.panel} aria-labelledby="questions-asked">
      <h3 id="questions-asked">{words.title}</h3>
      {hasDied && <p>{words.died}</p>}
      <ul className={`bare ${styles.askings}`}>
        {shown.map((asking) => {
          const occasion = sayOccasion(asking, all)
          return (
            <li key={asking.key} data-state={asking.state}>
              <p>
                <strong>{occasion}.</strong> <StateLine asking={asking} />
              </p>
              {(isOpen(asking) || asking.answers !== null) && (
                <p data-screen-only>
                  <Link href={questionsHref(id, asking.key)} aria-label={fill(words.openOf, { occasion })}>
                    {words.open}
                  </Link>
                </p>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
