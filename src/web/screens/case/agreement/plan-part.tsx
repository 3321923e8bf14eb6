import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { namesInEnglish } from '#content/wording/app-case.ts'
import { languageIn } from '#core/agreement/conversation.ts'
import { sides } from '#core/animal/species.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { ownerLanguageOf } from '#documents/case/owner-words.ts'
import { Ticks } from '../../../design/ticks.tsx'
import { WithSides } from '../../../design/with-sides.tsx'
import { Choose } from './choose.tsx'
import { Part } from './part.tsx'
import { sayLanguage } from './say-language.ts'
import type { Talk } from './use-talk.ts'

/** Which ears, by whom, and the leaflet and numbers that the owner was shown. */
export function PlanPart({ talk }: { readonly talk: Talk }) {
  const { talk: said, put, staff, setting } = talk
  const { planned, told, file } = setting
  const language = languageIn(file)
  const procedures = [...new Set(said.ears.flatMap((side) => planned[side] ?? []))]
  const numbers = procedures.flatMap((procedure) => told.numbersOf(file, procedure, language))
  return (
    <Part name="plan" talk={talk}>
      <Ticks
        legend={words.ears}
        values={said.ears}
        options={sides.filter((side) => planned[side] !== undefined)}
        say={(side) => {
          const procedure = planned[side]
          return (
            <WithSides
              text={fill(words.ear, { side, procedure: procedure ? namesInEnglish.procedures[procedure] : '' })}
            />
          )
        }}
        onValues={(ears) => put({ ears })}
      />
      <Choose label={words.surgeon} value={said.surgeon} options={staff} onChoose={(surgeon) => put({ surgeon })} />
      <Choose
        label={words.explainedBy}
        value={said.explainedBy}
        options={staff}
        onChoose={(explainedBy) => put({ explainedBy })}
      />
      <p>{fill(words.told, { leaflet: told.leafletOf(language), language: sayLanguage(language) })}</p>
      {numbers.length > 0 && (
        <details>
          <summary>{sayCount(words.numbers, numbers.length)}</summary>
          <ul lang={ownerLanguageOf(language) ?? 'en'}>
            {numbers.map((one) => (
              <li key={`${one.procedure} ${one.unit} ${one.outcome}`}>{one.said}</li>
            ))}
          </ul>
        </details>
      )}
    </Part>
  )
}
