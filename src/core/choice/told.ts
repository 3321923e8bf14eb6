import type { Species } from '#core/animal/species.ts'
import {
  type ChoiceOption,
  type KnownBy,
  type OptionHeading,
  type OptionId,
  type OptionsInWords,
  optionHeadings,
  type ToldId,
} from './option.ts'

/** What is told about one option under one heading, and how it is known. */
export type Told = { readonly heading: OptionHeading; readonly text: string; readonly known: KnownBy }

/**
 * Everything told about an option to the owner of one animal, in the order of the headings. A dog and a cat get their
 * own words where the facts differ.
 *
 * @example toldFor(optionNamed('teca-lbo', options), 'cat', optionsInEnglish) // nine answers, what is done first
 */
export function toldFor(option: ChoiceOption, species: Species, words: OptionsInWords): Told[] {
  const said = words.options[option.id]
  return optionHeadings.map((heading) => ({
    heading,
    text: said[species]?.[heading] ?? said.told[heading],
    known: option[species]?.[heading] ?? option.known[heading],
  }))
}

/** The option of an id; a missing one is a bug of content. */
export function optionNamed(id: ToldId, options: readonly ChoiceOption[]): ChoiceOption {
  const found = options.find((one) => one.id === id)
  if (!found) throw new Error(`There is no option "${id}".`)
  return found
}

/** The options that are a choice at all for this species, in the order in which they are told. */
export function optionsFor(species: Species, ids: readonly OptionId[], options: readonly ChoiceOption[]): OptionId[] {
  return ids.filter((id) => optionNamed(id, options).species.includes(species))
}
