import { choiceInEnglish } from '#content/wording/app-choice.ts'
import type { KnownBy } from '#core/choice/option.ts'
import type { EarSheet, OpenRoute } from '#core/choice/worksheet.ts'
import { fill } from '#core/outcome/finding.ts'
import styles from './choice.module.css'
import { SettleLink } from './settle-link.tsx'
import { WhyLine } from './why-line.tsx'

const words = choiceInEnglish.routes
const titles: Readonly<Record<string, string>> = words.titles

/** The ways that what was found opens: each step on record, missing, or for a person to see to. */
export function RoutesPart({ sheet }: { readonly sheet: EarSheet }) {
  if (sheet.routes.length === 0) return null
  return (
    <section className={styles.part} aria-labelledby="choice-routes">
      <h3 id="choice-routes">{words.title}</h3>
      <p className="soft">{words.lead}</p>
      <div className={styles.routes}>
        {sheet.routes.map((route) => (
          <Route key={route.id} route={route} sheet={sheet} />
        ))}
      </div>
    </section>
  )
}

function Route({ route, sheet }: { readonly route: OpenRoute; readonly sheet: EarSheet }) {
  const title = titles[route.id] ?? route.id
  return (
    <article className={styles.route} aria-label={title}>
      <h4>{title}</h4>
      <Line text={route.because.value} about={title} known={[route.because]} from={route.from} />
      {route.words.map((said) => (
        <p key={said}>{fill(words.says, { words: said })}</p>
      ))}
      <ul className={styles.steps} aria-label={words.steps}>
        {route.steps.map((step) => (
          <li key={step.id} data-state={step.state}>
            <span className={styles.state}>{words.states[step.state]}</span>
            <div>
              <Line text={step.text.value} about={title} known={[step.text]} from={step.from} />
              {step.state === 'missing' && step.fact && <SettleLink fact={step.fact} sheet={sheet} />}
            </div>
          </li>
        ))}
      </ul>
    </article>
  )
}

function Line(props: {
  readonly text: string
  readonly about: string
  readonly known: KnownBy
  readonly from: readonly string[]
}) {
  const { text, about, known, from } = props
  return (
    <p className={styles.line}>
      <span>{text}</span>
      <WhyLine option={about} line={{ text, known, from, notes: [] }} />
    </p>
  )
}
