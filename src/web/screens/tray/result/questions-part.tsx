import { susceptibility } from '#content/susceptibility/index.ts'
import { takeInResultInEnglish } from '#content/wording/app-take-in-result.ts'
import type { LaboratoryReport } from '#core/laboratory/report.ts'
import { termOf } from '#core/laboratory/terms.ts'
import { type Answers, noAnswers, type Question, questionsOf } from '#core/laboratory/to-result.ts'
import { fill } from '#core/outcome/finding.ts'
import { Choices } from '../../../design/choices.tsx'
import { Field } from '../../../design/field.tsx'

const { questions: words, statuses, growths } = takeInResultInEnglish

/** What the report does not say itself. Asked questions stay in sight with their answer, so that it can be changed. */
export function QuestionsPart(props: {
  readonly report: LaboratoryReport
  readonly answers: Answers
  readonly put: (part: Partial<Answers>) => void
}) {
  const { report, answers, put } = props
  const asked = questionsOf(report, noAnswers, susceptibility)
  if (asked.length === 0) return null
  return (
    <section className="stack" aria-label={words.title}>
      <h3>{words.title}</h3>
      {asked.map((one) => (
        <OneQuestion
          key={'printed' in one ? `${one.kind} ${one.printed}` : one.kind}
          question={one}
          answers={answers}
          put={put}
        />
      ))}
    </section>
  )
}

function OneQuestion(props: {
  readonly question: Question
  readonly answers: Answers
  readonly put: (part: Partial<Answers>) => void
}) {
  const { question: one, answers, put } = props
  switch (one.kind) {
    case 'status':
      return (
        <Choices
          legend={words.status}
          value={answers.status}
          options={['preliminary', 'final', 'corrected'] as const}
          say={(status) => statuses[status]}
          onChoose={(status) => put({ status })}
        />
      )
    case 'growth':
      return (
        <Choices
          legend={words.growth}
          value={answers.growth}
          options={['none', 'growth', 'not-a-culture'] as const}
          say={(growth) => growths[growth]}
          onChoose={(growth) => put({ growth })}
        />
      )
    case 'unit':
      return (
        <Choices
          legend={words.unit}
          value={answers.unit}
          options={['mg/L', 'mm', 'unknown'] as const}
          say={(unit) => words.units[unit]}
          onChoose={(unit) => put({ unit })}
        />
      )
    case 'organism':
      return (
        <NameQuestion
          label={fill(words.organism, { printed: one.printed })}
          near={one.near}
          list={susceptibility.organisms}
          answered={Object.hasOwn(answers.organisms, one.printed)}
          value={termOf(answers.organisms, one.printed)}
          put={(id) => put({ organisms: { ...answers.organisms, [one.printed]: id } })}
        />
      )
    case 'agent':
      return (
        <NameQuestion
          label={fill(words.agent, { printed: one.printed })}
          near={one.near}
          list={susceptibility.agents}
          answered={Object.hasOwn(answers.agents, one.printed)}
          value={termOf(answers.agents, one.printed)}
          put={(id) => put({ agents: { ...answers.agents, [one.printed]: id } })}
        />
      )
  }
}

/** A name nobody knows: the near ones first, then all; nothing is chosen beforehand. */
function NameQuestion(props: {
  readonly label: string
  readonly near: readonly string[]
  readonly list: readonly { readonly id: string; readonly name: string }[]
  readonly answered: boolean
  readonly value: string | null
  readonly put: (id: string | null) => void
}) {
  const { label, near, list, answered, value, put } = props
  const nearest = near.flatMap((id) => list.find((one) => one.id === id) ?? [])
  const rest = [...list.filter(({ id }) => !near.includes(id))].sort((a, b) => a.name.localeCompare(b.name, 'en'))
  return (
    <Field label={label}>
      {(control) => (
        <select
          {...control}
          value={answered ? (value ?? 'none') : ''}
          onChange={(event) => put(event.target.value === 'none' ? null : event.target.value)}
        >
          <option value="" disabled />
          {nearest.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
          <option value="none">{words.none}</option>
          <optgroup label={words.other}>
            {rest.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </optgroup>
        </select>
      )}
    </Field>
  )
}
