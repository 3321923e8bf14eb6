import type { Species } from '#core/animal/species.ts'
import type { Moment, Precision } from '#core/time/moment.ts'
import { wallClock } from '#core/time/moment.ts'
import { type ChipLikeness, chipDigits, chipLikeness } from './chips.ts'
import { nearlySame, partsOfName, phoneDigits, plainName } from './names.ts'

/** What is known of an animal and its people; everything may still be unknown. */
export type Described = {
  readonly name: string | null
  readonly species: Species | null
  readonly chip: string | null
  readonly householdId: string | null
  readonly ownerName: string | null
  readonly ownerPhone: string | null
  readonly born: Moment | null
}

/** A case on file, as the lists carry it; a row without a birth date leaves it out. */
export type KnownAnimal = Omit<Described, 'species' | 'born'> & {
  readonly stream: string
  readonly animal: string
  readonly species: string | null
  readonly born?: Moment | null
}

export const matchReasonCodes = [
  'same-chip',
  'chip-two-swapped',
  'chip-one-digit',
  'same-name-in-household',
  'surname-changed',
  'same-name-and-phone',
  'same-name-and-owner',
  'same-phone',
  'same-birth',
] as const
export type MatchReason = (typeof matchReasonCodes)[number]

export const matchDoubtCodes = ['other-chip', 'other-species', 'other-name', 'other-birth'] as const
export type MatchDoubt = (typeof matchDoubtCodes)[number]

/** A case that may be this animal: why, and what stands against it. Only a person says that it is. */
export type Match<Row extends KnownAnimal = KnownAnimal> = {
  readonly row: Row
  /** `likely`: shown before a new file is opened. `possible`: worth a look. */
  readonly strength: 'likely' | 'possible'
  readonly reasons: readonly MatchReason[]
  readonly doubts: readonly MatchDoubt[]
}

/**
 * Cases that may be the animal described, likeliest first, each with its reasons and doubts. Nothing is merged; a name
 * alone is never a reason.
 *
 * @example matchesOf({ ...nothingKnown, chip: '985112001234567' }, rows)[0]?.reasons // ['same-chip']
 * Reference: identity by chip, owner, name and birth date, never by the name alone; the order is a house judgement.
 */
export function matchesOf<Row extends KnownAnimal>(described: Described, rows: readonly Row[]): Match<Row>[] {
  const found = rows.flatMap((row): Match<Row>[] => {
    const reasons = reasonsOf(described, row)
    if (!reasons.some((reason) => reason !== 'same-birth')) return []
    const doubts = doubtsOf(described, row)
    return [{ row, strength: strengthOf(reasons, doubts), reasons, doubts }]
  })
  return found.sort((a, b) => rankOf(a) - rankOf(b) || (a.row.stream < b.row.stream ? -1 : 1))
}

/**
 * How one file is like the animal described, also where that is not enough to offer the file: with whether the names,
 * the owners' names and the birth dates agree.
 *
 * @example likenessOf({ ...nothingKnown, name: 'Tansy' }, row).name // true, and no reason: a name alone is none
 */
export function likenessOf(described: Described, row: KnownAnimal) {
  const reasons = reasonsOf(described, row)
  const doubts = doubtsOf(described, row)
  return {
    match: { strength: strengthOf(reasons, doubts), reasons, doubts },
    name: sameName(described.name, row.name),
    owner: ownerLikeness(described.ownerName, row.ownerName),
    birth: sameBirth(described, row),
  }
}

const byChip: Readonly<Record<ChipLikeness, MatchReason>> = {
  same: 'same-chip',
  'two-swapped': 'chip-two-swapped',
  'one-digit': 'chip-one-digit',
}

