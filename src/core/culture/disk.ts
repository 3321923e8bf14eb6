/**
 * Whether two texts name the same disk: number for number, whatever the unit is called; of a combination the parts or
 * their sum (20/10 is sold as 30). A text without a number names none.
 *
 * @example sameDisk('30 µg', '20/10 ug') // true
 */
export function sameDisk(one: string, other: string): boolean {
  const [a, b] = [load(one), load(other)]
  if (a.length === 0 || b.length === 0 || unitsUnlike(one, other)) return false
  return a.join('/') === b.join('/') || (a.length !== b.length && sum(a) === sum(b))
}

function load(text: string): number[] {
  return [...text.replaceAll(',', '.').matchAll(/\d+(?:\.\d+)?/g)].map(([number]) => Number(number))
}

function sum(parts: readonly number[]): number {
  return parts.reduce((all, one) => all + one, 0)
}

/** Units of activity are no micrograms. A text that names no unit is either. */
function unitsUnlike(one: string, other: string): boolean {
  const [a, b] = [unit(one), unit(other)]
  return a !== null && b !== null && a !== b
}

function unit(text: string): 'mass' | 'activity' | null {
  if (/(?:µ|μ|u|mc)g/i.test(text)) return 'mass'
  return /\d ?(?:iu|units?|u)\b/i.test(text) ? 'activity' : null
}
