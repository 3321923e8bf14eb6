import { type FormEvent, useState } from 'react'
import { wardInEnglish } from '#content/wording/app-ward.ts'
import { readQuantityText } from '#core/forms/read-leaf.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import type { Stay } from '#core/ward/stay.ts'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useServerNow } from '../../../journal/use-server-now.ts'
import { useWho } from '../../../session/use-who.ts'
import { clockNear } from '../../ward/say-due.ts'
import { useRounds } from '../../ward/use-rounds.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './round.module.css'

const words = wardInEnglish.round
type Value = BodyOf<'observation'>['values'][number]['value']
const firsts = ['sternal', 'normal-temperature', 'eaten', 'walked'] as const

/** The temperature as it is typed, and the first events after the anaesthetic with one tap each. */
export function TemperaturePart({ stay }: { readonly stay: Stay }) {
  const { file } = useCaseView()
  const { me, clinic } = useWho()
  const { observe } = useRounds(file)
  const now = useServerNow(20_000)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft(`ward temperature ${file.stream}`, me.id, () => ({ text: '' }))
  if (!ready) return null
  const read = readQuantityText(draft.text, ['Cel'], { decimalMark: clinic.row.decimalMark })
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (read.kind !== 'answer') return
    const value = read.answer as unknown as Value
    await observe({ values: [{ what: 'temperature', value, method: null, artefact: false }] })
    change({ text: '' })
    await clear()
    setTries(0)
  }
  const looks = file.theCase.live('observation').filter(({ at }) => at >= stay.since)
  const measured = looks.flatMap(({ at, body }) =>
    body.values.flatMap(({ what, value, artefact }) => (what === 'temperature' && !artefact ? [{ at, value }] : [])),
  )
  const last = measured.at(-1)
  const at = (instant: string) => clockNear(instant, now, file.clinic.zone)
  return (
    <>
      <p>{last ? fill(words.last, { value: last.value.value, when: at(last.at) }) : words.noTemperature}</p>
      {writersOf('observation').includes(me.role) && (
        <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
          <TextField
            label={words.temperatureLabel}
            help={words.temperatureHelp}
            inputMode="decimal"
            autoComplete="off"
            error={tries > 0 && read.kind !== 'answer' ? words.temperatureWrong : null}
            value={draft.text}
            onText={(text) => change({ text })}
          />
          <p>
            <button type="submit" data-weight="main">
              {words.keepTemperature}
            </button>
          </p>
        </form>
      )}
      <ul className={`bare ${styles.firsts}`}>
        {firsts.map((first) => {
          const seen = looks.find(({ body }) => body.first === first)
          return (
            <li key={first}>
              {seen ? (
                fill(words.firstAt, { what: words.firsts[first], when: at(seen.at) })
              ) : (
                <button type="button" onClick={() => void observe({ first })}>
                  {words.firsts[first]}
                </button>
              )}
            </li>
          )
        })}
      </ul>
    </>
  )
}
