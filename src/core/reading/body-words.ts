import { type FormWords, optionWord, wordsAt } from '#core/forms/words.ts'
import type { Blankness, BodyWords } from './say-body.ts'

/** Words that are the same in every entry. */
export type SharedWords = {
  readonly options: Readonly<Record<string, string>>
  readonly yes: string
  readonly no: string
  readonly blanks: Readonly<Record<Blankness, string>>
}

/**
 * The words of a form, for reading what was written with it. A label or option that nobody worded is said as it is.
 *
 * @example bodyWordsOf(weightWords, shared).label('weight') // 'Weight'
 */
export function bodyWordsOf(words: Pick<FormWords, 'fields' | 'groups'>, shared: SharedWords): BodyWords {
  const { yes, no, blanks } = shared
  return {
    label: (at) => wordsAt(words, at)?.label ?? at,
    option: (at, value) => optionWord(wordsAt(words, at), shared.options, value) ?? value,
    yes,
    no,
    blank: (at, means) => (means === 'not-recorded' ? blanks[means] : (wordsAt(words, at)?.none ?? blanks[means])),
  }
}
