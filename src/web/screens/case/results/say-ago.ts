import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { fill } from '#core/outcome/finding.ts'

const words = cultureInEnglish.list

/** Days that went by, as people say them. */
export function sayAgo(days: number): string {
  if (days === 0) return words.today
  return days === 1 ? words.yesterday : fill(words.days, { count: String(days) })
}
