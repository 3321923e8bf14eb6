import { useMemo } from 'react'
import { evidenceRules } from '#content/evidence/prior.ts'
import { procedures } from '#content/procedures/index.ts'
import { caseInEnglish, namesInEnglish } from '#content/wording/app-case.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import { type ProcedureId, procedureIds } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { sayTold } from '#core/evidence/say-told.ts'
import { type Told, toldPerUnit } from '#core/evidence/told.ts'
import type { Case } from '#core/journal/fold.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { whyOdds } from '#core/why/why-odds.ts'
import { evidenceOf } from '#documents/case/evidence-of.ts'
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

/** Every named risk of one operation, as it is said: published, with our own where they count. */
export function OddsList({ procedure, species }: { readonly procedure: ProcedureId; readonly species: Species }) {
  const { file } = useCaseView()
  const evidence = useMemo(() => evidenceOf(file.house), [file.house])
  const told = useMemo(
    () =>
      procedureNamed(procedure, procedures).risks.map(({ outcome }) => ({
        outcome,
        inUnits: toldPerUnit({ species, procedure, outcome }, evidence),
      })),
    [procedure, species, evidence],
  )
  return (
    <div className="stack">
      <p className="soft">{words.lead}</p>
      <ul className={styles.odds}>
        {told.map(({ outcome, inUnits }) => (
          <li key={outcome}>
            {inUnits.map((one) => (
              <Said key={one.published.question.unit} told={one} />
            ))}
          </li>
        ))}
      </ul>
      <Caution />
    </div>
  )
}

const english = { odds: oddsInEnglish, told: toldInEnglish }

function Said({ told }: { readonly told: Told }) {
  const { sentence, own, notes } = sayTold(told, english)
  const what = oddsInEnglish.outcomes[told.published.question.outcome].operated
  return (
    <div>
      <p>
        <strong>{capital(what)}.</strong> {[sentence, ...own].join(' ')} <span className="soft">{notes.join(' ')}</span>
      </p>
      <Why about={what} make={() => whyOdds(told, english, evidenceRules)} />
    </div>
  )
}
