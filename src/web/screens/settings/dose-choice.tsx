import { useId } from 'react'
import { Link } from 'wouter'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { routeWords } from '#content/wording/app-form-words.ts'
import { choosingInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { doseFindingWords } from '#content/wording/dosing-findings.ts'
import type { Species } from '#core/animal/species.ts'
import { type ChosenDraft, type ChosenRefusal, judgeChosen, readDoseFor, rowsFor } from '#core/dosing/read-chosen.ts'
import { type DoseRow, type Drug, rowKey } from '#core/formulary/drug.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { sayRow } from '#documents/sources/say-drug.ts'
import { Field } from '../../design/field.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useWho } from '../../session/use-who.ts'
import { Ranges } from '../sources/ranges.tsx'
import styles from './dose-choice.module.css'
import { choosingFacts, drugs } from './drugs.ts'

/**
 * Drug, use, route, then what the sources say, then the one dose that a person types, and why. No step is taken for
 * anybody: not the only row, not an end of the range.
 */
export function DoseChoice(props: {
  readonly draft: ChosenDraft
  readonly species: Species
  readonly refusals: readonly ChosenRefusal[]
  readonly onChange: (draft: ChosenDraft) => void
}) {
  const { draft, species, refusals, onChange } = props
  const drug = drugs.find(({ id }) => id === draft.drug)
  const rows = rowsFor(drug, species)
  const row = rows.find((one) => rowKey(one) === draft.row)
  const errorAt = (at: keyof ChosenDraft) => sayRefusal(refusals.find((one) => one.at === at))
  const animal = animals[species]
  return (
    <div className="stack">
      <Field label={words.drug} error={errorAt('drug')}>
        {(control) => (
          <select
            {...control}
            value={draft.drug}
            onChange={(event) => onChange({ ...draft, drug: event.target.value, row: '', route: '', dose: '' })}
          >
            <option value="">{words.chooseDrug}</option>
            {drugs.map((one) => {
              const none = rowsFor(one, species).length === 0
              return (
                <option key={one.id} value={one.id} disabled={none}>
                  {none ? fill(words.noDoseHere, { drug: one.name, animal }) : one.name}
                </option>
              )
            })}
          </select>
        )}
      </Field>
      {drug && rows.length === 0 && <p>{fill(words.noRow, { drug: drug.name, animal })}</p>}
      {drug && rows.length > 0 && (
        <Options
          legend={words.row}
          error={errorAt('row')}
          options={rows.map((one) => [rowKey(one), sayRow(one)] as const)}
          value={draft.row}
          onChange={(next) => onChange({ ...draft, row: next, route: '', dose: '' })}
        />
      )}
      {drug && row && (
        <>
          <Options
            legend={words.route}
            error={errorAt('route')}
            options={row.routes.map((route) => [route, routeWords[route]] as const)}
            value={draft.route}
            onChange={(route) => onChange({ ...draft, route })}
          />
          <div className={styles.range}>
            <Ranges row={row} />
            <p>
              <Link href={`/sources/formulary/${drug.id}`}>{fill(words.page, { drug: drug.name })}</Link>
            </p>
          </div>
          <TextField
            label={words.dose}
            help={words.doseHelp}
            error={errorAt('dose')}
            autoComplete="off"
            value={draft.dose}
            onText={(text) => onChange({ ...draft, dose: text })}
          />
          <Heard drug={drug} row={row} text={draft.dose} />
        </>
      )}
      <Field label={words.because} help={words.becauseHelp} error={errorAt('because')}>
        {(control) => (
          <textarea
            {...control}
            maxLength={300}
            value={draft.because}
            onChange={(event) => onChange({ ...draft, because: event.target.value })}
          />
        )}
      </Field>
    </div>
  )
}

const animals = { dog: 'dog', cat: 'cat' } as const

/** What was understood of the typed dose, and where it lies beside the range. */
function Heard({ drug, row, text }: { readonly drug: Drug; readonly row: DoseRow; readonly text: string }) {
  const { clinic } = useWho()
  const read = readDoseFor(row, text, clinic.row.decimalMark)
  if (text.trim() === '' || read.kind === 'refusal') return <p role="status" className={styles.heard} />
  const findings = judgeChosen(drug, row, read.answer, choosingFacts.rules)
  return (
    <div role="status" className={styles.heard}>
      <p>{fill(words.readAs, { dose: sayUnit(read.answer) })}</p>
      {findings.length === 0 && <p>{words.inside}</p>}
      {findings.map(({ code, about }) => (
        <p key={code}>
          <strong>{fill(doseFindingWords[code], about)}</strong>
        </p>
      ))}
    </div>
  )
}

function sayRefusal(refusal: ChosenRefusal | undefined): string | null {
  if (!refusal) return null
  if (refusal.because === 'blocked') return fill(doseFindingWords[refusal.finding.code], refusal.finding.about)
  if (refusal.because === 'not-chosen' || refusal.because === 'not-written') return words.refusals[refusal.at]
  if (refusal.because === 'quantity-empty') return words.refusals.dose
  return fill(formRefusals[refusal.because], refusal.about)
}

export function Options(props: {
  readonly legend: string
  readonly error?: string | null
  readonly options: readonly (readonly [value: string, label: string])[]
  readonly value: string
  readonly onChange: (value: string) => void
}) {
  const { legend, error, options, value, onChange } = props
  const id = useId()
  return (
    <fieldset className={styles.options} aria-describedby={error ? `${id}-error` : undefined}>
      <legend>{legend}</legend>
      {options.map(([option, label]) => (
        <label key={option}>
          <input type="radio" name={id} checked={value === option} onChange={() => onChange(option)} />
          <span>{label}</span>
        </label>
      ))}
      {error && (
        <p id={`${id}-error`} className={styles.error}>
          {error}
        </p>
      )}
    </fieldset>
  )
}
