import { options } from '#content/options/index.ts'
import { choiceInEnglish } from '#content/wording/app-choice.ts'
import { optionsInEnglish } from '#content/wording/options.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { yearHeadings } from '#core/choice/option.ts'
import { optionNamed, type Told, toldFor } from '#core/choice/told.ts'
import type { Weighed } from '#core/choice/weigh.ts'
import type { EarSheet } from '#core/choice/worksheet.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { useCaseView } from '../case-view.ts'
import { OddsList } from '../odds.tsx'
import styles from './choice.module.css'
import { CostPart } from './cost-part.tsx'
import { optionName } from './option-name.ts'
import { SaidLines } from './said-lines.tsx'
import { useFocusWhen } from './use-opened.ts'
import { WhyLine } from './why-line.tsx'

const words = choiceInEnglish.options

/** One option opened: what is weighed, what the owner is told under the same heads, what studies counted. */
export function OpenedOption(props: {
  readonly weighed: Weighed
  readonly sheet: EarSheet
  readonly isNew: boolean
  readonly onClose: () => void
}) {
  const { weighed, sheet, isNew, onClose } = props
  const { file } = useCaseView()
  const heading = useFocusWhen(isNew)
  const species = file.theCase.latest('identity')?.body.species ?? null
  const name = capital(optionName(weighed.option))
  // While nobody knows the species, what is told of both is told.
  const told = toldFor(optionNamed(weighed.option, options), species ?? 'dog', optionsInEnglish)
  const ofYear = ({ heading: one }: Told) => yearHeadings.some((year) => year === one)
  return (
    <article className={styles.opened} aria-label={name}>
      <header>
        <h4 ref={heading} tabIndex={-1}>
          {name}
        </h4>
        <button
          type="button"
          data-weight="quiet"
          data-screen-only
          aria-label={fill(words.said, { do: words.close, option: name })}
          onClick={onClose}
        >
          {words.close}
        </button>
      </header>
      <SaidLines weighed={weighed} sheet={sheet} />
      <div className={styles.told}>
        <h5>{words.owner}</h5>
        <p className={styles.plain}>{optionsInEnglish.options[weighed.option].name}</p>
      </div>
      {told.map((one, index) => (
        <div key={one.heading} className={styles.told}>
          {ofYear(one) && !ofYear(told[index - 1] ?? one) && <p className={styles.year}>{optionsInEnglish.year}</p>}
          <h6>{optionsInEnglish.headings[one.heading]}</h6>
          <p className={styles.line}>
            <span>{one.text}</span>
            <WhyLine option={name} line={{ text: one.text, known: one.known, from: [], notes: [] }} />
          </p>
        </div>
      ))}
      <CostPart option={weighed.option} sheet={sheet} />
      <Figures option={weighed.option} species={species} />
    </article>
  )
}

function Figures({ option, species }: { readonly option: Weighed['option']; readonly species: 'dog' | 'cat' | null }) {
  const procedure = procedureIds.find((id) => id === option)
  return (
    <details className={styles.figures}>
      <summary>{choiceInEnglish.odds}</summary>
      {procedure && species ? <OddsList procedure={procedure} species={species} /> : <p>{choiceInEnglish.noOdds}</p>}
    </details>
  )
}
