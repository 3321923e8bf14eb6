import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { howInEnglish as words } from '#content/wording/app-how.ts'
import { donorGroups, type HowDraft, type HowQuestion, type HowRefusal } from '#core/dosing/read-how.ts'
import { carriers } from '#core/formulary/carriers.ts'
import type { DoseRow } from '#core/formulary/drug.ts'
import { ownVolumes } from '#core/journal/how-given.ts'
import { fill } from '#core/outcome/finding.ts'
import { Field } from '../../design/field.tsx'
import { TextField } from '../../design/text-field.tsx'
import styles from './dose-choice.module.css'

/** How the dose is given: only what the row makes sense of is asked, and nothing is answered for anybody. */
export function HowPart(props: {
  readonly draft: HowDraft
  readonly row: DoseRow
  readonly questions: readonly HowQuestion[]
  readonly refusals: readonly HowRefusal[]
  readonly onChange: (draft: Partial<HowDraft>) => void
}) {
  const { draft, row, questions, refusals, onChange } = props
  if (questions.length === 0) return null
  const asks = (question: HowQuestion) => questions.includes(question)
  const errorOf = (at: keyof HowDraft) => {
    const refusal = refusals.find((one) => one.at === at)
    return refusal ? fill(formRefusals[refusal.because], refusal.about) : null
  }
  const typed = (at: keyof HowDraft, help?: string) => (
    <TextField
      label={words.labels[at]}
      help={help}
      error={errorOf(at)}
      autoComplete="off"
      value={draft[at]}
      onText={(text) => onChange({ [at]: text })}
    />
  )
  const picked = (
    at: keyof HowDraft,
    unsaid: string,
    options: readonly (readonly [value: string, label: string])[],
    help?: string,
  ) => (
    <Field label={words.labels[at]} error={errorOf(at)} help={help}>
      {(control) => (
        <select {...control} value={draft[at]} onChange={(event) => onChange({ [at]: event.target.value })}>
          <option value="">{unsaid}</option>
          {options.map(([value, label]) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
  const listed = (options: Readonly<Record<string, string>>) => Object.entries(options)
  return (
    <fieldset className={styles.how}>
      <legend>{words.legend}</legend>
      {asks('container') && picked('runsFrom', words.none, listed(words.runsFrom))}
      {asks('container') && draft.runsFrom !== '' && (
        <>
          {typed('volume', words.helps.volume)}
          {typed('rate', words.helps.rate)}
          {picked(
            'fluid',
            words.unsaid,
            carriers.map((one) => [one, words.fluids[one]] as const),
          )}
          {picked(
            'ownVolume',
            words.ownVolumeUnsaid,
            ownVolumes.map((one) => [one, words.ownVolume[one]] as const),
          )}
          {typed('container', words.helps.container)}
        </>
      )}
      {asks('mixed') && draft.runsFrom === '' && (
        <>
          {typed('mixedFrom', words.helps.mixed)}
          {typed('mixedProduct')}
          {typed('mixedFinal')}
        </>
      )}
      {asks('loading') && (
        <>
          {typed('loading', words.helps.loading)}
          {draft.loading.trim() !== '' && typed('loadingOver')}
        </>
      )}
      {asks('over') && typed('over', words.helps.over)}
      {asks('set') && draft.runsFrom === '' && typed('set', words.helps.set)}
      {asks('course') && (
        <>
          {typed('every', words.helps.every)}
          {typed('days', words.helps.days)}
        </>
      )}
      {asks('bottle') && (
        <>
          {typed('mark', words.helps.mark)}
          {picked('xylitol', words.xylitolUnread, listed(words.xylitol), words.helps.xylitol)}
        </>
      )}
      {asks('deficit') && (
        <>
          {typed('deficit')}
          {typed('deficitOver')}
        </>
      )}
      {asks('blood') && (
        <>
          {picked(
            'donor',
            words.notTyped,
            donorGroups(row.species).map((one) => [one, words.donors[one]] as const),
          )}
          {picked('crossMatch', words.notMatched, listed(words.crossMatch))}
          {typed('pcvNow', words.helps.goal)}
          {typed('pcvAim')}
          {typed('pcvDonor')}
        </>
      )}
    </fieldset>
  )
}
