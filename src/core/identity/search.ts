/** What a list row says about an animal and its owner. */
export type Searchable = {
  readonly name: string
  readonly chip: string | null
  readonly ownerName: string | null
  readonly ownerPhone: string | null
}

/**
 * True when every word of the text is part of a name, or its digits are part of the chip or the phone. Accents and
 * capital letters do not count, nor do spaces in a number.
 *
 * @example fits({ name: 'Tansy', chip: null, ownerName: 'R. Okafor', ownerPhone: '01632 960111' }, 'okaf 960') // true
 */
export function fits(row: Searchable, text: string): boolean {
  const names = plain(`${row.name} ${row.ownerName ?? ''}`)
  const numbers = [row.chip ?? '', digits(row.ownerPhone ?? '')]
  if (/^[\d\s+()-]+$/.test(text.trim()) && digits(text).length > 0) {
    return numbers.some((number) => number.includes(digits(text)))
  }
  return plain(text)
    .split(/\s+/)
    .filter((word) => word !== '')
    .every((word) => names.includes(word) || (digits(word) === word && numbers.some((number) => number.includes(word))))
}

function plain(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase()
}

function digits(text: string): string {
  return text.replaceAll(/\D/g, '')
}
