import { languages, type OwnerLanguage } from '#content/languages/index.ts'
import type { OwnerWords } from '#content/languages/owner-words.ts'
import { otherLanguageInEnglish, papersInEnglish } from '#content/wording/papers.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Block, paragraph, small } from '../render/model.ts'
import type { PaperInput } from './paper-input.ts'

/**
 * The set of words for a language tag, by its first part; null when there is no whole set.
 *
 * @example ownerLanguageOf('es-MX') // 'es'
 */
export function ownerLanguageOf(tag: string): OwnerLanguage | null {
  const [first = ''] = tag.toLowerCase().split('-')
  return Object.hasOwn(languages, first) ? (first as OwnerLanguage) : null
}

/** In which language a paper of the owner is written, and its words. */
export type Spoken = { readonly language: OwnerLanguage; readonly words: OwnerWords }

/** What was asked for, else the language of the household, else English. */
export function spokenWith({ file, language: wanted }: Pick<PaperInput, 'file' | 'language'>): Spoken {
  const language = wanted ?? ownerLanguageOf(householdLanguage(file)) ?? 'en'
  return { language, words: languages[language] }
}

/** A paper that is not in the language of the household says so at its head, in English, to whoever hands it out. */
export function otherLanguageNote(file: CaseFile, { language }: Spoken): Block[] {
  const tag = householdLanguage(file)
  const theirs = ownerLanguageOf(tag)
  if (theirs === language) return []
  const line = fill(theirs === null ? otherLanguageInEnglish.none : otherLanguageInEnglish.wanted, { language: tag })
  return [{ kind: 'callout', tone: 'attention', word: papersInEnglish.pleaseNote, lines: [line] }]
}

/** Small print: who translated the paper. */
export function translationNote({ words }: Spoken): Block[] {
  return words.aboutTranslation === null ? [] : [paragraph([small(words.aboutTranslation)])]
}

function householdLanguage({ theCase }: CaseFile): string {
  return theCase.latest('household')?.body.language ?? 'en'
}
