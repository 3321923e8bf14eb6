import { type Drug, drugById } from '#core/formulary/drug.ts'

/**
 * The drugs that something given may have held: the one with that name, or every drug whose name stands as whole
 * words in what was written ("dexamethasone sodium phosphate"). Only what was given is read so generously, because
 * there a name too many costs a question and a name too few costs a warning; a plan has to name its drug exactly.
 *
 * @example drugsGiven(formulary, 'lidocaine hydrochloride').map(({ id }) => id) // ['lidocaine']
 */
export function drugsGiven(drugs: readonly Drug[], name: string): readonly Drug[] {
  const names = readAlready.get(drugs) ?? new Map<string, readonly Drug[]>()
  readAlready.set(drugs, names)
  const before = names.get(name)
  if (before) return before
  const read = readName(drugs, name)
  // What was written in many thousand files is not kept for ever.
  if (names.size >= 1000) names.clear()
  names.set(name, read)
  return read
}

/** What a name means is knowledge of the list of drugs, not of a plan: every line of every plan asks it again. */
const readAlready = new WeakMap<readonly Drug[], Map<string, readonly Drug[]>>()

function readName(drugs: readonly Drug[], name: string): readonly Drug[] {
  const exact = drugById(drugs, name)
  if (exact) return [exact]
  const written = asWords(name)
  const words = wordsOf(drugs)
  return drugs.filter((_, place) => words[place]?.some((word) => written.includes(word)))
}

/** The names of each drug as whole words, worked out once for a list. */
const known = new WeakMap<readonly Drug[], readonly (readonly string[])[]>()

function wordsOf(drugs: readonly Drug[]): readonly (readonly string[])[] {
  const words = known.get(drugs) ?? drugs.map((drug) => [drug.id, drug.name, ...drug.aliases].map(asWords))
  known.set(drugs, words)
  return words
}

/** Whether something given may have held this drug. */
export function isGivenDrug(drugs: readonly Drug[], name: string, id: string): boolean {
  return drugsGiven(drugs, name).some((drug) => drug.id === id)
}

/** Lower case, everything that is no letter or figure a single space, a space at both ends. */
export function asWords(text: string): string {
  return ` ${text
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `
}
