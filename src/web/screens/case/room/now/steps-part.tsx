import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { lowPressure } from '#content/protocols/low-pressure.ts'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { type RoomCall, stepsOf } from '#core/theatre/room-call.ts'
import { useCaseView } from '../../case-view.ts'
import styles from './now.module.css'

/** What is done, in its order; it needs no weight. */
export function StepsPart({ call }: { readonly call: RoomCall }) {
  const { file } = useCaseView()
  const species = file.theCase.latest('identity')?.body.species
  return (
    <section aria-labelledby="steps">
      <h2 id="steps">{words.steps}</h2>
      <ol className={styles.steps}>
        {stepsOf(call, species, emergencyFacts, lowPressure).map(({ value }) => (
          <li key={value}>{value}</li>
        ))}
      </ol>
    </section>
  )
}
