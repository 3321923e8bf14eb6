import type { TypedRefusalCode } from '#core/units/read-typed.ts'

/** Why one field cannot be read. The sentences stand in content/wording/app-form-refusals.ts. */
export type FormRefusalCode =
  | 'not-chosen'
  | 'nothing-chosen'
  | 'not-added'
  | 'not-written'
  | 'too-long'
  | 'not-a-whole-number'
  | 'out-of-range'
  | 'not-a-decimal'
  | 'not-money'
  | 'no-currency'
  | 'not-a-moment'
  | 'not-a-day'
  | 'day-or-month-first'
  | 'no-such-local-time'
  | 'local-time-twice'
  | 'not-a-time'
  | 'too-few'
  | 'row-unanswered'
  | 'unit-open'
  | 'not-drawn'
  | 'does-not-fit'
  | 'step-too-early'
  | 'step-too-late'
  | 'other-ear'
  | 'before-operation'
  | `quantity-${TypedRefusalCode}`

export type FieldRefusal = {
  /** Dotted, with the numbers of lists: `medicines.0.times`. */
  readonly path: string
  /** The same without the numbers: where the words of the field stand. */
  readonly at: string
  readonly because: FormRefusalCode
  readonly about: Readonly<Record<string, string>>
}

/** How this place writes numbers, money and time. */
export type Place = {
  readonly zone: string
  readonly decimalMark: '.' | ','
  readonly currency: string | null
}
