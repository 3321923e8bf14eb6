/** How many are offered, and how alike a name must be to be one of them: from looking at misspelled reports. */
const offered = 5
const alikeFrom = 0.45

/**
 * The ids whose names look like what is printed, the likest first: shared pairs of neighbouring letters, or a name
 * that begins so. It only offers; whoever reads the list chooses.
 *
 * @example nearest('enrofloxacn', names) // ['enrofloxacin', 'ciprofloxacin', …]
 */
export function nearest(printed: string, names: ReadonlyMap<string, readonly string[]>): string[] {
  if (printed.length < 2) return []
  const scores = new Map<string, number>()
  for (const [name, ids] of names) {
    const score = name.startsWith(printed) ? 1 : alike(printed, name)
    for (const id of ids) scores.set(id, Math.max(score, scores.get(id) ?? 0))
  }
  return [...scores]
    .filter(([, score]) => score >= alikeFrom)
    .sort(([a, high], [b, low]) => low - high || (a < b ? -1 : 1))
    .slice(0, offered)
    .map(([id]) => id)
}

/** Pairs of neighbouring letters that both have, of all they have (Dice 1945): 1 for the same, 0 for none. */
function alike(a: string, b: string): number {
  const [one, other] = [pairs(a), pairs(b)]
  if (one.length + other.length === 0) return 0
  const left = [...other]
  let shared = 0
  for (const pair of one) {
    const at = left.indexOf(pair)
    if (at === -1) continue
    left.splice(at, 1)
    shared += 1
  }
  return (2 * shared) / (one.length + other.length)
}

function pairs(text: string): string[] {
  const letters = text.replaceAll(' ', '')
  return Array.from({ length: Math.max(0, letters.length - 1) }, (_, at) => letters.slice(at, at + 2))
}
