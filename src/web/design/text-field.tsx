import type { InputHTMLAttributes } from 'react'
import { Field } from './field.tsx'

/**
 * A labelled line to type in; whatever else an input may have is handed on.
 *
 * @example <TextField label="Phone" type="tel" value={phone} onText={setPhone} />
 */
export function TextField(
  props: {
    readonly label: string
    readonly help?: string | undefined
    readonly error?: string | null | undefined
    readonly onText: (text: string) => void
  } & Omit<InputHTMLAttributes<HTMLInputElement>, 'id' | 'onChange'>,
) {
  const { label, help, error, onText, ...input } = props
  return (
    <Field label={label} help={help} error={error}>
      {(control) => <input {...control} {...input} onChange={(event) => onText(event.target.value)} />}
    </Field>
  )
}
