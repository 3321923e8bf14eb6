/**
 * The same words with a capital at their beginning, for a title or the start of a sentence.
 *
 * @example capital('methadone 10 mg/mL') // 'Methadone 10 mg/mL'
 */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
