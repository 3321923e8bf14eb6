import { Link } from 'wouter'
import { plansInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import { planHref } from './plan.tsx'
import styles from './settings.module.css'

/** Our usual plans. */
export function PlansScreen() {
  const reading = useHouse()
  const refusal = useRefusal(mayWrite['usual-plan'])
  return (
    <SettingsPage
      part="plans"
      actions={
        refusal === null && (
          <Link href="/settings/plans/new" data-weight="main">
            {words.add}
          </Link>
        )
      }
    >
      {refusal && <p className="soft">{refusal}</p>}
      <ReadingView reading={reading}>
        {({ file }) => {
          const plans = file.house.live('usual-plan')
          return plans.length === 0 ? (
            <p>{words.none}</p>
          ) : (
            <ul className={`bare ${styles.lines}`}>
              {plans.map((line) => {
                const { plan, species, lines } = line.body
                const count = sayCount(words.lines, lines.length)
                return (
                  <li key={line.header.id} className={styles.line}>
                    <div>
                      <p className={styles.name}>
                        <Link href={planHref(plan)}>{plan}</Link>
                      </p>
                      <p>
                        {fill(words.animal, { animal: species })} · {count}
                      </p>
                      <p className="soft">{fill(words.since, whoWrote(file, line))}</p>
                    </div>
                  </li>
                )
              })}
            </ul>
          )
        }}
      </ReadingView>
    </SettingsPage>
  )
}
