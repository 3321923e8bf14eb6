import { languagesInEnglish } from '#content/wording/app-languages.ts'
import { ownerLanguageOf } from '#documents/case/owner-words.ts'

/**
 * A language by its name; one of which we have no words stays as it was written.
 *
 * @example sayLanguage('es-MX') // 'Spanish'
 */
export function sayLanguage(tag: string): string {
  return languagesInEnglish[ownerLanguageOf(tag) ?? ''] ?? tag
}
