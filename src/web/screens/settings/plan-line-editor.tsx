import { plansInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { doseFindingWords } from '#content/wording/dosing-findings.ts'
import type { Species } from '#core/animal/species.ts'
import { rowsFor } from '#core/dosing/read-chosen.ts'
import { nothingSaid, questionsOf } from '#core/dosing/read-how.ts'
import type { LineDraft, PlanRefusal } from '#core/dosing/read-plan.ts'
import { judgeItem } from '#core/dosing/shelf-state.ts'
import { rowKey } from '#core/formulary/drug.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { Field } from '../../design/field.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useMinute } from '../../journal/use-minute.ts'
import { useWho } from '../../session/use-who.ts'
import { DoseChoice } from './dose-choice.tsx'
import { drugs } from './drugs.ts'
import { HowPart } from './how-part.tsx'
import styles from './plan.module.css'
import { sayProduct } from './say-product.ts'

/** One line of a plan: its name, the chosen dose with its reason, and the product it is drawn from. */
export function PlanLineEditor(props: {
  readonly number: number
  readonly draft: LineDraft
  readonly species: Species
  readonly house: Case
  readonly refusals: readonly PlanRefusal[]
  readonly onChange: (draft: LineDraft) => void
  readonly onRemove: () => void
}) {
  const { number, draft, species, house, refusals, onChange, onRemove } = props
  const mine = refusals.filter((one) => 'line' in one && one.line === draft.key)
  const name = mine.find((one) => one.at === 'line')
  const chosen = mine.flatMap((one) => (one.at === 'chosen' ? [one.refusal] : []))
  const drug = drugs.find(({ id }) => id === draft.drug)
  const row = rowsFor(drug, species).find((one) => rowKey(one) === draft.row)
  const { clinic } = useWho()
  const today = dayOf({ at: useMinute(), zone: clinic.row.zone })
  const products = house.live('shelf-item').filter(({ body }) => body.drug === draft.drug)
  return (
    <fieldset className={styles.editing}>
      <legend>{fill(words.line, { number: String(number) })}</legend>
      <TextField
        label={words.lineName}
        help={words.lineNameHelp}
        error={name ? (name.because === 'twice' ? words.lineTwice : words.notWritten) : null}
        maxLength={80}
        autoComplete="off"
        value={draft.line}
        onText={(text) => onChange({ ...draft, line: text })}
      />
      <DoseChoice
        draft={draft}
        species={species}
        refusals={chosen}
        onChange={(next) =>
          onChange({ ...draft, ...next, ...(next.drug === draft.drug ? {} : { ...nothingSaid, shelfItem: '' }) })
        }
      />
      {drug && row && (
        <HowPart
          draft={draft}
          row={row}
          questions={questionsOf(drug, row, false)}
          refusals={mine.flatMap((one) => (one.at === 'how' ? [one.refusal] : []))}
          onChange={(next) => onChange({ ...draft, ...next })}
        />
      )}
      {draft.drug !== '' && (
        <Field label={words.product}>
          {(control) => (
            <select
              {...control}
              value={draft.shelfItem}
              onChange={(event) => onChange({ ...draft, shelfItem: event.target.value })}
            >
              <option value="">{words.noProduct}</option>
              {products.map(({ header, body }) => (
                <option key={header.id} value={body.item}>
                  {sayProduct(body, today)}
                </option>
              ))}
              {draft.shelfItem !== '' && products.every(({ body }) => body.item !== draft.shelfItem) && (
                <option value={draft.shelfItem}>{fill(words.gone, { id: draft.shelfItem })}</option>
              )}
            </select>
          )}
        </Field>
      )}
      {products
        .filter(({ body }) => body.item === draft.shelfItem)
        .flatMap(({ body }) => judgeItem(body, today))
        .map(({ code, about }) => (
          <p key={code}>
            <strong>{fill(doseFindingWords[code], about)}</strong>
          </p>
        ))}
      <p>
        <button type="button" onClick={onRemove}>
          {fill(words.removeLine, { number: String(number) })}
        </button>
      </p>
    </fieldset>
  )
}
