import { choiceInEnglish } from '#content/wording/app-choice.ts'
import { optionsInEnglish } from '#content/wording/options.ts'
import { sessionIds } from '#core/choice/told-ids.ts'
import type { Weighed } from '#core/choice/weigh.ts'
import type { EarSheet } from '#core/choice/worksheet.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { isOfEar } from '#core/owed/operations.ts'
import { useCaseView } from '../case-view.ts'
import styles from './choice.module.css'
import { OpenedOption } from './opened-option.tsx'
import { optionName } from './option-name.ts'
import { SaidLines } from './said-lines.tsx'
import { useOpened } from './use-opened.ts'

const words = choiceInEnglish.options

/** Every option one after another with the same three heads; one or two of them opened, facing each other. */
export function OptionsPart({ sheet }: { readonly sheet: EarSheet }) {
  const { opened, closed, last, open, close } = useOpened()
  const shown = opened.flatMap((id) => sheet.options.find(({ option }) => option === id) ?? [])
  const isSession = ({ option }: Weighed) => sessionIds.some((id) => id === option)
  const groups = [
    { title: words.title, some: sheet.options.filter((one) => !isSession(one)) },
    { title: words.bothEars, some: sheet.options.filter(isSession) },
  ].filter(({ some }) => some.length > 0)
  return (
    <>
      {shown.length > 0 && (
        <section className={styles.part} aria-labelledby="choice-facing">
          <h3 id="choice-facing">{shown.length === 2 ? words.facingTwo : words.facing}</h3>
          <p className={styles.third} aria-live="polite">
            {closed !== null && words.third}
          </p>
          <div className={styles.facing} data-two={shown.length === 2 || undefined}>
            {shown.map((weighed) => (
              <OpenedOption
                key={weighed.option}
                weighed={weighed}
                sheet={sheet}
                isNew={weighed.option === last}
                onClose={() => close(weighed.option)}
              />
            ))}
          </div>
        </section>
      )}
      {groups.map(({ title, some }, index) => (
        <section key={title} className={styles.part} aria-label={title}>
          <h3>{title}</h3>
          {index === 0 && (
            <p className="soft" data-screen-only>
              {words.lead}
            </p>
          )}
          <ol className={styles.options}>
            {some.map((weighed) => (
              <OptionRow
                key={weighed.option}
                weighed={weighed}
                sheet={sheet}
                isOpen={shown.includes(weighed)}
                onOpen={() => open(weighed.option)}
                onClose={() => close(weighed.option)}
              />
            ))}
          </ol>
        </section>
      ))}
    </>
  )
}

function OptionRow(props: {
  readonly weighed: Weighed
  readonly sheet: EarSheet
  readonly isOpen: boolean
  readonly onOpen: () => void
  readonly onClose: () => void
}) {
  const { weighed, sheet, isOpen, onOpen, onClose } = props
  const name = capital(optionName(weighed.option))
  const act = isOpen ? words.close : words.open
  return (
    <li className={styles.option} data-open={isOpen || undefined}>
      <div className={styles.head}>
        <h4>{name}</h4>
        <p className="soft">{optionsInEnglish.options[weighed.option].name}</p>
        <Answer weighed={weighed} sheet={sheet} />
        <p data-screen-only>
          <button
            type="button"
            aria-pressed={isOpen}
            aria-label={fill(words.said, { do: act, option: name })}
            onClick={isOpen ? onClose : onOpen}
          >
            {act}
          </button>
        </p>
      </div>
      {isOpen ? (
        <p className="soft">{words.opened}</p>
      ) : (
        <div className={styles.weighing}>
          <SaidLines weighed={weighed} sheet={sheet} brief />
        </div>
      )}
    </li>
  )
}

/** What the last choice of this ear says of the option. */
function Answer({ weighed, sheet }: { readonly weighed: Weighed; readonly sheet: EarSheet }) {
  const { file } = useCaseView()
  const last = file.theCase.live('choice').findLast((line) => isOfEar(line, sheet.side))
  const said = last?.body.options.find(({ option }) => option === weighed.option)
  if (!said) return null
  return (
    <p className={styles.answer}>
      <strong>{capital(words.answers[said.answer])}</strong>: {said.because}
    </p>
  )
}
