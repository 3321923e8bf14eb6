import { complicationSchemes } from '#content/outcomes/schemes/index.ts'
import { troubleScreenInEnglish as words } from '#content/wording/app-trouble.ts'
import { troubleInEnglish as said } from '#content/wording/trouble.ts'
import { type Graded, gradeBy } from '#core/complications/grade.ts'
import { sayGrade, sayWhyGraded } from '#core/complications/say-graded.ts'
import type { Scheme } from '#core/complications/scheme.ts'
import type { Trouble } from '#core/complications/trouble.ts'
import { troubleFactsOf } from '#core/complications/trouble-facts.ts'
import { fill } from '#core/outcome/finding.ts'
import { Provenance } from '../../../design/provenance.tsx'
import styles from './trouble.module.css'

/** The grade of every scheme, named with its version, and why. */
export function GradesPart({ trouble }: { readonly trouble: Trouble }) {
  return (
    <ul className={`bare ${styles.grades}`} aria-label={words.terms.grades}>
      {complicationSchemes.map((scheme) => (
        <li key={scheme.id}>
          <GradeLine scheme={scheme} trouble={trouble} />
        </li>
      ))}
    </ul>
  )
}

function GradeLine({ scheme, trouble }: { readonly scheme: Scheme; readonly trouble: Trouble }) {
  const graded = gradeBy(scheme, troubleFactsOf(trouble))
  const fact = factOf(graded)
  return (
    <>
      <p className={styles.grade} data-known={graded.kind === 'graded'}>
        <span>{fill(words.grade, { scheme: scheme.name, version: scheme.version })}</span>{' '}
        <strong>{sayGrade(graded, said)}</strong>
      </p>
      <details>
        <summary>{words.why}</summary>
        {sayWhyGraded(graded, scheme, trouble, said).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {fact && (
          <p>
            <Provenance fact={fact} />
          </p>
        )}
        {scheme.agreement && (
          <p className="soft">
            {fill(said.agreement, {
              text: [
                fill(said.agreementAll, { value: String(scheme.agreement.value.all) }),
                fill(said.agreementSet, { value: String(scheme.agreement.value.setApart) }),
              ].join(', '),
            })}{' '}
            <Provenance fact={scheme.agreement} />
          </p>
        )}
      </details>
    </>
  )
}

function factOf(graded: Graded) {
  return graded.kind === 'not-a-complication' ? null : graded.fact
}
