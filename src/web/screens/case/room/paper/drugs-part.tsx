import { Link } from 'wouter'
import { paperSheetInEnglish as words } from '#content/wording/app-paper-sheet.ts'
import { fill } from '#core/outcome/finding.ts'
import type { PlannedOnSheet, SheetFault, TypedDose } from '#core/theatre/read-sheet.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { TextField } from '../../../../design/text-field.tsx'
import styles from './paper.module.css'
import { sayFault } from './use-sheet.ts'

const blank: TypedDose = { time: '', amount: '', ampoule: '' }

/** What was really given of each line of the plan; nothing is filled in from the plan. */
export function DrugsPart(props: {
  readonly planned: readonly PlannedOnSheet[]
  readonly doses: Readonly<Record<string, TypedDose>>
  readonly faults: readonly SheetFault[]
  readonly otherHref: string
  readonly onDoses: (doses: Readonly<Record<string, TypedDose>>) => void
}) {
  const { planned, doses, faults, otherHref, onDoses } = props
  return (
    <section aria-labelledby="paper-drugs">
      <h2 id="paper-drugs">{words.drugs}</h2>
      {planned.length === 0 && <p>{words.noDrugs}</p>}
      <ol className={`bare ${styles.rows}`}>
        {planned.map(({ id, drug: code, route }) => {
          const dose = doses[id] ?? blank
          const drug = `${drugName(code)}, ${route}`
          const set = (more: Partial<TypedDose>) => onDoses({ ...doses, [id]: { ...dose, ...more } })
          return (
            <li key={id} className={styles.row}>
              <h3 className={styles.what}>{drug}</h3>
              <TextField
                label={words.time}
                aria-label={fill(words.timeSaid, { what: drug })}
                error={sayFault(faults, `doses.${id}.time`)}
                inputMode="numeric"
                autoComplete="off"
                value={dose.time}
                onText={(time) => set({ time })}
              />
              <TextField
                label={words.amount}
                aria-label={fill(words.amountSaid, { drug })}
                error={sayFault(faults, `doses.${id}.amount`)}
                autoComplete="off"
                value={dose.amount}
                onText={(amount) => set({ amount })}
              />
              <TextField
                label={words.ampoule}
                aria-label={fill(words.ampouleSaid, { drug })}
                autoComplete="off"
                maxLength={300}
                value={dose.ampoule}
                onText={(ampoule) => set({ ampoule })}
              />
            </li>
          )
        })}
      </ol>
      <p>
        <Link href={otherHref}>{words.otherDrug}</Link>
      </p>
    </section>
  )
}
