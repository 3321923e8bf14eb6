import { susceptibility } from '#content/susceptibility/index.ts'
import { inOpenEar, topicalRules } from '#content/susceptibility/topical.ts'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { agentById } from '#core/culture/agent.ts'
import type { SpecimenStanding } from '#core/culture/specimen-standing.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { Provenance } from '../../../design/provenance.tsx'
import { useCaseView } from '../case-view.ts'
import styles from './results.module.css'

const words = cultureInEnglish.topical

/** Drops: what no breakpoint says anything about, and what an open ear must not get. */
export function TopicalPart({ standing }: { readonly standing: SpecimenStanding | null }) {
  const { operations } = useCaseView()
  const isAblated = operations.some(
    ({ side, procedure, done }) => done !== null && side === standing?.side && procedure === 'teca-lbo',
  )
  const rules = [
    ...(isAblated ? [topicalRules.closedBulla] : []),
    topicalRules.systemicOnly,
    topicalRules.cytologyFirst,
  ]
  return (
    <section className={styles.part} aria-labelledby="topical">
      <h2 id="topical">{words.title}</h2>
      {isAblated && (
        <p>
          <strong>{words.ablated}</strong>
        </p>
      )}
      <ul className={styles.facts}>
        {rules.map((rule) => (
          <li key={rule.value}>
            <span className={styles.fact}>
              <span>{capital(rule.value)}.</span>
              <Provenance fact={rule} />
            </span>
          </li>
        ))}
        <li>{words.openEar}</li>
        {inOpenEar.map((fact) => (
          <li key={fact.value}>
            <span className={styles.fact}>
              <span>
                {fill(words.line, {
                  what: words.seen[fact.value],
                  drugs: fact.agents.map((one) => agentById(susceptibility.agents, one)?.name ?? one).join(', '),
                })}
              </span>
              <Provenance fact={fact} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}
