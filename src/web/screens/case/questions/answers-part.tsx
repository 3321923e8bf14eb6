import { Fragment } from 'react'
import { Link } from 'wouter'
import { questionRules } from '#content/questionnaires/question-rules.ts'
import { questionsApp } from '#content/wording/app-questions.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { questionsInEnglish } from '#content/wording/questions.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { fill } from '#core/outcome/finding.ts'
import { rootOf } from '#core/owed/operations.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { type AnswerLine, givenTo } from '#core/questionnaire/answer-line.ts'
import type { Asking } from '#core/questionnaire/askings.ts'
import { fieldOf, type Posed, posedIn, type QuestionWords, sayPosed } from '#core/questionnaire/put-together.ts'
import { WithSides } from '../../../design/with-sides.tsx'
import { entryHref, writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './questions.module.css'

const words = questionsApp.answers
const asked: QuestionWords = questionsInEnglish
const cannot: Readonly<Record<string, string>> = questionsApp.cannot
const sidesInWords = { LEFT: 'LEFT', RIGHT: 'RIGHT' } as const

/** Every question with its answer, whatever language it was answered in; what was left out is said. */
export function AnswersPart({ asking, line }: { readonly asking: Asking; readonly line: AnswerLine }) {
  const { file, id } = useCaseView()
  const species = file.theCase.latest('identity')?.body.species
  const posed = species ? posedIn(asking, species) : []
  const groups = [...new Set(posed.map(({ side }) => side))]
  return (
    <section className={styles.part} aria-labelledby="came-back">
      <h2 id="came-back">{words.title}</h2>
      {groups.map((side) => (
        <Fragment key={side ?? 'animal'}>
          <h3>{side === null ? words.animal : <WithSides text={fill(words.ear, { side })} />}</h3>
          <dl className={styles.answers}>
            {posed
              .filter((one) => one.side === side)
              .map((one) => (
                <OneAnswer key={fieldOf(one)} one={one} line={line} />
              ))}
          </dl>
        </Fragment>
      ))}
      <p data-screen-only>
        <Link href={entryHref(id, line.header.id)}>{words.entry}</Link>
      </p>
    </section>
  )
}

function OneAnswer({ one, line }: { readonly one: Posed; readonly line: AnswerLine }) {
  const { file, id, owed } = useCaseView()
  const { question, side } = one
  const said = asked[question.id]
  if (!said) return null
  const naming = { name: file.theCase.latest('identity')?.body.name ?? '', sides: sidesInWords }
  const given = givenTo(line.body.answers, question.id, side)
  const report = given && question.reports[given.answer]
  const root = rootOf(file.theCase, line.header.id)
  const key = report === undefined ? null : side === null ? report : `${report}:${side}`
  const items = key === null ? [] : owed.filter((item) => item.id.endsWith(`:${root}:${key}`))
  const offers = report === undefined ? null : questionRules.reports[report].offers
  return (
    <div data-report={report !== undefined}>
      <dt>
        <WithSides text={sayPosed(said.ask, side, naming)} />
      </dt>
      <dd>
        <p className={styles.given} data-none={given === undefined}>
          {given === undefined ? words.none : sayPosed(said.choices[given.answer] ?? given.answer, side, naming)}
        </p>
        {given && cannot[question.id] && (
          <p className="soft">{fill(words.cannot, { what: cannot[question.id] ?? '' })}</p>
        )}
        {items.map((item) => (
          <p key={item.id} className={styles.owed}>
            <WithSides text={fill(words.report, { what: sayOwed(item, owedInEnglish).what })} />
          </p>
        ))}
        {offers !== null && side !== null && (
          <p data-screen-only>
            <Link href={writeHref(id, 'late-event', { subject: { kind: 'ear', animal: animalIn(file), side } })}>
              {fill(words.offer, { side })}
            </Link>
          </p>
        )}
      </dd>
    </div>
  )
}
