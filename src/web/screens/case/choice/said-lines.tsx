import { choiceInEnglish } from '#content/wording/app-choice.ts'
import type { Lacking, Reason, Weighed } from '#core/choice/weigh.ts'
import type { EarSheet } from '#core/choice/worksheet.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import styles from './choice.module.css'
import { optionName } from './option-name.ts'
import { SettleLink } from './settle-link.tsx'
import { WhyLine } from './why-line.tsx'

const words = choiceInEnglish.options

/**
 * For, against, missing: always all three, in this order, said in words when there is nothing. `brief`: what is not known
 * by name alone, where it stands in whole sentences above.
 */
export function SaidLines(props: { readonly weighed: Weighed; readonly sheet: EarSheet; readonly brief?: boolean }) {
  const { weighed, sheet, brief = false } = props
  const name = capital(optionName(weighed.option))
  const isComplete = weighed.lacking.length + weighed.asked.length === 0
  return (
    <>
      {(['for', 'against'] as const).map((says) => (
        <div key={says} className={styles.side} data-says={says}>
          <h5>{words[says]}</h5>
          {weighed[says].length === 0 ? (
            <p className="soft">{words.none}</p>
          ) : (
            <ul>
              {weighed[says].map((reason) => (
                <ReasonLine key={reason.rule} reason={reason} name={name} />
              ))}
            </ul>
          )}
        </div>
      ))}
      <div className={styles.side} data-says="missing">
        <h5>{words.missing}</h5>
        {isComplete ? (
          <p className="soft">{words.noneMissing}</p>
        ) : (
          <ul>
            {weighed.asked.map((reason) => (
              <ReasonLine key={reason.rule} reason={reason} name={name} />
            ))}
            {!brief &&
              weighed.lacking.map((lacking) => (
                <LackingLine key={lacking.fact} lacking={lacking} name={name} sheet={sheet} />
              ))}
            {brief && weighed.lacking.length > 0 && (
              <li>
                <span>{fill(words.notKnown, { what: namesOf(weighed.lacking) })}</span>
              </li>
            )}
          </ul>
        )}
      </div>
    </>
  )
}

function ReasonLine({ reason, name }: { readonly reason: Reason; readonly name: string }) {
  const { text, known, from } = reason
  const notes = reason.words.map((said) => fill(choiceInEnglish.routes.says, { words: said }))
  return (
    <li>
      <span>{text}</span>
      <WhyLine option={name} line={{ text, known, from, notes }} />
    </li>
  )
}

function LackingLine(props: { readonly lacking: Lacking; readonly name: string; readonly sheet: EarSheet }) {
  const { lacking, name, sheet } = props
  const text = choiceInEnglish.facts[lacking.fact]
  const notes = lacking.hangs.map((what) => fill(words.waits, { what }))
  return (
    <li>
      <span>
        {text} <SettleLink fact={lacking.fact} sheet={sheet} />
      </span>
      <WhyLine option={name} line={{ text, known: lacking.known, from: [], notes }} />
    </li>
  )
}

function namesOf(lacking: readonly Lacking[]): string {
  return lacking.map(({ fact }) => choiceInEnglish.names[fact]).join('; ')
}
