import { useState } from 'react'
import { Link, useParams } from 'wouter'
import { questionsApp as words } from '#content/wording/app-questions.ts'
import { sides } from '#core/animal/species.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { type Asking, isOpen } from '#core/questionnaire/askings.ts'
import { Page } from '../../../design/page.tsx'
import { Provenance } from '../../../design/provenance.tsx'
import { WithSides } from '../../../design/with-sides.tsx'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { WithCase } from '../with-case.tsx'
import { AccountPart } from './account-part.tsx'
import { AnswersPart } from './answers-part.tsx'
import { PhonePart } from './phone-part.tsx'
import styles from './questions.module.css'
import { SendPart } from './send-part.tsx'
import { StateLine } from './state-line.tsx'
import { TryPart } from './try-part.tsx'
import { sayOccasion, useAskings } from './use-askings.ts'

/** One time of asking the owner: what was asked, what came back, the way to send it, and to take it by phone. */
export default function QuestionsScreen() {
  return (
    <WithCase>
      <Questions />
    </WithCase>
  )
}

function Questions() {
  const { key = '' } = useParams()
  const { file, id } = useCaseView()
  const all = useAskings()
  const asking = all.find((one) => one.key === decodeURIComponent(key))
  const title = asking ? `${words.title}: ${sayOccasion(asking, all)}` : words.title
  const about = { kind: 'animal', animal: animalIn(file) } as const
  return (
    <Page title={title} lead={asking && <Lead asking={asking} />} whose={<CaseLine about={about} />}>
      {asking ? <Asked asking={asking} occasion={sayOccasion(asking, all)} /> : <p>{words.notHere}</p>}
      <p data-screen-only>
        <Link href={casePageHref(id)}>{words.back}</Link>
      </p>
    </Page>
  )
}

function Lead({ asking }: { readonly asking: Asking }) {
  const ears = sides.filter((side) => asking.ears.some((ear) => ear.side === side))
  const said = ears.map((side) => fill(words.answers.ear, { side })).join(', ')
  return (
    <>
      <p>
        <WithSides text={fill(words.lead, { ears: said })} />
      </p>
      <Provenance fact={asking.questionnaire} />
    </>
  )
}

function Asked({ asking, occasion }: { readonly asking: Asking; readonly occasion: string }) {
  const { file } = useCaseView()
  const { me } = useWho()
  const [changing, setChanging] = useState(false)
  const hasDied = file.theCase.latest('death') !== undefined
  const mayWrite = writersOf('owner-answer').includes(me.role)
  return (
    <div className={styles.page}>
      <p className={styles.state}>
        <StateLine asking={asking} />
      </p>
      {hasDied && <p>{words.died}</p>}
      {asking.answers && <AnswersPart asking={asking} line={asking.answers} />}
      {!hasDied && asking.answers?.body.finished && asking.occasion.id === 'month-12' && (
        <AccountPart asking={asking} line={asking.answers} />
      )}
      {!hasDied && mayWrite && isOpen(asking) && (
        <>
          <SendPart />
          <TryPart asking={asking} occasion={occasion} />
          <PhonePart asking={asking} onKept={() => setChanging(false)} />
        </>
      )}
      {!hasDied && mayWrite && asking.state === 'answered' && !changing && (
        <p data-screen-only>
          <button type="button" onClick={() => setChanging(true)}>
            {words.phone.change}
          </button>
        </p>
      )}
      {changing && asking.state === 'answered' && <PhonePart asking={asking} onKept={() => setChanging(false)} />}
    </div>
  )
}
