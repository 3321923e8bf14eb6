import { type FormEvent, useDeferredValue, useMemo, useState } from 'react'
import { triageRules } from '#content/follow-up/triage-rules.ts'
import { referralInEnglish as words } from '#content/wording/app-referral.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { type Described, matchesOf } from '#core/identity/match.ts'
import { fill } from '#core/outcome/finding.ts'
import { mayWrite } from '#core/people/may-write.ts'
import {
  answersOf,
  describedBy,
  emptyCall,
  type FirstCall,
  faultsIn,
  lateAnswerOf,
  missingIn,
  sameAs,
} from '#core/referral/first-call.ts'
import { triage, urgencyStanding } from '#core/referral/triage.ts'
import { Notice } from '../../design/notice.tsx'
import { Page } from '../../design/page.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { useLists } from '../../journal/cases.ts'
import { useDraft } from '../../journal/drafts.ts'
import { keepEntries } from '../../journal/outbox.ts'
import { useWho } from '../../session/use-who.ts'
import { AnimalPart } from './animal-part.tsx'
import { CallerPart } from './caller-part.tsx'
import { EarPart } from './ear-part.tsx'
import { Kept } from './kept.tsx'
import { LatePart } from './late-part.tsx'
import { MatchesPart } from './matches-part.tsx'
import { OwnerPart } from './owner-part.tsx'
import { RedFlagsPart, SafetyPart } from './red-flags-part.tsx'
import styles from './screen.module.css'
import { KeepPart, UrgencyPart } from './urgency-part.tsx'
import { lookAgain, useLate } from './use-late.ts'
import { VetPart } from './vet-part.tsx'
import { type WrittenCall, writeCall } from './write-call.ts'

/** New referral: one page while the phone is at the ear. What decides how soon is asked before who it is about. */
export function NewReferralScreen() {
  const { me } = useWho()
  const [kept, setKept] = useState<WrittenCall | null>(null)
  const may = (mayWrite.referral as readonly string[]).includes(me.role)
  if (!may) {
    return (
      <Page title={words.title}>
        <Notice>{fill(words.mayNot, { role: shell.roles[me.role] })}</Notice>
      </Page>
    )
  }
  if (kept) return <Kept written={kept} onNext={() => setKept(null)} />
  return <CallForm onKept={setKept} />
}

function CallForm({ onKept }: { readonly onKept: (written: WrittenCall) => void }) {
  const { me, pen, clinic } = useWho()
  const language = clinic.row.language
  const { draft: call, change, clear, ready, found } = useDraft('referral', me.id, () => emptyCall(language))
  const lists = useLists()
  const cases = lists.kind === 'read' ? lists.value.cases : []
  // Typing never waits for the search, and only what describes the animal searches anew.
  const described = useDeferredValue(JSON.stringify(describedBy(call, pen.zone)))
  const matches = useMemo(() => matchesOf(JSON.parse(described) as Described, cases), [described, cases])
  const judged = triage(answersOf(call), triageRules)
  const standing = urgencyStanding(call.urgency, judged)
  const same = sameAs(call, matches)
  const late = useLate(call, same?.row.stream ?? null, pen.zone)
  const offered = late.ears.kind === 'found' ? late.ears.ears : []
  const missing = missingIn(call, matches, standing, offered)
  const faults = faultsIn(call, pen.zone)
  const put = (part: Partial<FirstCall>) => change({ ...call, ...part })
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    const found = matchesOf(describedBy(call, pen.zone), cases)
    const ears = await lookAgain(call, sameAs(call, found)?.row.stream ?? null, pen.zone)
    const asked = ears.ears.kind === 'found' ? ears.ears.ears : []
    if (missingIn(call, found, standing, asked).length > 0 || faults.length > 0 || standing.urgency === null) return
    const written = writeCall(pen, call, found, { triage: judged, urgency: standing.urgency, late: ears })
    await keepEntries(written.entries, written.rows)
    await clear()
    scrollTo(0, 0)
    onKept(written)
  }
  const startAgain = async () => {
    if (!confirm(words.startAgainSure)) return
    change(emptyCall(language))
    await clear()
  }
  const actions = (
    <button type="button" data-weight="quiet" onClick={() => void startAgain()}>
      {words.startAgain}
    </button>
  )
  if (!ready) return <Page title={words.title}>{null}</Page>
  return (
    <Page wide title={words.title} lead={words.lead} actions={actions}>
      {found && <Notice>{fill(words.found, { when: sayWhen(found, pen.zone) })}</Notice>}
      <form className={styles.form} onSubmit={keep} noValidate>
        <CallerPart call={call} put={put} />
        <EarPart call={call} put={put} faults={faults} />
        <RedFlagsPart call={call} put={put} />
        <AnimalPart call={call} put={put} faults={faults} matches={matches} same={same} />
        <OwnerPart call={call} put={put} faults={faults} cases={cases} same={same} />
        <MatchesPart call={call} put={put} matches={matches} />
        <LatePart
          ears={late.ears}
          signs={late.signs}
          today={late.today}
          answer={lateAnswerOf(call, offered)}
          onAnswer={(answer) => put({ late: answer })}
        />
        <VetPart call={call} put={put} />
        <SafetyPart call={call} put={put} />
        <UrgencyPart call={call} put={put} judged={judged} standing={standing} />
        <KeepPart missing={missing} faults={faults} />
      </form>
    </Page>
  )
}
