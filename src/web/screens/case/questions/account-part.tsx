import { questionsApp } from '#content/wording/app-questions.ts'
import type { Side } from '#core/animal/species.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { fill } from '#core/outcome/finding.ts'
import { isOfEar } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import type { AnswerLine } from '#core/questionnaire/answer-line.ts'
import type { Asking } from '#core/questionnaire/askings.ts'
import { type OwnerAccount, ownerAccountOf } from '#core/questionnaire/owner-account.ts'
import { triesOf } from '#core/questionnaire/tries.ts'
import { sayDay, sayWhen } from '../../../design/say-when.ts'
import { WithSides } from '../../../design/with-sides.tsx'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { useCaseView } from '../case-view.ts'
import styles from './questions.module.css'

const words = questionsApp.account
type Told = { readonly asking: Asking; readonly line: AnswerLine }

/** What the owner's answers say of each ear after a year; a person keeps it as the status, or sees the ear first. */
export function AccountPart({ asking, line }: Told) {
  return (
    <section className={styles.part} aria-labelledby="by-account">
      <h2 id="by-account">{words.title}</h2>
      <p className="soft">{words.lead}</p>
      {asking.ears.map(({ side }) => (
        <OfEar key={side} side={side} asking={asking} line={line} />
      ))}
    </section>
  )
}

function OfEar({ side, asking, line }: Told & { readonly side: Side }) {
  const { file } = useCaseView()
  const { me, pen } = useWho()
  const { zone } = file.clinic
  const account = ownerAccountOf(line.body, side)
  const stands = file.theCase.live('twelve-months').findLast((one) => isOfEar(one, side) && one.at >= asking.from)
  if (stands) {
    return (
      <p>
        <WithSides text={fill(words.stands, { side, when: sayWhen(stands.at, zone) })} />
      </p>
    )
  }
  if (account.kind === 'look-first') {
    return (
      <p className={styles.owed}>
        <WithSides text={fill(words.lookFirst, { side })} />
      </p>
    )
  }
  const status = words.status[account.status]
  const keep = ({ status: kept, wouldChooseAgain }: Extract<OwnerAccount, { kind: 'status' }>) =>
    writeEntry(pen, {
      kind: 'twelve-months',
      stream: file.stream,
      subject: { kind: 'ear', animal: animalIn(file), side },
      body: {
        status: kept,
        source: 'owner',
        tries: triesOf(asking, file).length,
        face: 'unknown',
        wouldChooseAgain,
        text: fill(words.text, { day: sayDay(line.at, zone) }),
      },
    })
  return (
    <div className={styles.account}>
      <p>
        <WithSides text={fill(words.said, { side, status })} />
      </p>
      {writersOf('twelve-months').includes(me.role) && (
        <p data-screen-only>
          <button type="button" onClick={() => void keep(account)}>
            {fill(words.keep, { side, status })}
          </button>
        </p>
      )}
    </div>
  )
}
