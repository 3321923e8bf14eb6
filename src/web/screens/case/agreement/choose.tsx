import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { Field } from '../../../design/field.tsx'

/** One of a list that may be long; nothing is chosen beforehand. */
export function Choose(props: {
  readonly label: string
  readonly help?: string | undefined
  readonly error?: string | null
  readonly value: string | null
  readonly options: readonly (readonly [id: string, name: string])[]
  /** What an empty answer is called. */
  readonly none?: string
  readonly onChoose: (id: string | null) => void
}) {
  const { label, help, error, value, options, none = words.choose, onChoose } = props
  return (
    <Field label={label} help={help} error={error}>
      {(control) => (
        <select {...control} value={value ?? ''} onChange={(event) => onChoose(event.target.value || null)}>
          <option value="">{none}</option>
          {options.map(([id, name]) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
}
