import { readingInEnglish } from '#content/wording/app-case.ts'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import type { Form } from '#core/forms/form.ts'
import { type KindName, kindNamed } from '#core/journal/fold.ts'
import { bodyWordsOf } from '#core/reading/body-words.ts'
import type { BodyWords } from '#core/reading/say-body.ts'
import { formFor, wordsFor } from '../../forms/forms.ts'

/** The form of a kind as it stands in an entry; undefined for a kind of a newer program. */
export function formNamed(kind: string): Form | undefined {
  return kindNamed(kind) ? formFor(kind as KindName) : undefined
}

/** The words by which an entry of a kind is read. */
export function wordsOfKind(kind: string): BodyWords {
  const { yes, no, blanks, codes } = readingInEnglish
  const words = kindNamed(kind) ? wordsFor(kind as KindName) : { fields: {} }
  return bodyWordsOf(words, { options: { ...codes, ...formsInEnglish.options }, yes, no, blanks })
}
