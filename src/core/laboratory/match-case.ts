import { chipDigits } from '#core/identity/chips.ts'
import { nearlySame, plainName } from '#core/identity/names.ts'
import type { LaboratoryReport } from './report.ts'

/** What a report and a file can have in common. Two of them must, and one of the two must be of the animal itself. */
export const identifiers = ['chip', 'name', 'owner', 'label', 'accession'] as const
export type Identifier = (typeof identifiers)[number]
/** What can stand against it. */
export const contradictions = ['chip', 'name', 'owner', 'species'] as const
export type Contradiction = (typeof contradictions)[number]

/** A case as a report is held against it. */
export type KnownCase = {
  readonly stream: string
  readonly name: string
  readonly species: string | null
  readonly chip: string | null
  readonly ownerName: string | null
  /** What stands on its tubes, and the numbers under which it has results. */
  readonly labels: readonly string[]
  readonly accessions: readonly string[]
}

export type Fit<Row> = {
  readonly row: Row
  readonly agree: readonly Identifier[]
  readonly against: readonly Contradiction[]
}

/** `one`: it may be filed there. Anything else is for the holding tray, with what was found. */
export type CaseMatch<Row> =
  | { readonly kind: 'one'; readonly fit: Fit<Row> }
  | { readonly kind: 'several' | 'contradicted' | 'too-few'; readonly fits: readonly Fit<Row>[] }
  | { readonly kind: 'none' }

/**
 * The one case a report belongs to: two identifiers agree with it and nothing stands against it. Two animals of one name
 * are told apart by owner, chip or tube; when they are not, the report is nobody's.
 *
 * @example matchCase(report, [bella, otherBella]).kind // 'several'
 * Reference: two identifiers before anything is filed, never the name alone; which count is a house judgement.
 */
export function matchCase<Row extends KnownCase>(report: Named, rows: readonly Row[]): CaseMatch<Row> {
  const fits = rows.map((row) => ({ row, agree: agreeing(report, row), against: contradicting(report, row) }))
  const enough = fits.filter(({ agree }) => agree.length >= 2 && (agree.includes('chip') || agree.includes('name')))
  const clear = enough.filter(({ against, agree }) => {
    // Somebody else of the household may stand on the form; the chip is the animal's own.
    return against.every((one) => one === 'owner' && agree.includes('chip'))
  })
  const [only, another] = clear
  if (only && !another) return { kind: 'one', fit: only }
  if (only) return { kind: 'several', fits: clear }
  if (enough.length > 0) return { kind: 'contradicted', fits: enough }
  const some = fits.filter(({ agree }) => agree.includes('chip') || agree.includes('name') || agree.length >= 2)
  return some.length > 0 ? { kind: 'too-few', fits: some } : { kind: 'none' }
}

type Named = Pick<LaboratoryReport, 'animal' | 'label' | 'accession'>

function agreeing({ animal, label, accession }: Named, row: KnownCase): Identifier[] {
  const { chip, name, owner } = animal
  const agrees: Readonly<Record<Identifier, boolean>> = {
    chip: chip !== null && row.chip !== null && chipDigits(chip) === chipDigits(row.chip),
    name: name !== null && samePlain(name, row.name),
    owner: ownerLikeness(owner, row.ownerName) === 'same',
    label: label !== null && row.labels.some((known) => samePlain(known, label)),
    accession: accession !== null && row.accessions.includes(accession),
  }
  return identifiers.filter((one) => agrees[one])
}

function contradicting({ animal }: Named, row: KnownCase): Contradiction[] {
  const { chip, name, owner, species } = animal
  const stands: Readonly<Record<Contradiction, boolean>> = {
    chip: chip !== null && row.chip !== null && chipDigits(chip) !== chipDigits(row.chip),
    name: name !== null && !nearlySame(plainName(name), plainName(row.name)),
    owner: ownerLikeness(owner, row.ownerName) === 'other',
    species: species !== null && row.species !== null && species !== row.species,
  }
  return contradictions.filter((one) => stands[one])
}

function samePlain(one: string, other: string): boolean {
  const plain = plainName(one)
  return plain !== '' && plain === plainName(other)
}

/** "Okafor", "Okafor, R." and "Rosalind Okafor" are one; one word in common is neither the same nor another person. */
function ownerLikeness(said: string | null, known: string | null): 'same' | 'other' | null {
  if (said === null || known === null) return null
  const [one, other] = [plainName(said).split(' '), plainName(known).split(' ')]
  const fits = (word: string) => other.some((part) => part === word || (word.length === 1 && part.startsWith(word)))
  const whole = one.filter((word) => word.length > 1)
  if (whole.length === 0) return null
  if (one.every(fits)) return 'same'
  return whole.some((word) => other.includes(word)) ? null : 'other'
}
