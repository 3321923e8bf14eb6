import { type FormEvent, useState } from 'react'
import { costInEnglish } from '#content/wording/app-cost.ts'
import type { Side } from '#core/animal/species.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import type { ToldId } from '#core/choice/option.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { Choices } from '../../../design/choices.tsx'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Field } from '../../../design/field.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { standing } from '../../settings/standing.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './choice.module.css'
import { type CostDraft, costDraftOf, emptyLine, type LineDraft, linesOfDraft, noPrice, timesOf } from './cost-draft.ts'

const words = costInEnglish.editor

/** What is in a year, how often, and at which of our prices; nothing is answered beforehand. */
export function CostEditor(props: {
  readonly option: ToldId
  readonly side: Side
  readonly kept: Line<BodyOf<'cost-assumption'>> | null
  readonly onClose: () => void
}) {
  const { option, side, kept, onClose } = props
  const { file, registers } = useCaseView()
  const { me, pen } = useWho()
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const key = `cost ${file.stream} ${side} ${option}`
  const begin = () => costDraftOf(kept?.body ?? null)
  const { draft, change, clear, ready } = useDraft<CostDraft>(key, me.id, begin)
  const prices = standing(registers, 'price')
  if (!ready) return <DraftAwaited />
  const put = (at: number, line: LineDraft) => change(draft.map((one, index) => (index === at ? line : one)))
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const lines = linesOfDraft(draft, prices)
    if (!lines) return
    await writeEntry(pen, {
      kind: 'cost-assumption',
      stream: file.stream,
      subject: { kind: 'ear', animal: animalIn(file), side },
      body: { option, lines },
      supersedes: kept ? [kept.header.id] : [],
      reason: kept ? words.because : null,
    })
    await clear()
    onClose()
  }
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate data-screen-only>
      {draft.map((line, at) => (
        // A line has no name of its own while it is typed.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <fieldset key={at} className={styles.costLine}>
          <legend>{fill(words.item, { number: String(at + 1) })}</legend>
          <LineFields line={line} prices={prices} tried={tries > 0} onLine={(next) => put(at, next)} />
          {draft.length > 1 && (
            <button type="button" data-weight="quiet" onClick={() => change(draft.filter((_, index) => index !== at))}>
              {fill(words.remove, { number: String(at + 1) })}
            </button>
          )}
        </fieldset>
      ))}
      <div className="row">
        <button type="button" onClick={() => change([...draft, emptyLine])}>
          {words.add}
        </button>
        <button type="submit" data-weight="main">
          {words.keep}
        </button>
        <button type="button" data-weight="quiet" onClick={() => void clear().then(onClose)}>
          {words.close}
        </button>
      </div>
    </form>
  )
}

function LineFields(props: {
  readonly line: LineDraft
  readonly prices: ReturnType<typeof standing<'price'>>
  readonly tried: boolean
  readonly onLine: (line: LineDraft) => void
}) {
  const { line, prices, tried, onLine } = props
  const fault = (is: boolean, said: string) => (tried && is ? said : null)
  return (
    <>
      <Field label={words.price} error={fault(line.price === '', words.priceMissing)}>
        {(control) => (
          <select
            {...control}
            value={line.price}
            onChange={(event) => {
              const row = event.target.value
              const named = prices.find(({ id }) => id === row)?.body.label
              onLine({ ...line, price: row, what: named ?? line.what })
            }}
          >
            <option value="">{words.choose}</option>
            {prices.map(({ id, body: { label, low, high, currency } }) => (
              <option key={id} value={id}>
                {label}: {fill(low === high ? costInEnglish.same : costInEnglish.range, { low, high, currency })}
              </option>
            ))}
            <option value={noPrice}>{words.noPrice}</option>
          </select>
        )}
      </Field>
      <TextField
        label={words.what}
        error={fault(line.what.trim() === '', words.whatMissing)}
        autoComplete="off"
        maxLength={300}
        value={line.what}
        onText={(what) => onLine({ ...line, what })}
      />
      <div className={styles.times}>
        {(['atLeast', 'atMost'] as const).map((of) => (
          <TextField
            key={of}
            label={words[of]}
            error={fault(timesOf(line[of]) === null, words.timesMissing)}
            inputMode="numeric"
            autoComplete="off"
            value={line[of]}
            onText={(text) => onLine({ ...line, [of]: text })}
          />
        ))}
      </div>
      <Choices
        legend={words.every}
        error={fault(line.every === null, words.everyMissing)}
        value={line.every}
        options={['year', 'month'] as const}
        say={(one) => costInEnglish.every[one]}
        onChoose={(every) => onLine({ ...line, every })}
      />
    </>
  )
}
