import { useMemo } from 'react'
import { modifiers } from '#content/evidence/modifiers.ts'
import { evidenceRules } from '#content/evidence/prior.ts'
import { procedures } from '#content/procedures/index.ts'
import { studies } from '#content/studies/index.ts'
import { caseInEnglish, namesInEnglish } from '#content/wording/app-case.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import { type ProcedureId, procedureIds } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { factorsOf } from '#core/evidence/factors-of.ts'
import { type Modifier, modified, oddsRatioOf } from '#core/evidence/modifier.ts'
import { wholeOfHundred } from '#core/evidence/say-published.ts'
import { sayTold } from '#core/evidence/say-told.ts'
import { conflictOf, type Told, toldPerUnit } from '#core/evidence/told.ts'
import type { Case } from '#core/journal/fold.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import type { Conflict } from '#core/stats/predictive/conflict.ts'
import { whyOdds } from '#core/why/why-odds.ts'
import { evidenceOf } from '#documents/case/evidence-of.ts'
import { sayModifier } from '#documents/sources/say-modifier.ts'
import { Caution } from '../../design/caution.tsx'
import { Provenance } from '../../design/provenance.tsx'
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
      <ForThisAnimal procedure={procedure} species={species} told={told.flatMap(({ inUnits }) => inUnits)} />
      <Caution />
    </div>
  )
}

/** What is published of circumstances of this animal, with what it would make of the number; of all else nothing is known. */
function ForThisAnimal(props: {
  readonly procedure: ProcedureId
  readonly species: Species
  readonly told: readonly Told[]
}) {
  const { procedure, species, told } = props
  const { file } = useCaseView()
  const factors = factorsOf(file.theCase)
  const known = modifiers.filter(
    (one) => one.procedure === procedure && one.species === species && factors.includes(one.factor),
  )
  return (
    <section aria-labelledby={`modifiers-${procedure}`} className="stack">
      <h3 id={`modifiers-${procedure}`}>{words.forThis}</h3>
      {known.length > 0 && (
        <ul>
          {known.map((one) => (
            <li key={one.id}>
              {capital(sayModifier(one))}. {sayShare(one, told)} <Provenance fact={one} />
            </li>
          ))}
        </ul>
      )}
      <p className="soft">{known.length === 0 ? words.noneForThis : words.elseNothing}</p>
    </section>
  )
}

/** The share that the ratio would make of what is told, in the same unit; nothing where either is unknown. */
function sayShare(one: Modifier, told: readonly Told[]): string {
  const ratio = oddsRatioOf(one, studies)
  const same = told.find(
    ({ published: { question } }) => question.outcome === one.outcome && question.unit === one.unit,
  )
  const base = same?.updated?.distribution ?? same?.expected?.predictive.distribution
  if (!ratio || !base) return ''
  const { mean, interval } = modified(base, ratio)
  return fill(words.wouldBe, {
    middle: String(wholeOfHundred(mean)),
    low: String(Math.floor(100 * interval.low)),
    high: String(Math.ceil(100 * interval.high)),
  })
}

const english = { odds: oddsInEnglish, told: toldInEnglish }

function Said({ told }: { readonly told: Told }) {
  const { sentence, own, notes } = sayTold(told, english)
  const what = oddsInEnglish.outcomes[told.published.question.outcome].operated
  const conflict = conflictOf(told)
  return (
    <div>
      <p>
        <strong>{capital(what)}.</strong> {[sentence, ...own].join(' ')} <span className="soft">{notes.join(' ')}</span>
      </p>
      {conflict && <p className="soft">{sayConflict(conflict)}</p>}
      <Why about={what} make={() => whyOdds(told, english, evidenceRules)} />
    </div>
  )
}

/** Ours beside theirs, to the surgeon at any number: not who is right. */
function sayConflict(conflict: Conflict): string {
  return conflict.kind === 'compared'
    ? fill(words.besideTheirs, { p: conflict.box.toFixed(2) })
    : fill(words.tooFewToDisagree, { total: String(conflict.total) })
}
