import type { Species } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import type { optionIds } from '#core/journal/kinds/choice.ts'
import type { toldIds } from './told-ids.ts'

export type OptionId = (typeof optionIds)[number]
export type ToldId = (typeof toldIds)[number]

/** What a year could look like: the second half of what is told about every option. */
export const yearHeadings = ['day', 'work', 'visits', 'money', 'wrong', 'unknown'] as const
/** The same headings about every option, so that none is sold and none is hidden. */
export const optionHeadings = ['done', 'good', 'bad', ...yearHeadings] as const
export type OptionHeading = (typeof optionHeadings)[number]

/** How it is known what is told under a heading: one line for each source of statements. */
export type KnownBy = readonly Provenance[]

/** One option as facts: for whom it is a choice at all, and how each thing told about it is known. */
export type ChoiceOption = {
  readonly id: ToldId
  readonly species: readonly Species[]
  readonly known: Readonly<Record<OptionHeading, KnownBy>>
  /** Where the facts of one species differ and are told in words of their own. */
  readonly dog?: Readonly<Partial<Record<OptionHeading, KnownBy>>>
  readonly cat?: Readonly<Partial<Record<OptionHeading, KnownBy>>>
}

/** One option in the words of one language; another language is one more file of this shape. */
export type OptionWords = {
  readonly name: string
  readonly told: Readonly<Record<OptionHeading, string>>
  readonly dog?: Readonly<Partial<Record<OptionHeading, string>>>
  readonly cat?: Readonly<Partial<Record<OptionHeading, string>>>
}

/** All options of one language, with the names of the headings. */
export type OptionsInWords = {
  readonly headings: Readonly<Record<OptionHeading, string>>
  readonly year: string
  readonly options: Readonly<Record<ToldId, OptionWords>>
}

/** Writes down one option; only gives the compiler the shape. */
export function choiceOption<const One extends ChoiceOption>(definition: One): One {
  return definition
}
