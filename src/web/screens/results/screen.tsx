import { Link } from 'wouter'
import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import { whatGrowsInEnglish as grows } from '#content/wording/app-what-grows.ts'
import { yearsInEnglish as years } from '#content/wording/app-years.ts'
import { ownRulesOf } from '#core/evidence/own/own-rules.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { Caution } from '../../design/caution.tsx'
import { ListsBehind } from '../../design/lists-behind.tsx'
import { Page } from '../../design/page.tsx'
import { Provenance } from '../../design/provenance.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { useAction, useHouse } from '../../journal/cases.ts'
import { idOf, type OperationOf, OperationResults, sayOperation } from './operation-results.tsx'
import styles from './results.module.css'

/** Our own counted results: how much is known, what was counted, and what owners hear of it. */
export function ResultsScreen() {
  const house = useHouse()
  const own = useAction<OwnFiguresAnswer>('read-own-figures', {})
  return (
    <Page title={words.title} lead={words.lead}>
      <p>
        <Link href="/results/grows">{grows.link}</Link> {grows.linkLead}
      </p>
      <p>
        <Link href="/results/years">{years.link}</Link> {years.linkLead}
      </p>
      <ReadingView reading={house}>
        {({ file }) => (
          <ReadingView reading={own} again={own.again}>
            {(answer) => <Results answer={answer} file={file} again={own.again} />}
          </ReadingView>
        )}
      </ReadingView>
    </Page>
  )
}

type About = { readonly answer: OwnFiguresAnswer; readonly file: CaseFile; readonly again: () => void }

function Results({ answer, file, again }: About) {
  const rules = ownRulesOf(file.house, ownCounting)
  const operations = new Map(
    answer.counts.map((count) => [`${count.question.species} ${count.question.procedure}`, count.question]),
  )
  return (
    <div className="stack">
      <ListsBehind remaking={answer.remaking} />
      {operations.size === 0 ? (
        <p role="status">{words.none}</p>
      ) : (
        <p className="soft">{fill(words.counted, { day: sayCalendarDay(answer.today) })}</p>
      )}
      {operations.size > 1 && (
        <nav aria-label={words.contents}>
          <ul className={`bare ${styles.contents}`}>
            {[...operations.values()].map((one) => (
              <li key={idOf(one)}>
                <a href={`#${idOf(one)}`}>{sayOperation(one)}</a> <span className="soft">{sayEars(answer, one)}</span>
              </li>
            ))}
          </ul>
        </nav>
      )}
      {[...operations.entries()].map(([key, { species, procedure }]) => (
        <OperationResults
          key={key}
          species={species}
          procedure={procedure}
          counts={answer.counts.filter(
            ({ question }) => question.species === species && question.procedure === procedure,
          )}
          byReason={answer.byReason.filter((one) => one.species === species && one.procedure === procedure)}
          times={answer.times.find((one) => one.species === species && one.procedure === procedure)}
          today={answer.today}
          rules={rules}
          file={file}
          again={again}
        />
      ))}
      <details>
        <summary>{words.how}</summary>
        <ul className={styles.rules}>
          {(Object.keys(words.rules) as (keyof typeof words.rules)[]).map((rule) => (
            <li key={rule}>
              {fill(words.rules[rule], { value: String(rules[rule].value) })} <Provenance fact={rules[rule]} />
            </li>
          ))}
        </ul>
        <p>{words.baseline}</p>
        <p>{words.differs}</p>
      </details>
      <Caution />
    </div>
  )
}

/** How many ears of it are on record, whatever is known of them. */
function sayEars({ byReason }: OwnFiguresAnswer, { species, procedure }: OperationOf): string {
  const some = byReason.filter((one) => one.species === species && one.procedure === procedure)
  const ears = some.reduce((sum, one) => sum + one.ears, 0)
  return sayCount(words.contentsEars, ears)
}
