import { type ReactNode, useId, useState } from 'react'
import { Link } from 'wouter'
import { sources } from '#content/sources/index.ts'
import { provenanceInEnglish } from '#content/wording/app-provenance.ts'
import { whyInEnglish } from '#content/wording/app-why.ts'
import { whyPageInEnglish as words } from '#content/wording/app-why-page.ts'
import { cite } from '#core/evidence/cite.ts'
import { fill } from '#core/outcome/finding.ts'
import { type SaidWhy, sayWhy, type Why as WhyOf } from '#core/why/why.ts'
import { Caution } from './caution.tsx'
import { Modal } from './modal.tsx'
import styles from './why.module.css'

/**
 * The question behind a clinical number: a button that says "why?", and what went into the number when it is asked. The
 * answer is worked out only then.
 *
 * @example <Why about="OTIS-3, LEFT" make={() => whyOtis3(line, 'dog', otis3CutOffs)} />
 */
export function Why(props: {
  /** Which number, for a screen reader. */
  readonly about: string
  readonly make: () => WhyOf
  readonly nameOf?: ((person: string) => string) | undefined
  /** What the findings of the number say, when it has any. */
  readonly findings?: ReactNode
  /** A link to the entry an input came from; without it no link is made. */
  readonly hrefOf?: ((entry: string) => string) | undefined
}) {
  const { about, make, nameOf, findings, hrefOf } = props
  const [asked, setAsked] = useState<WhyOf | null>(null)
  return (
    <>
      <button type="button" data-weight="quiet" className={styles.ask} onClick={() => setAsked(make())}>
        {words.ask}
        <span className="said"> {about}</span>
      </button>
      {asked && (
        <Modal title={sayWhy(asked, whyInEnglish, nameOf).title} close={words.close} onClose={() => setAsked(null)}>
          <WhyText why={asked} said={sayWhy(asked, whyInEnglish, nameOf)} hrefOf={hrefOf} findings={findings} />
        </Modal>
      )}
    </>
  )
}

/** Inputs, formula, result, what stands beside it, house policy, sources. */
export function WhyText(props: {
  readonly why: WhyOf
  readonly said: SaidWhy
  readonly findings?: ReactNode
  readonly hrefOf?: ((entry: string) => string) | undefined
}) {
  const { why, said, findings, hrefOf } = props
  const id = useId()
  return (
    <div className={styles.why}>
      <p className={styles.result}>{said.result}</p>
      {said.inputs.length > 0 && (
        <section aria-labelledby={`${id}-in`}>
          <h3 id={`${id}-in`}>{words.inputs}</h3>
          <dl className={styles.inputs}>
            {said.inputs.map(({ name, value, input }, index) => (
              // An input has no name of its own: two studies may give the same value.
              // biome-ignore lint/suspicious/noArrayIndexKey: the list is made once and never changes its order
              <div key={index}>
                <dt>{name}</dt>
                <dd>{input.line !== null && hrefOf ? <a href={hrefOf(input.line)}>{value}</a> : value}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {said.formula.length > 0 && (
        <section aria-labelledby={`${id}-how`}>
          <h3 id={`${id}-how`}>{words.formula}</h3>
          <ol className={styles.steps}>
            {said.formula.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </section>
      )}
      {said.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {findings}
      {said.policy !== null && (
        <section aria-labelledby={`${id}-house`}>
          <h3 id={`${id}-house`}>{words.policy}</h3>
          <p>{said.policy}</p>
        </section>
      )}
      <Sources why={why} />
      <Caution />
    </div>
  )
}

function Sources({ why }: { readonly why: WhyOf }) {
  const id = useId()
  const cited = cite(why.facts, sources)
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>{words.sources}</h3>
      {cited.length === 0 ? (
        <p>{words.noSource}</p>
      ) : (
        <ul className={styles.sources}>
          {cited.map(({ id: source, citation, where, known, confidence }) => (
            <li key={`${source} ${where} ${known}`}>
              <Link href={`/sources/reference/${encodeURIComponent(source)}`}>{citation}</Link>
              {where !== null && <p>{fill(words.where, { where })}</p>}
              <p className="soft">
                {provenanceInEnglish.longKnown[known]} {confidence === 'low' && provenanceInEnglish.longConfidence.low}
              </p>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
