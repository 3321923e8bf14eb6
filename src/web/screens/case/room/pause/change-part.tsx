import { type FormEvent, useState } from 'react'
import { pauseInEnglish as words } from '#content/wording/app-pause.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { PauseAnswer } from '#core/theatre/pause-run.ts'
import { clockOf } from '#core/time/moment.ts'
import { Choices } from '../../../../design/choices.tsx'
import { TextField } from '../../../../design/text-field.tsx'
import { useDraft } from '../../../../journal/drafts.ts'
import { useWho } from '../../../../session/use-who.ts'
import { KeepOrClose } from '../../keep-or-close.tsx'
import { ReasonField } from '../../reason-field.tsx'
import { useFaultFocus } from '../../use-fault-focus.ts'
import room from '../room.module.css'
import { usePausing } from './use-pausing.ts'
import type { PauseWho } from './who-part.tsx'

type Draft = {
  readonly answer: PauseAnswer['body']['answer'] | null
  readonly when: 'anew' | 'wrong' | null
  readonly because: string
  readonly reason: string
}
const nothing: Draft = { answer: null, when: null, because: '', reason: '' }

/** Another answer instead of one that stands: spoken anew, or written wrongly before; always with a reason. */
export function ChangePart(props: {
  readonly answer: PauseAnswer
  readonly operation: OperationOnFile
  readonly who: PauseWho
  /** False while sources of the side disagree: the answer cannot become YES. */
  readonly mayBeYes: boolean
  readonly onClose: () => void
}) {
  const { answer: old, operation, who, mayBeYes, onClose } = props
  const { me } = useWho()
  const { change: write } = usePausing(operation)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft(`pause change ${old.header.id}`, me.id, () => nothing)
  if (!ready) return null
  const { answer, when } = draft
  const because = draft.because.trim()
  const reason = draft.reason.trim()
  const asksWhy = answer === 'no' || answer === 'unknown'
  const missing = (is: boolean, said: string) => (tries > 0 && is ? said : null)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (answer === null || when === null || reason === '' || (asksWhy && because === '')) return
    const anew = when === 'anew'
    const spoke = anew ? { spokenBy: who.spokenBy ?? old.body.spokenBy, ledBy: who.ledBy ?? old.body.ledBy } : {}
    const body = { ...old.body, ...spoke, answer, because: asksWhy ? because : null }
    await write(old, body, { reason, anew })
    await clear()
    onClose()
  }
  return (
    <form ref={form} className={room.part} onSubmit={(event) => void keep(event)} noValidate>
      <Choices
        legend={words.changeTo}
        error={missing(answer === null, words.choose)}
        value={answer}
        {...(mayBeYes ? {} : { help: words.sideStops })}
        options={mayBeYes ? (['yes', 'no', 'unknown'] as const) : (['no', 'unknown'] as const)}
        say={(one) => words.answers[one]}
        onChoose={(one) => change({ ...draft, answer: one })}
      />
      {asksWhy && (
        <TextField
          label={words.whyNot[answer]}
          error={missing(because === '', words.whyNotMissing)}
          autoComplete="off"
          value={draft.because}
          onText={(text) => change({ ...draft, because: text })}
        />
      )}
      <Choices
        legend={words.when}
        error={missing(when === null, words.choose)}
        value={when}
        options={['anew', 'wrong'] as const}
        say={(one) => fill(words.whens[one], { at: clockOf(old.at, old.header.happenedAt.zone) })}
        onChoose={(one) => change({ ...draft, when: one })}
      />
      <ReasonField
        error={missing(reason === '', words.whyNotMissing)}
        value={draft.reason}
        onText={(text) => change({ ...draft, reason: text })}
      />
      <KeepOrClose keep={words.keepChange} close={words.close} onClose={onClose} />
    </form>
  )
}
