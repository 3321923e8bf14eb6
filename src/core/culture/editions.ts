import type { Edition } from './breakpoint.ts'
import { editionName } from './edition-name.ts'

/** The edition of an id; a reading asks only for those that are held. */
export function editionById(editions: readonly Edition[], id: Edition['id']): Edition {
  const found = editions.find((edition) => edition.id === id)
  if (!found) throw new Error(`No edition of breakpoints is called ${id}.`)
  return found
}

/**
 * The edition that a text means: its id, its short or its long name. Null for what none is called, and for what two
 * are: nobody chooses between editions but a person.
 *
 * @example editionCalled('CLSI VET01S ed7', editions)?.id // 'clsi-vet01s-7'
 */
export function editionCalled(text: string, editions: readonly Edition[]): Edition | null {
  const wanted = plain(text)
  const found = editions.filter((edition) => namesOf(edition).some((name) => plain(name) === wanted))
  // The clinic's own copy in force goes before ours of the same name.
  const own = found.filter((edition) => edition.own && edition.current)
  const [only, another] = own.length > 0 ? own : found.filter((edition) => !edition.own)
  return only && !another ? only : null
}

/**
 * Whose system a text names, where it names no edition: enough to know whose disks were laid.
 *
 * @example conventionCalled('EUCAST, current tables') // 'EUCAST'
 */
export function conventionCalled(text: string): Edition['convention'] | null {
  const [eucast, clsi] = [/\beucast\b/i.test(text), /\b(?:clsi|vet0?1s?|vet0?8|m100|m45)\b/i.test(text)]
  if (eucast === clsi) return null
  return eucast ? 'EUCAST' : 'CLSI'
}

function namesOf(edition: Edition): string[] {
  const { id, standard, edition: number, year } = edition
  const numeral = number.replace(/^(?:ed|v)/, '')
  const shorter = numeral.replace(/\.0$/, '')
  const standards = [standard, standard.replace(/^CLSI /, '')]
  const numbers = [number, numeral, shorter, `v${shorter}`, `edition ${numeral}`, `ed ${numeral}`, ordinal(numeral)]
  const short = standards.flatMap((one) => numbers.map((which) => `${one} ${which}`))
  return [
    id,
    editionName(edition),
    ...short,
    ...short.map((name) => `${name} ${year}`),
    ...standards.map((one) => `${one} ${year}`),
  ]
}

function ordinal(numeral: string): string {
  const ends: Readonly<Record<string, string>> = { '1': 'st', '2': 'nd', '3': 'rd' }
  const teen = /1\d$/.test(numeral)
  return `${numeral}${teen ? 'th' : (ends[numeral.slice(-1)] ?? 'th')} ed`
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/[^a-z0-9.]+/g, ' ')
    .replaceAll(/\b(?:edition|ed)\b/g, 'ed')
    .trim()
}
