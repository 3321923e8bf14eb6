import { procedures } from '#content/procedures/index.ts'
import { studies } from '#content/studies/index.ts'
import { caseInEnglish, namesInEnglish } from '#content/wording/app-case.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { type ProcedureId, procedureIds } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { type Published, publishedPerUnit } from '#core/evidence/published.ts'
import { sayPublished } from '#core/evidence/say-published.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { whyOdds } from '#core/why/why-odds.ts'
import { Caution } from '../../design/caution.tsx'
import { Why } from '../../design/why.tsx'
import { useCaseView } from './case-view.ts'
import styles from './panels.module.css'

const words = caseInEnglish.odds

/** What studies found after the operations that are chosen, agreed or booked for this animal. */
export function Odds() {
  const { file } = useCaseView()
  const species = file.theCase.latest('identity')?.body.species
  if (!species) return null
  return proceduresIn(file.theCase).map((procedure) => (
    <details key={procedure} className={styles.opener}>
      <summary>
        {fill(words.title, {
          procedure: namesInEnglish.procedures[procedure],
          animals: oddsInEnglish.animals[species].many,
        })}
      </summary>
      <OddsList procedure={procedure} species={species} />
    </details>
  ))
}

function proceduresIn(theCase: Case): ProcedureId[] {
  const chosen = theCase
    .live('choice')
    .flatMap(({ body }) => body.options.flatMap(({ option, answer }) => (answer === 'chosen' ? [option] : [])))
  const agreed = theCase.latest('agreement')?.body.plan.ears.map(({ procedure }) => procedure) ?? []
  const booked = theCase.live('booking').map(({ body }) => body.procedure)
  const named: ReadonlySet<string> = new Set([...chosen, ...agreed, ...booked])
  return procedureIds.filter((id) => named.has(id))
}

function OddsList({ procedure, species }: { readonly procedure: ProcedureId; readonly species: Species }) {
  const { risks } = procedureNamed(procedure, procedures)
  return (
    <div className="stack">
      <p className="soft">{words.lead}</p>
      <ul className={styles.odds}>
        {risks.map(({ outcome }) => (
          <li key={outcome}>
            {publishedPerUnit({ species, procedure, outcome }, studies).map((published) => (
              <Said key={published.question.unit} published={published} />
            ))}
          </li>
        ))}
      </ul>
      <Caution />
    </div>
  )
}

function Said({ published }: { readonly published: Published }) {
  const { sentence, notes } = sayPublished(published, oddsInEnglish)
  const what = oddsInEnglish.outcomes[published.question.outcome].operated
  return (
    <div>
      <p>
        <strong>{what.charAt(0).toUpperCase() + what.slice(1)}.</strong> {sentence}{' '}
        <span className="soft">{notes.join(' ')}</span>
      </p>
      <Why about={what} make={() => whyOdds(published, oddsInEnglish)} />
    </div>
  )
}
