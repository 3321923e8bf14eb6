import { Link } from 'wouter'
import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { animalOf } from '#core/chapters/ears.ts'
import { fill } from '#core/outcome/finding.ts'
import { WithSides } from '../../../design/with-sides.tsx'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './agreement.module.css'
import { useSaidAgreement } from './state-lines.tsx'

/** The way to write that consent was taken back for one ear, as long as it stands there. */
export function TakeBackPart() {
  const { file, id } = useCaseView()
  const { open } = useSaidAgreement()
  const animal = animalOf(file.theCase)
  if (open.length === 0 || animal === null) return null
  return (
    <section className={styles.part} data-screen-only>
      <h2>{words.takeBack}</h2>
      <p>{words.takeBackLead}</p>
      <ul>
        {open.map((side) => (
          <li key={side}>
            <Link href={writeHref(id, 'consent-withdrawn', { subject: { kind: 'ear', animal, side } })}>
              <WithSides text={fill(words.takeBackFor, { side })} />
            </Link>
          </li>
        ))}
      </ul>
    </section>
  )
}
