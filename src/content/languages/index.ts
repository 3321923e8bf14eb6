import { english } from './english.ts'
import type { OwnerWords } from './owner-words.ts'
import { spanish } from './spanish.ts'

/** By the first part of a language tag. Every set is whole: a language stands here once it compiles and the checker is silent. */
export const languages: Readonly<Record<OwnerLanguage, OwnerWords>> = { en: english, es: spanish }

export type OwnerLanguage = 'en' | 'es'
