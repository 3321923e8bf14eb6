import { type FormEvent, useState } from 'react'
import { useLocation } from 'wouter'
import type { FilingAnswer } from '#actions/tray/read-filing.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { rootOf } from '#core/owed/operations.ts'
import { trayStream } from '#core/tray/tray.ts'
import { Choices } from '../../../design/choices.tsx'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Page } from '../../../design/page.tsx'
import { ReadingView } from '../../../design/reading-view.tsx'
import { useAction } from '../../../journal/cases.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { makeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { historyHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { kindName } from '../entry.tsx'
import { mayCorrect } from '../may-correct.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import { WithLine } from '../with-line.tsx'
import { EntryToGo } from './entry-to-go.tsx'

const words = caseInEnglish.withdraw
type Because = BodyOf<'withdrawal'>['because']
type Typed = { readonly because: Because | null; readonly reason: string }

/** Takes an entry back, with the reason: it stays in the history and counts no more. */
export default function WithdrawScreen() {
  return (
    <WithCase>
      <WithLine>{(line) => <Withdraw line={line} />}</WithLine>
    </WithCase>
  )
}

/** What was filed from the holding tray goes back there. Which filing that was, only the server can say. */
function Withdraw({ line }: { readonly line: Line }) {
  const { me } = useWho()
  const { theCase } = useCaseView().file
  // A later report of a laboratory came in by itself; of a corrected paper its first entry came in.
  const first = line.header.refiledFrom === null ? (theCase.line(rootOf(theCase, line.header.id)) ?? line) : line
  const fromElsewhere =
    ['paper', 'photograph', 'specimen-result'].includes(line.header.kind) && first.header.refiledFrom !== null
  if (!fromElsewhere || !mayCorrect(line, me.role)) return <WithdrawPage line={line} refile={null} />
  return <WithdrawFiled line={line} entry={first.header.id} />
}

function WithdrawFiled({ line, entry }: { readonly line: Line; readonly entry: string }) {
  const filing = useAction<FilingAnswer>('read-filing', { entry })
  if (filing.kind === 'read') return <WithdrawPage line={line} refile={filing.value.refile} />
  return (
    <Page
      title={fill(words.title, { kind: kindName(line.header.kind) })}
      whose={<CaseLine about={line.header.subject} />}
    >
      {filing.kind === 'failed' && filing.code === 'unreachable' && <p>{words.trayAway}</p>}
      <ReadingView reading={filing} again={filing.again}>
        {() => null}
      </ReadingView>
    </Page>
  )
}

function WithdrawPage({ line, refile }: { readonly line: Line; readonly refile: string | null }) {
  const { id } = useCaseView()
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const { stream, subject } = line.header
  const { draft, change, clear, ready } = useDraft<Typed>(`${stream} withdraw ${line.header.id}`, me.id, () => ({
    because: null,
    reason: '',
  }))
  const [tries, setTries] = useState(0)
  const tried = tries > 0
  const form = useFaultFocus(tries)
  const reason = draft.reason.trim()
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (draft.because === null || reason === '') return
    const about = { kind: 'withdrawal', body: { because: draft.because }, reason } as const
    const here = makeEntry(pen, { ...about, stream, subject, withdraws: line.header.id })
    const inTray = { ...about, stream: trayStream, subject: { kind: 'clinic' } } as const
    await keepEntries([here, ...(refile === null ? [] : [makeEntry(pen, { ...inTray, withdraws: refile })])])
    await clear()
    navigate(historyHref(id, line.header.id))
  }
  if (!ready) return <DraftAwaited />
  return (
    <EntryToGo
      line={line}
      words={words}
      may={mayCorrect(line, me.role)}
      form={form}
      reason={{
        value: draft.reason,
        missing: tried && reason === '',
        onText: (text) => change({ ...draft, reason: text }),
      }}
      onKeep={keep}
    >
      <Choices
        legend={words.because}
        value={draft.because}
        options={['wrong', 'twice', 'wrong-animal', 'other'] as const}
        say={(one) => words.becauses[one]}
        error={tried && draft.because === null ? words.becauseMissing : null}
        onChoose={(because) => change({ ...draft, because })}
      />
      {refile !== null && <p>{words.tray}</p>}
    </EntryToGo>
  )
}
