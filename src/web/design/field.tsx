import { type ReactElement, useId } from 'react'
import styles from './field.module.css'

type Control = { readonly id: string; readonly 'aria-describedby'?: string; readonly 'aria-invalid'?: true }

/**
 * A labelled control with its help and its error. The control is made by `children` from the ids it needs.
 *
 * @example <Field label="Password">{(control) => <input type="password" {...control} />}</Field>
 */
export function Field(props: {
  readonly label: string
  readonly help?: string | undefined
  readonly error?: string | null | undefined
  readonly children: (control: Control) => ReactElement
}) {
  const { label, help, error, children } = props
  const id = useId()
  const told = [help && `${id}-help`, error && `${id}-error`].filter(Boolean).join(' ')
  const control: Control = { id, ...(told && { 'aria-describedby': told }), ...(error && { 'aria-invalid': true }) }
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      {help && (
        <p id={`${id}-help`} className={styles.help}>
          {help}
        </p>
      )}
      {children(control)}
      {error && (
        <p id={`${id}-error`} className={styles.error}>
          {error}
        </p>
      )}
    </div>
  )
}
