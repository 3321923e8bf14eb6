import type { KindName } from '#core/journal/fold.ts'
import type { Unit } from '#core/units/unit.ts'
import type { Blank, FieldArrangement, Register } from './arrangement.ts'

/** How a field is answered. The body it makes follows from the schema; the words stand in content/wording. */
export type Control =
  | { readonly kind: 'choice' | 'select'; readonly options: readonly string[]; readonly makes: 'text' | 'number' }
  /** A free text of the body that is chosen from words; another text that stands there already may stay. */
  | { readonly kind: 'suggested'; readonly options: readonly string[] }
  | { readonly kind: 'yes-no' }
  | { readonly kind: 'tick' }
  | { readonly kind: 'many'; readonly options: readonly string[]; readonly least: number }
  | { readonly kind: 'text' | 'long-text'; readonly most: number }
  /** One text per line. */
  | { readonly kind: 'lines'; readonly most: number }
  | { readonly kind: 'whole-number'; readonly least: number; readonly most: number }
  | { readonly kind: 'decimal' | 'money' | 'moment' | 'day' | 'time-of-day' | 'times' }
  | { readonly kind: 'quantity'; readonly units: readonly Unit[]; readonly unitBy: FieldArrangement['unitBy'] }
  /** Kilograms and what was typed, from one text. */
  | { readonly kind: 'body-weight' }
  /** `free`: a name that the register does not hold may be written as well. */
  | { readonly kind: 'from-register'; readonly register: Register; readonly free: boolean }
  | { readonly kind: 'many-from-register'; readonly register: Register }
  | { readonly kind: 'entry'; readonly kinds: readonly KindName[] }
  | { readonly kind: 'entries'; readonly kinds: readonly KindName[]; readonly least: number }
  | { readonly kind: 'group'; readonly fields: readonly Field[] }
  | { readonly kind: 'list'; readonly fields: readonly Field[]; readonly least: number }
  /** A list of (item, answer) as a table of questions: every item a row. */
  | {
      readonly kind: 'rows'
      readonly item: string
      readonly rows: readonly string[]
      readonly answer: string
      readonly answers: readonly string[]
      readonly all: boolean
    }
  /** The coded answers of a checkpoint. */
  | { readonly kind: 'details' }
  | { readonly kind: 'subject' }
  | { readonly kind: 'plan-fingerprint' }
  /** Made elsewhere (drawn on the plate) and only carried through the form. */
  | { readonly kind: 'carried' }
  /** Answered by another field. */
  | { readonly kind: 'answered-by'; readonly field: string }

export type Field = {
  /** The key in its group. */
  readonly name: string
  /** The dotted path in the body, without the numbers of lists: `medicines.times`. Its words stand under it. */
  readonly at: string
  readonly blank: Blank
  readonly shownWhen: FieldArrangement['shownWhen']
  readonly otherwise: string | undefined
  readonly nullable: boolean
  /** The details of the same group that another answer empties. */
  readonly empties: string | null
  /** Often the present moment. */
  readonly now: boolean
  readonly control: Control
}
