/**
 * How many syllables a Spanish word has, by the rules of its spelling: two open vowels are heard apart ("le-er"), a closed
 * one joins its neighbour ("cui-da-do") unless it carries the accent ("o-í-do"), the u of que, qui, gue and gui is mute,
 * an h between vowels parts nothing by itself, a y counts as a vowel at the end of a word and alone. A number counts as it
 * is read aloud.
 *
 * @example syllablesInSpanish('cirugía') // 4
 */
export function syllablesInSpanish(word: string): number {
  if (/^\d/.test(word)) return syllablesOfNumber(word)
  const letters = word
    .toLowerCase()
    .normalize('NFC')
    .replaceAll(/([qg])u(?=[eéií])/g, '$1')
    .replace(/y$/, 'i')
    .replaceAll(/(?<=[aeiouáéíóúü])h(?=[aeiouáéíóúü])/g, '')
  const groups = letters.match(/[aeiouáéíóúü]+/g) ?? []
  return Math.max(
    1,
    groups.reduce((sum, group) => sum + heard(group), 0),
  )
}

/** Each open or accented vowel is a syllable of its own; closed ones among themselves are one. */
function heard(group: string): number {
  return Math.max(1, group.match(/[aeoáéóíú]/g)?.length ?? 0)
}

const small = [2, 2, 1, 1, 2, 2, 1, 2, 2, 2, 1, 2, 2, 2, 3, 2, 3, 4, 3, 4, 2, 3, 3, 3, 4, 4, 3, 4, 3, 4] as const
const tens = [0, 0, 0, 2, 3, 3, 3, 3, 3, 3] as const
const hundreds = [0, 2, 3, 3, 4, 3, 3, 4, 4, 4] as const

/** "309" is read "trescientos nueve"; a part behind the point is read digit by digit. */
function syllablesOfNumber(written: string): number {
  const [whole = '0', ...rest] = written.replaceAll(',', '').split('.')
  const behind = rest.join('')
  const point = behind === '' ? 0 : 2 + [...behind].reduce((sum, digit) => sum + (small[Number(digit)] ?? 2), 0)
  return spoken(Number(whole.slice(0, 6))) + point
}

function spoken(value: number): number {
  if (value < 30) return small[value] ?? 2
  if (value < 100) return (tens[Math.floor(value / 10)] ?? 3) + (value % 10 === 0 ? 0 : 1 + spoken(value % 10))
  if (value === 100) return 1
  if (value < 1000) return (hundreds[Math.floor(value / 100)] ?? 4) + (value % 100 === 0 ? 0 : spoken(value % 100))
  const thousands = Math.floor(value / 1000)
  return (thousands === 1 ? 0 : spoken(thousands)) + 1 + (value % 1000 === 0 ? 0 : spoken(value % 1000))
}
