import { caseInEnglish } from '#content/wording/app-case.ts'
import { Field } from '../../design/field.tsx'

/** Why an entry is corrected, settled, taken back or filed elsewhere. */
export function ReasonField(props: {
  readonly help?: string
  readonly error: string | null
  readonly value: string
  readonly onText: (reason: string) => void
}) {
  const { help = caseInEnglish.write.reasonHelp, error, value, onText } = props
  return (
    <Field label={caseInEnglish.write.reason} help={help} error={error}>
      {(control) => <textarea {...control} value={value} onChange={(event) => onText(event.target.value)} />}
    </Field>
  )
}
