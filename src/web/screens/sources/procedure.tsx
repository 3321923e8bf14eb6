import { useParams } from 'wouter'
import { outcomeDefinitions } from '#content/outcomes/outcome-definitions.ts'
import { speciesInEnglish } from '#content/wording/app-formulary.ts'
import { outcomeTitles } from '#content/wording/app-outcomes.ts'
import { procedurePage as words } from '#content/wording/app-sources.ts'
import { agreementWords } from '#content/wording/papers-agreement.ts'
import { answeredQuestions } from '#core/evidence/published.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Checkpoint, Procedure } from '#core/procedures/procedure.ts'
import { inWords, sayContent } from '#documents/sources/say-content.ts'
import { Provenance } from '../../design/provenance.tsx'
import drugStyles from './drug.module.css'
import { type FactLine, FactTable } from './facts.tsx'
import { NoSuchPage, SourcesPage } from './frame.tsx'
import { allProcedures, allStudies } from './library.ts'
import { Modifiers, modifiersOf } from './modifiers.tsx'
import styles from './procedure.module.css'
import { Risk } from './risk.tsx'

/** One operation: when and when not, the points of the theatre, what can go wrong, what is agreed, what falls due. */
export function ProcedureScreen() {
  const { procedure: id = '' } = useParams<{ procedure: string }>()
  const procedure = allProcedures.find((one) => one.id === id)
  return procedure ? <ProcedurePage procedure={procedure} /> : <NoSuchPage part="procedures" />
}

export function ProcedurePage({ procedure }: { readonly procedure: Procedure }) {
  const { name, species, indications, against, risks, consentItems } = procedure
  return (
    <SourcesPage
      title={name}
      part="procedures"
      cites={{ procedure, modifiers: modifiersOf(procedure.id) }}
      lead={`${words.species}: ${species.map((one) => speciesInEnglish[one]).join(', ')}`}
    >
      <div className={styles.two}>
        <Reasons title={words.indications} facts={indications} />
        <Reasons title={words.against} facts={against} />
      </div>
      <Checkpoints procedure={procedure} />
      <section aria-labelledby="risks" className={drugStyles.species}>
        <h2 id="risks">{words.risks}</h2>
        {risks.length === 0 ? <p>{words.none}</p> : <p className="soft">{words.risksLead}</p>}
        {risks.map((risk) => (
          <article key={risk.outcome} className={styles.risk}>
            <div>
              <h3>{outcomeTitles[risk.outcome]}</h3>
              <p>{outcomeDefinitions[risk.outcome].meaning}</p>
              <p className="soft">{words.shows[risk.shows]}</p>
            </div>
            <Risk procedure={procedure.id} outcome={risk.outcome} species={species} />
          </article>
        ))}
      </section>
      <OtherOutcomes procedure={procedure} />
      <Modifiers procedure={procedure.id} />
      <section aria-labelledby="agreed" className={drugStyles.species}>
        <h2 id="agreed">{words.agreed}</h2>
        {consentItems.length === 0 && <p>{words.none}</p>}
        <ul>
          {consentItems.map((item) => (
            <li key={item}>{agreementWords.toldItems[item]}</li>
          ))}
        </ul>
      </section>
      <FollowUp procedure={procedure} />
    </SourcesPage>
  )
}

/** What studies counted beside the risks: results, and totals of the authors. */
function OtherOutcomes({ procedure: { id, species, risks } }: { readonly procedure: Procedure }) {
  const counted = species.flatMap((one) => answeredQuestions(one, id, allStudies)).map(({ outcome }) => outcome)
  const others = [...new Set(counted)].filter((outcome) => !risks.some((risk) => risk.outcome === outcome))
  if (others.length === 0) return null
  return (
    <section aria-labelledby="others" className={drugStyles.species}>
      <h2 id="others">{words.others}</h2>
      {others.map((outcome) => (
        <article key={outcome} className={styles.risk}>
          <div>
            <h3>{outcomeTitles[outcome]}</h3>
            <p>{outcomeDefinitions[outcome].meaning}</p>
          </div>
          <Risk procedure={id} outcome={outcome} species={species} />
        </article>
      ))}
    </section>
  )
}

function Reasons({ title, facts }: { readonly title: string; readonly facts: readonly Sourced<string>[] }) {
  return (
    <section aria-label={title} className={drugStyles.species}>
      <h2>{title}</h2>
      {facts.length === 0 && <p>{words.none}</p>}
      <ul className={`bare ${styles.reasons}`}>
        {facts.map((fact) => (
          <li key={fact.value}>
            <p>{fact.value}</p>
            <Provenance fact={fact} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function Checkpoints({ procedure: { checkpoints, checkpointsComplete } }: { readonly procedure: Procedure }) {
  return (
    <section aria-labelledby="checkpoints" className={drugStyles.species}>
      <h2 id="checkpoints">{words.checkpoints}</h2>
      {checkpointsComplete.kind === 'unknown' && (
        <p>
          <strong>{fill(words.incomplete, { because: checkpointsComplete.because })}</strong>
        </p>
      )}
      {checkpoints.length === 0 && <p>{words.none}</p>}
      <ol className={styles.points}>
        {checkpoints.map((point) => (
          <Point key={point.id} point={point} />
        ))}
      </ol>
    </section>
  )
}

function Point({ point: { title, mind, details, because } }: { readonly point: Checkpoint }) {
  return (
    <li className={styles.point}>
      <h3>{title}</h3>
      <p>{mind}</p>
      {details.length > 0 && (
        <p className="soft">
          {words.asked}: {details.map(({ asks }) => asks).join(', ')}
        </p>
      )}
      {because.map((fact) => (
        <div key={fact.value} className={styles.because}>
          <p>{fact.value}</p>
          <Provenance fact={fact} />
        </div>
      ))}
    </li>
  )
}

function FollowUp({ procedure: { followUp } }: { readonly procedure: Procedure }) {
  const { steps, faceLooks, plans } = followUp
  const looks = faceLooks.kind === 'known' ? faceLooks.fact : []
  const lines: FactLine[] = [...steps, ...looks].map(({ id, way, window }) => ({
    key: id,
    what: `${capital(inWords(id))}, ${words.way[way]}`,
    value: sayContent(window.value),
    fact: window,
  }))
  return (
    <section aria-labelledby="follow-up" className={drugStyles.species}>
      <h2 id="follow-up">{words.followUp}</h2>
      {lines.length === 0 ? <p>{words.none}</p> : <FactTable caption={words.followUp} lines={lines} />}
      {faceLooks.kind === 'unknown' && <p>{fill(words.faceUnknown, { because: faceLooks.because })}</p>}
      {plans.length > 0 && <p>{fill(words.plans, { list: plans.map((plan) => words.planNames[plan]).join(', ') })}</p>}
    </section>
  )
}
