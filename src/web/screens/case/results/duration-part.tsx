import { durations } from '#content/susceptibility/durations.ts'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import type { PublishedDuration } from '#core/culture/caution.ts'
import { capital } from '#core/outcome/capital.ts'
import { Provenance } from '../../../design/provenance.tsx'
import { useCaseView } from '../case-view.ts'
import styles from './results.module.css'

const words = cultureInEnglish.duration
const order: readonly PublishedDuration['about'][] = ['any', 'clean-bulla', 'bone-or-revision', 'without-operation']

/** How long others treated, with who says so: the surgeon sets the stop date. */
export function DurationPart() {
  const { file } = useCaseView()
  const species = file.theCase.latest('identity')?.body.species
  const all: readonly PublishedDuration[] = durations
  const fitting = all.filter((one) => one.species === undefined || one.species === species)
  return (
    <section className={styles.part} aria-labelledby="how-long">
      <h2 id="how-long">{words.title}</h2>
      <p>{words.lead}</p>
      <dl className={styles.said}>
        {order.map((about) => (
          <div key={about}>
            <dt>{words.about[about]}</dt>
            {fitting
              .filter((one) => one.about === about)
              .map((one) => (
                <dd key={one.value} className={styles.fact}>
                  <span>{capital(one.value)}.</span>
                  <Provenance fact={one} />
                </dd>
              ))}
          </div>
        ))}
      </dl>
      <p>{words.review}</p>
    </section>
  )
}
