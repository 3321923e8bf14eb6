import { choiceInEnglish } from '#content/wording/app-choice.ts'
import { type EarFactId, earFactIds } from '#core/choice/ear-fact.ts'
import type { EarSheet } from '#core/choice/worksheet.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import styles from './choice.module.css'
import { optionName } from './option-name.ts'
import { SettleLink } from './settle-link.tsx'
import { WhyLine } from './why-line.tsx'

const words = choiceInEnglish.lacking

/** Everything that is not known of this ear and that some option waits for, once each, with what would settle it. */
export function LackingPart({ sheet }: { readonly sheet: EarSheet }) {
  const lacking = earFactIds.flatMap((fact) => waitingFor(fact, sheet))
  if (lacking.length === 0) return null
  return (
    <section className={styles.part} aria-labelledby="choice-lacking">
      <h3 id="choice-lacking">{words.title}</h3>
      <p className="soft">{words.lead}</p>
      <ul className={styles.lacking}>
        {lacking.map(({ fact, known, notes }) => (
          <li key={fact}>
            <span>{choiceInEnglish.facts[fact]}</span>
            <span className={styles.acts}>
              <WhyLine
                option={capital(choiceInEnglish.names[fact])}
                line={{ text: choiceInEnglish.facts[fact], known, from: [], notes }}
              />
              <SettleLink fact={fact} sheet={sheet} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}

function waitingFor(fact: EarFactId, { options }: EarSheet) {
  const own = options.flatMap(({ option, lacking }) =>
    lacking.filter((one) => one.fact === fact).map((one) => ({ option, ...one })),
  )
  if (own.length === 0) return []
  return [
    {
      fact,
      known: own.flatMap(({ known }) => known),
      notes: own.flatMap(({ option, hangs }) =>
        hangs.map((what) => `${capital(optionName(option))}. ${fill(choiceInEnglish.options.waits, { what })}`),
      ),
    },
  ]
}
