import { speciesInEnglish } from '#content/wording/app-formulary.ts'
import { procedurePage as words } from '#content/wording/app-sources.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import { sayTold } from '#core/evidence/say-told.ts'
import { type Told, toldPerUnit } from '#core/evidence/told.ts'
import { publishedEvidence } from '#documents/case/evidence-of.ts'
import { ForestPlot } from './forest.tsx'
import styles from './procedure.module.css'

/** What the studies allow us to say of one risk, animal by animal and unit by unit; unknown is said as such. */
export function Risk(props: {
  readonly procedure: ProcedureId
  readonly outcome: OutcomeCode
  readonly species: readonly Species[]
}) {
  const { procedure, outcome, species } = props
  return (
    <dl className={styles.said}>
      {species.map((one) => (
        <div key={one}>
          <dt>{speciesInEnglish[one]}</dt>
          {toldPerUnit({ species: one, procedure, outcome }, publishedEvidence).map((told) => (
            <dd key={told.published.question.unit}>
              <Said told={told} />
            </dd>
          ))}
        </div>
      ))}
    </dl>
  )
}

function Said({ told }: { readonly told: Told }) {
  const { published } = told
  const said = sayTold(told, { odds: oddsInEnglish, told: toldInEnglish })
  const shown = published.kind !== 'unknown' || published.aside.length > 0
  return (
    <>
      <p>{said.sentence}</p>
      {shown && (
        <details>
          <summary className={styles.by}>{words.studies}</summary>
          <ForestPlot told={told} />
          {said.notes.map((note) => (
            <p key={note} className="soft">
              {note}
            </p>
          ))}
        </details>
      )}
    </>
  )
}
