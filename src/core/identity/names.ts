/** A name without accents, capitals and punctuation, so that "Zoë" and "zoe" are one. */
export function plainName(name: string): string {
  return name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}

/** The first word and the last word of a person's name. */
export function partsOfName(name: string): { readonly given: string; readonly family: string } {
  const words = plainName(name).split(' ')
  return { given: words[0] ?? '', family: words.length > 1 ? (words.at(-1) ?? '') : '' }
}

/**
 * The digits of a phone number that tell lines apart: the last nine, so that "+44 1632 …" and "01632 …" are one line.
 * Null for what is too short to be one.
 */
export function phoneDigits(phone: string): string | null {
  const digits = phone.replaceAll(/\D/g, '')
  return digits.length < 6 ? null : digits.slice(-9)
}

/** Whether two names differ by at most one letter put in, left out, changed, or two neighbours swapped. */
export function nearlySame(a: string, b: string): boolean {
  if (a === b) return true
  if (Math.abs(a.length - b.length) > 1) return false
  const start = [...a].findIndex((letter, at) => letter !== b[at])
  const from = start === -1 ? a.length : start
  const [restA, restB] = [a.slice(from), b.slice(from)]
  return (
    restA.slice(1) === restB.slice(1) ||
    restA.slice(1) === restB ||
    restA === restB.slice(1) ||
    (restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2))
  )
}
