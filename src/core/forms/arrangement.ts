import type { Chapter } from '#core/chapters/chapter.ts'
import type { KindName } from '#core/journal/fold.ts'
import type { PersonRow } from '#core/journal/registers.ts'
import type { Unit } from '#core/units/unit.ts'

/** What an id in a body points to; the caller of a form says which of them there are. */
export type Register =
  | 'person'
  | 'contact'
  | 'contact-or-person'
  | 'vet'
  | 'laboratory'
  | 'household'
  | 'operation'
  | 'drug'
  | 'shelf-item'
  | 'case'
  | 'animal'
  | 'checkpoint'
  | 'pause-item'

/**
 * What an empty field means. `required`: it must be answered. `optional`: empty is "nothing to say".
 * `not-assessed` and `none`: a person must choose those words before they count.
 */
export type Blank = 'required' | 'optional' | 'not-assessed' | 'none'

/** What the schema alone cannot say about one field. Everything is optional: most fields need nothing. */
export type FieldArrangement = {
  /** Another control than the schema suggests. */
  readonly control?:
    | 'select'
    | 'choice'
    | 'long-text'
    | 'tick'
    | 'rows'
    | 'body-weight'
    | 'plan-fingerprint'
    | 'carried'
  readonly blank?: Exclude<Blank, 'required'>
  /** What the id points to. */
  readonly register?: Register
  /** A name that the register does not hold may be written as well. */
  readonly free?: true
  /** The kinds of entries the id may point to. */
  readonly entries?: readonly KindName[]
  /** The words a free text is chosen from. */
  readonly options?: readonly string[]
  /** Asked only when another field of the same group is answered so. */
  readonly shownWhen?: { readonly field: string; readonly is: readonly string[] }
  /** What stands in the body when the field is not asked. */
  readonly otherwise?: string
  /** The unit, when the answer of another field of the same group settles it. */
  readonly unitBy?: { readonly field: string; readonly units: Readonly<Record<string, Unit>> }
  /** Details of the same group that belong to this answer: another answer empties them. */
  readonly empties?: string
  /** Often the present moment: it can be filled in with one tap. */
  readonly now?: true
  /** The order of the fields of a group or of the groups of a list, when it is not that of the schema. */
  readonly order?: readonly string[]
  /** For `rows`: whether every row must be answered. */
  readonly rows?: 'all' | 'some'
  /** Answered together with another field, which has a control for both. */
  readonly answeredBy?: string
}

export type SectionArrangement = {
  readonly id: string
  /** Dotted paths of the body, in the order a person at the table works. */
  readonly fields: readonly string[]
  /** LEFT and RIGHT of the body stand side by side. */
  readonly pair?: true
  /** The answers of a section in which nothing was found, given by one touch of whoever looked. */
  readonly normal?: Readonly<Record<string, string>>
  /** A sum that is shown while the section is filled in. */
  readonly running?: 'otis-3' | 'estimate'
}

/** How the form of one kind is arranged, and where in the course it is written, by whom. */
export type FormArrangement = {
  readonly kind: KindName
  /** `case`: in these chapters. `clinic`: in the settings of the house. `correction`: where something is put right. */
  readonly place: 'case' | 'clinic' | 'correction'
  readonly chapters: readonly Chapter[]
  readonly writtenBy: readonly PersonRow['role'][]
  /** False: not amended but withdrawn and written again. */
  readonly amendable: boolean
  readonly sections: readonly SectionArrangement[]
  readonly fields?: Readonly<Record<string, FieldArrangement>>
}
