import { type ReactNode, useEffect, useMemo } from 'react'
import { Link } from 'wouter'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { bandageAndAirway as card } from '#content/protocols/bandage-and-airway.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { wardInEnglish } from '#content/wording/app-ward.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { dueInWard } from '#core/ward/due-list.ts'
import { doubtsOf, wardEyes } from '#core/ward/eye-view.ts'
import { type Stay, stayOf } from '#core/ward/stay.ts'
import { Caution } from '../../../design/caution.tsx'
import { Page } from '../../../design/page.tsx'
import { sayWhen } from '../../../design/say-when.ts'
import { useServerNow } from '../../../journal/use-server-now.ts'
import { useWho } from '../../../session/use-who.ts'
import { DueList } from '../../ward/due-list.tsx'
import { casePageHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { MayNotWrite } from '../may-correct.tsx'
import { WithCase } from '../with-case.tsx'
import { AirwayCard } from './airway-card.tsx'
import { ChainPart } from './chain-part.tsx'
import { EyesPart } from './eyes-part.tsx'
import { LookPart } from './look-part.tsx'
import { OwnerPart } from './owner-part.tsx'
import { PainPart } from './pain-part.tsx'
import styles from './round.module.css'
import { TemperaturePart } from './temperature-part.tsx'

const words = wardInEnglish.round

/** The round of one animal in the ward: what is due, large taps for what is seen, the chain of pain, the card. */
export default function RoundScreen() {
  return (
    <WithCase>
      <RoundPage />
    </WithCase>
  )
}

function RoundPage() {
  const { file, id, operations } = useCaseView()
  const stay = stayOf(file.theCase, operations)
  const lies = stay !== null && !stay.ended && !file.theCase.latest('death')
  return (
    <div className={styles.screen}>
      <Page
        title={words.title}
        lead={lies ? fill(words.since, { when: sayWhen(stay.since, file.clinic.zone) }) : undefined}
        whose={<CaseLine />}
        wide
      >
        {lies ? <Round stay={stay} /> : <NotHere />}
        <p className="row" data-screen-only>
          <Link href="/ward">{words.all}</Link>
          <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
        </p>
      </Page>
    </div>
  )
}

/** Pain may be owed an answer after the animal has left: then it is written as any entry is. */
function NotHere() {
  const { id } = useCaseView()
  return (
    <p>
      {words.notHere} <Link href={writeHref(id, 'ward-score')}>{words.writeAnyway}</Link>
    </p>
  )
}

function Round({ stay }: { readonly stay: Stay }) {
  const { file, id, owed } = useCaseView()
  const { me } = useWho()
  const now = useServerNow(20_000)
  const name = file.theCase.latest('identity')?.body.name ?? caseInEnglish.untitled
  const eyes = useMemo(() => wardEyes(file, stay, procedures, owedRules), [file, stay])
  const dues = dueInWard(owed, now).map((due) => ({ due, file, place: id, name }))
  useArriveAtPart()
  return (
    <>
      {!writersOf('ward-score').includes(me.role) && <MayNotWrite kind="ward-score" />}
      <p className={styles.strip} data-screen-only>
        <strong>{card.first[0]?.value}</strong> <a href="#airway-card">{wardInEnglish.card.toCard}</a>
      </p>
      <div className={styles.columns}>
        <div className={`${styles.column} ${styles.others}`}>
          <section aria-label={words.due} className={styles.due}>
            <DueList dues={dues} now={now} named={false} />
          </section>
          <Part id="pain" title={words.pain} isForm>
            <PainPart doubts={doubtsOf(file, stay, eyes)} />
          </Part>
          <Part id="chain" title={words.chain}>
            <ChainPart stay={stay} now={now} />
          </Part>
        </div>
        <div className={styles.column}>
          <AirwayCard stay={stay} />
          <div className={`${styles.column} ${styles.others}`}>
            <Part id="eyes" title={words.eyes}>
              <EyesPart eyes={eyes} now={now} />
            </Part>
            <Part id="look" title={words.look} isForm>
              <LookPart />
            </Part>
            <Part id="temperature" title={words.temperature}>
              <TemperaturePart stay={stay} />
            </Part>
            <Part id="owner" title={words.owner}>
              <OwnerPart stay={stay} eyes={eyes} />
            </Part>
          </div>
        </div>
      </div>
      <Caution />
    </>
  )
}

function Part(props: {
  readonly id: string
  readonly title: string
  readonly isForm?: boolean
  readonly children: ReactNode
}) {
  return (
    <section id={props.id} tabIndex={-1} className={styles.part} data-screen-only={props.isForm || undefined}>
      <h2>{props.title}</h2>
      {props.children}
    </section>
  )
}

/** Goes to the part that the address names, after the heading of the page took the focus. */
function useArriveAtPart(): void {
  useEffect(() => {
    const part = location.hash.length > 1 ? document.getElementById(location.hash.slice(1)) : null
    const timer = setTimeout(() => {
      part?.scrollIntoView({ block: 'start' })
      part?.focus({ preventScroll: true })
    }, 0)
    return () => clearTimeout(timer)
  }, [])
}
