import { languages, type OwnerLanguage } from '#content/languages/index.ts'
import type { OwnerWords } from '#content/languages/owner-words.ts'
import { ownerPageInEnglish } from '#content/wording/owner-page.ts'
import { ownerPlateInEnglish } from '#content/wording/owner-page-plate.ts'

/** The shape of an object of sentences, whichever language they are in. */
type Sentences<Words> = Words extends string
  ? string
  : Words extends readonly (infer One)[]
    ? readonly Sentences<One>[]
    : { readonly [Name in keyof Words]: Sentences<Words[Name]> }

/** Every word of the owner's page in one language. The numbers between them come from one place for all languages. */
export type OwnerPageWords = OwnerWords & {
  readonly page: Sentences<typeof ownerPageInEnglish>
  /** Beside each still picture. On the plate itself stand names that an owner knows. */
  readonly steps: Sentences<(typeof ownerPlateInEnglish)['steps']>
}

/** The languages in which the page is whole. Another one is its two files and a line here. */
export const ownerPageInLanguages: { readonly en: OwnerPageWords } & Partial<Record<OwnerLanguage, OwnerPageWords>> = {
  en: withPage(languages.en, ownerPageInEnglish, ownerPlateInEnglish),
}

function withPage(
  words: OwnerWords,
  page: OwnerPageWords['page'],
  { structures, steps }: Sentences<typeof ownerPlateInEnglish>,
): OwnerPageWords {
  return { ...words, page, plate: { ...words.plate, structures }, steps }
}

/** The language of the household when the page exists in it, otherwise English. `wanted` is what the reader asked for. */
export function languageFor(wanted: string | null, household: string | undefined): OwnerLanguage {
  const tags = [wanted, household].map((tag) => tag?.split('-')[0])
  const there = Object.keys(ownerPageInLanguages) as OwnerLanguage[]
  return tags.flatMap((tag) => there.filter((language) => language === tag))[0] ?? 'en'
}
