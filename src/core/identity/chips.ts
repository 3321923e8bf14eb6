/** How two chip numbers of fifteen digits are alike. */
export type ChipLikeness = 'same' | 'two-swapped' | 'one-digit'

/**
 * Same, two neighbours swapped, one digit wrong, or null. Compared as text: leading zeros count.
 *
 * @example chipLikeness('985112001234567', '985112001234576') // 'two-swapped'
 */
export function chipLikeness(a: string, b: string): ChipLikeness | null {
  if (a === b) return 'same'
  if (a.length !== b.length) return null
  const differ = [...a].flatMap((digit, at) => (digit === b[at] ? [] : [at]))
  const [first, second] = differ
  if (first === undefined) return null
  if (differ.length === 1) return 'one-digit'
  const swapped = differ.length === 2 && second === first + 1 && a[first] === b[second] && a[second] === b[first]
  return swapped ? 'two-swapped' : null
}

/** The digits of a chip as typed, spaces and dashes left out. Example: `chipDigits('985 112 001 234 567')`. */
export function chipDigits(typed: string): string {
  return typed.replaceAll(/[\s.-]/g, '')
}