function reasonsOf(described: Described, row: KnownAnimal): MatchReason[] {
  const chip = described.chip && row.chip ? chipLikeness(chipDigits(described.chip), row.chip) : null
  const name = sameName(described.name, row.name)
  const phone = samePhone(described.ownerPhone, row.ownerPhone)
  const household = described.householdId !== null && described.householdId === row.householdId
  const owner = ownerLikeness(described.ownerName, row.ownerName)
  // A married name: the same first name, another surname, and something else that ties them.
  const surname = owner === 'given-name' && (phone || household || (name && sameBirth(described, row) === true))
  return [
    ...(chip ? [byChip[chip]] : []),
    ...(name && household ? (['same-name-in-household'] as const) : []),
    ...(name && surname ? (['surname-changed'] as const) : []),
    ...(name && phone ? (['same-name-and-phone'] as const) : []),
    ...(name && owner === 'same' ? (['same-name-and-owner'] as const) : []),
    ...(phone ? (['same-phone'] as const) : []),
    ...(sameBirth(described, row) === true ? (['same-birth'] as const) : []),
  ]
}

function doubtsOf(described: Described, row: KnownAnimal): MatchDoubt[] {
  const otherChip = described.chip && row.chip && chipLikeness(chipDigits(described.chip), row.chip) === null
  return [
    ...(otherChip ? (['other-chip'] as const) : []),
    ...(described.species && row.species && described.species !== row.species ? (['other-species'] as const) : []),
    ...(described.name && row.name && !sameName(described.name, row.name) ? (['other-name'] as const) : []),
    ...(sameBirth(described, row) === false ? (['other-birth'] as const) : []),
  ]
}

/** What other animals of the household share too. */
const weak: readonly MatchReason[] = ['same-phone', 'same-birth']

/** Another animal of the household has the same phone: likely only where chip or name point to it too. */
function strengthOf(reasons: readonly MatchReason[], doubts: readonly MatchDoubt[]): Match['strength'] {
  if (reasons.includes('same-chip')) return 'likely'
  const against = doubts.includes('other-chip') || doubts.includes('other-species') || doubts.includes('other-birth')
  return reasons.some((reason) => !weak.includes(reason)) && !against ? 'likely' : 'possible'
}

function rankOf({ reasons, doubts, strength }: Match): number {
  const best = Math.min(...reasons.map((reason) => matchReasonCodes.indexOf(reason)))
  return (strength === 'likely' ? 0 : 1_000) + best * 10 + doubts.length
}

function sameName(a: string | null, b: string | null): boolean {
  if (a === null || b === null) return false
  const [one, other] = [plainName(a), plainName(b)]
  if (one === '' || other === '') return false
  // A short name differs by one letter from many others.
  return one === other || (Math.min(one.length, other.length) >= 4 && nearlySame(one, other))
}

function samePhone(a: string | null, b: string | null): boolean {
  const one = a === null ? null : phoneDigits(a)
  return one !== null && one === (b === null ? null : phoneDigits(b))
}

function ownerLikeness(a: string | null, b: string | null): 'same' | 'given-name' | null {
  if (!a || !b) return null
  if (plainName(a) === plainName(b)) return 'same'
  const [one, other] = [partsOfName(a), partsOfName(b)]
  if (one.given === '' || one.family === '' || other.family === '') return null
  return one.given === other.given && one.family !== other.family ? 'given-name' : null
}

const coarser: readonly Precision[] = ['year', 'month', 'day', 'minute', 'second']

/** Compared as finely as both are known; null when either is unknown or only the year is. */
function sameBirth(described: Described, row: KnownAnimal): boolean | null {
  if (!described.born || !row.born) return null
  const [one, other] = [wallClock(described.born), wallClock(row.born)]
  if (one.year !== other.year) return Math.abs(one.year - other.year) > 1 ? false : null
  const finest = Math.min(coarser.indexOf(described.born.precision), coarser.indexOf(row.born.precision))
  if (finest < coarser.indexOf('day')) return finest === 1 && one.month === other.month ? true : null
  return one.month === other.month && one.day === other.day
}
