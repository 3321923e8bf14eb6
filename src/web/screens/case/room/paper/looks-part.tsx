import { observation as form } from '#content/forms/observation.ts'
import { paperSheetInEnglish as words } from '#content/wording/app-paper-sheet.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Observable } from '#core/theatre/ledger.ts'
import type { SheetFault, TypedRow } from '#core/theatre/read-sheet.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { TextField } from '../../../../design/text-field.tsx'
import styles from './paper.module.css'
import { sayFault } from './use-sheet.ts'

const { units } = form.fields['values.value'].unitBy
const observables = Object.keys(units) as Observable[]
const blank: TypedRow = { time: '', values: {}, method: '' }

/** The observations of the sheet, one group for each line of it. */
export function LooksPart(props: {
  readonly looks: readonly TypedRow[]
  readonly faults: readonly SheetFault[]
  readonly onLooks: (looks: readonly TypedRow[]) => void
}) {
  const { looks, faults, onLooks } = props
  return (
    <section aria-labelledby="paper-looks">
      <h2 id="paper-looks">{words.looks}</h2>
      {looks.map((row, index) => {
        const place = `looks.${index}`
        const set = (more: Partial<TypedRow>) =>
          onLooks(looks.map((one, at) => (at === index ? { ...one, ...more } : one)))
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line of the sheet has nothing but its place.
          <fieldset key={index} className={styles.look}>
            <legend>{fill(words.look, { number: String(index + 1) })}</legend>
            <TextField
              label={words.time}
              error={sayFault(faults, `${place}.time`)}
              inputMode="numeric"
              autoComplete="off"
              value={row.time}
              onText={(time) => set({ time })}
            />
            {observables.map((what) => (
              <TextField
                key={what}
                label={`${capital(ledgerInEnglish.names[what])}, ${unitWord(units[what])}`}
                error={sayFault(faults, `${place}.values.${what}`)}
                inputMode="decimal"
                autoComplete="off"
                value={row.values[what] ?? ''}
                onText={(text) => set({ values: { ...row.values, [what]: text } })}
              />
            ))}
            <TextField
              label={words.method}
              error={sayFault(faults, `${place}.method`)}
              autoComplete="off"
              maxLength={300}
              value={row.method}
              onText={(method) => set({ method })}
            />
          </fieldset>
        )
      })}
      <p>
        <button type="button" onClick={() => onLooks([...looks, blank])}>
          {words.moreLook}
        </button>
      </p>
    </section>
  )
}
