import { type ReactElement, type ReactNode, useId } from 'react'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import type { Draft } from '#core/forms/draft.ts'
import type { Field } from '#core/forms/field.ts'
import { type FieldWords, wordsAt } from '#core/forms/words.ts'
import styles from './forms.module.css'
import { sayRefusal } from './say-refusal.ts'
import { idOf, useScope } from './scope.ts'

/** What every control of a form is given: its field, where it stands, and what is in it. */
export type Part = {
  readonly field: Field
  readonly path: string
  /** The answers of the same group, for what depends on them. */
  readonly group: Draft | undefined
  readonly draft: Draft | undefined
}

export type Told = {
  readonly id: string
  readonly words: FieldWords
  readonly error: string | null
  readonly helpId: string | undefined
  readonly errorId: string | undefined
  /** Ids of help and error, for aria-describedby. */
  readonly describedBy: string | undefined
}

/** Label, help and error of a field, with the ids that tie them to its control. */
export function useTold({ field, path }: Pick<Part, 'field' | 'path'>, live: string | null = null): Told {
  const scope = useScope()
  const id = idOf(scope, path)
  const words = wordsAt(scope.words, field.at) ?? { label: field.at }
  const own = scope.refusals.find((refusal) => refusal.path === path || insideOf(field, refusal.path, path))
  const error = own ? sayRefusal(own, scope.words) : live
  const helpId = words.help ? `${id}-help` : undefined
  const errorId = error ? `${id}-error` : undefined
  const describedBy = [helpId, errorId].filter(Boolean).join(' ') || undefined
  return { id, words, error, helpId, errorId, describedBy }
}

/** A refusal about a part of what one control makes (the value of a quantity) belongs to the control. */
function insideOf({ control }: Field, refused: string, path: string): boolean {
  const apart = ['group', 'list', 'rows', 'subject', 'details']
  return !apart.includes(control.kind) && refused.startsWith(`${path}.`)
}

export function Help({ told }: { readonly told: Told }) {
  if (!told.words.help) return null
  return (
    <p id={told.helpId} className={styles.help}>
      {told.words.help}
    </p>
  )
}

export function ErrorLine({ told }: { readonly told: Pick<Told, 'error' | 'errorId'> }) {
  if (!told.error) return null
  return (
    <p id={told.errorId} className={styles.error}>
      {told.error}
    </p>
  )
}

export function LabelText({ field, words }: { readonly field: Field; readonly words: FieldWords }) {
  return (
    <>
      {words.label}
      {field.blank === 'optional' && field.control.kind !== 'tick' && (
        <span className={styles.optional}> {formsInEnglish.optional}</span>
      )}
    </>
  )
}

/** A single control under its label. */
export function LabelledFrame(props: {
  readonly field: Field
  readonly told: Told
  readonly children: ReactElement
  readonly after?: ReactNode
}) {
  const { field, told, children, after } = props
  return (
    <div className={styles.field}>
      <label htmlFor={told.id} className={styles.label}>
        <LabelText field={field} words={told.words} />
      </label>
      <Help told={told} />
      {children}
      {after}
      <ErrorLine told={told} />
    </div>
  )
}

/** Several controls that answer one question, under its legend. */
export function ChoiceFrame(props: {
  readonly field: Field
  readonly told: Told
  readonly role?: 'radiogroup'
  readonly children: ReactNode
}) {
  const { field, told, role, children } = props
  const legend = useId()
  return (
    <fieldset
      className={styles.field}
      aria-labelledby={legend}
      aria-describedby={told.describedBy}
      {...(role && { role, 'aria-invalid': told.error !== null, 'aria-required': field.blank !== 'optional' })}
    >
      <legend id={legend} className={styles.label}>
        <LabelText field={field} words={told.words} />
      </legend>
      <Help told={told} />
      {children}
      <ErrorLine told={told} />
    </fieldset>
  )
}
