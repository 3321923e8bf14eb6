import { type FormEvent, useState } from 'react'
import { Link, useLocation, useSearch } from 'wouter'
import { lateSignNames, lateInEnglish as words } from '#content/wording/app-late.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { nothingSaidOfEars, standingAnswer } from '#core/late/late-answer.ts'
import { toldOfFile } from '#core/late/told-of-file.ts'
import type { ToldSign } from '#core/late/told-signs.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { sayMoment } from '#core/time/moment.ts'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { LateChoices } from '../../../late/late-choices.tsx'
import { lateEntries } from '../../../late/late-entries.ts'
import { useIndexEars } from '../../../late/use-index-ears.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, keptHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { MayNotWrite } from '../may-correct.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import { saidIn, signsIn, useOpenSigns, useWanted } from './use-told.ts'

/** Says to which operated ear a late sign belongs that was told in this file; nothing is joined by it. */
export default function LateScreen() {
  return (
    <WithCase>
      <Late />
    </WithCase>
  )
}

function Late() {
  const { id } = useCaseView()
  const { me } = useWho()
  const signs = useOpenSigns()
  const wanted = new URLSearchParams(useSearch()).get('told')
  const sign = signs.find(({ told }) => told === wanted) ?? signs[0]
  const may = writersOf('late-sign').includes(me.role)
  return (
    <Page title={words.page.title} whose={<CaseLine />} lead={words.lead}>
      {sign === undefined ? (
        <p role="status">{words.page.nothing}</p>
      ) : may ? (
        <SayWhere key={sign.told} sign={sign} />
      ) : (
        <MayNotWrite kind="late-sign" />
      )}
      <p>
        <Link href={casePageHref(id)}>{words.page.back}</Link>
      </p>
    </Page>
  )
}

function SayWhere({ sign }: { readonly sign: ToldSign }) {
  const { file, id } = useCaseView()
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft(`late ${sign.told}`, me.id, () => nothingSaidOfEars)
  const ears = useIndexEars(useWanted(sign))
  if (!ready) return <DraftAwaited />
  const { line, told } = sign
  const { ownerName, day, name } = toldOfFile(file, sign)
  const signs = signsIn(sign)
  const answer = standingAnswer(draft, ears.kind === 'found' ? ears.ears : [])
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (ears.kind !== 'found' || answer.belongs === null) return
    const telling = {
      stream: line.header.stream,
      subject: { kind: 'animal', animal: animalIn(file) },
      told,
      at: line.at,
      signs,
      daysOfSigns: 'daysOfSigns' in line.body ? line.body.daysOfSigns : null,
      seenBy: seenBy(line.body),
      name: name ?? '',
      owner: ownerName ?? words.unknown,
      said: saidIn(sign),
      before: sign.answer?.header.id ?? null,
    } as const
    const entries = lateEntries(pen, telling, ears, answer)
    const [first] = entries
    if (!first) return
    await keepEntries(entries)
    await clear()
    navigate(keptHref(id, first.id))
  }
  return (
    <form ref={form} className="stack" onSubmit={(event) => void keep(event)} noValidate>
      <Notice title={fill(words.heard, { signs: signs.map((one) => lateSignNames[one]).join(', ') })}>
        <p>
          {fill(words.notice.told, { when: sayMoment({ ...line.header.happenedAt, at: line.at }), said: saidIn(sign) })}
        </p>
        {sign.answer?.body.because && <p>{sign.answer.body.because}</p>}
      </Notice>
      {ears.kind === 'asking' && <p role="status">{words.asking}</p>}
      {ears.kind === 'away' && <p role="status">{words.awayHere}</p>}
      {ears.kind === 'found' && (
        <>
          {ears.ears.length === 0 && <p role="status">{words.nobody}</p>}
          <LateChoices
            ears={ears.ears}
            leftOff={ears.leftOff}
            signs={signs}
            toldOn={day}
            answer={answer}
            error={tries > 0 && answer.belongs === null ? words.missing : null}
            onAnswer={change}
          />
          <p>
            <button type="submit" data-weight="main">
              {words.keep}
            </button>
          </p>
        </>
      )}
    </form>
  )
}

/** Who saw it: whoever rang or wrote. A call of ours, and our questions, are answered by the owner. */
function seenBy(body: ToldSign['line']['body']): 'owner' | 'referring-vet' | 'elsewhere' {
  if ('examinedBy' in body) return 'referring-vet'
  if (!('caller' in body)) return 'owner'
  return body.caller === 'other' ? 'elsewhere' : body.caller
}
