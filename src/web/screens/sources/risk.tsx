import { Link } from 'wouter'
import { speciesInEnglish } from '#content/wording/app-formulary.ts'
import { procedurePage as words } from '#content/wording/app-sources.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import type { Published, PublishedCount } from '#core/evidence/published.ts'
import { sayTold } from '#core/evidence/say-told.ts'
import { type Told, toldPerUnit } from '#core/evidence/told.ts'
import { publishedEvidence } from '#documents/case/evidence-of.ts'
import { sayCount } from '#documents/sources/say-study.ts'
import { IntervalLine } from './interval-line.tsx'
import { hrefOf } from './library.ts'
import styles from './procedure.module.css'
import { shortName } from './studies.tsx'

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
  const found: readonly PublishedCount[] =
    published.kind === 'unknown' ? [] : published.kind === 'one-study' ? [published.found] : published.found
  return (
    <>
      <p>{said.sentence}</p>
      {found.length + published.aside.length > 0 && (
        <details>
          <summary className={styles.by}>{words.studies}</summary>
          {found.map((one) => (
            <div key={JSON.stringify([one.row.study, one.row.reading ?? ''])} className={styles.found}>
              <p>
                <Link href={hrefOf('studies', one.row.study)}>{shortName({ id: one.row.study })}</Link>:{' '}
                {sayCount(one.row)}
              </p>
              <IntervalLine found={one} />
            </div>
          ))}
          {said.notes.map((note) => (
            <p key={note} className="soft">
              {note}
            </p>
          ))}
          {published.aside.length > 0 && <Aside published={published} />}
        </details>
      )}
    </>
  )
}

function Aside({ published }: { readonly published: Published }) {
  const ids = [...new Set(published.aside.map(({ row }) => row.study))]
  const [before = '', after = ''] = words.aside.split('{list}')
  return (
    <p className="soft">
      {before}
      {ids.map((id, index) => (
        <span key={id}>
          {index > 0 && ', '}
          <Link href={hrefOf('studies', id)}>{shortName({ id })}</Link>
        </span>
      ))}
      {after}
    </p>
  )
}
