import { languages, type OwnerLanguage } from '#content/languages/index.ts'
import type { OwnerWords } from '#content/languages/owner-words.ts'
import { ownerLanguageOf } from '../case/owner-words.ts'

/** Every word of the owner's page in one language. The numbers between them come from one place for all languages. */
export type OwnerPageWords = OwnerWords & {
  /** Beside each still picture. On the plate itself stand names that an owner knows. */
  readonly steps: OwnerWords['ownerPlate']['steps']
}

/** The page in every language that an owner can read. */
export const ownerPageInLanguages: Readonly<Record<OwnerLanguage, OwnerPageWords>> = {
  en: onThePage(languages.en),
  es: onThePage(languages.es),
}

function onThePage(words: OwnerWords): OwnerPageWords {
  const { structures, steps } = words.ownerPlate
  return { ...words, plate: { ...words.plate, structures }, steps }
}

/** What the reader asked for, else the language of the household, else English; only languages that are whole. */
export function languageFor(wanted: string | null, household: string | undefined): OwnerLanguage {
  return ownerLanguageOf(wanted ?? '') ?? ownerLanguageOf(household ?? '') ?? 'en'
}
