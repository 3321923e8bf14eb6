import { fill } from './finding.ts'

/**
 * How many, in words that differ for one; the sentence for many holds `{count}`.
 *
 * @example sayCount({ one: '1 case fits', many: '{count} cases fit' }, 3) // '3 cases fit'
 */
export function sayCount(words: { readonly one: string; readonly many: string }, count: number): string {
  return count === 1 ? words.one : fill(words.many, { count: String(count) })
}
