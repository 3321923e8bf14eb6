import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side } from '#core/animal/species.ts'
import {
  type Described,
  type KnownAnimal,
  likenessOf,
  type MatchDoubt,
  type MatchReason,
  matchDoubtCodes,
  matchReasonCodes,
} from '#core/identity/match.ts'
import { plainName } from '#core/identity/names.ts'
import { dayAfter, type Period } from '#core/time/calendar-day.ts'

/** An ear that was operated here, in the file it stands in. */
export type EarOnFile = {
  readonly operation: string
  readonly side: Side
  readonly procedure: ProcedureId
  /** Day of the cut. */
  readonly on: string
  readonly died: string | null
  /** Day of the first late swelling, abscess or tract that is on record. */
  readonly tractOn: string | null
}

/** A case with its operated ears, and what tells the animal apart. */
export type FileWithEars = KnownAnimal & { readonly breed: string | null; readonly ears: readonly EarOnFile[] }

/** What is known of the animal a late sign is told of; everything may still be unknown. */
export type ToldOf = Described & {
  readonly breed: string | null
  /** The ear as it was told, never as a fact. */
  readonly side: Side | 'BOTH' | 'unknown'
  /** The day it was told. */
  readonly day: string
  /** The file it is told in, with every file joined to it; none at a call that has no file yet. */
  readonly streams: readonly string[]
}

export const indexReasonCodes = [
  'same-file',
  ...matchReasonCodes,
  'owner-first-name',
  'same-name',
  'same-breed',
] as const
export type IndexReason = 'same-file' | MatchReason | 'owner-first-name' | 'same-name' | 'same-breed'
export const indexDoubtCodes = [...matchDoubtCodes, 'other-owner', 'other-side', 'died'] as const
export type IndexDoubt = MatchDoubt | 'other-owner' | 'other-side' | 'died'

/** An operated ear to which a late sign may belong: why, and what stands against it. Only a person says that it does. */
export type IndexEar<File extends FileWithEars = FileWithEars> = {
  readonly file: File
  readonly ear: EarOnFile
  readonly strength: 'this-file' | 'likely' | 'possible'
  readonly reasons: readonly IndexReason[]
  readonly doubts: readonly IndexDoubt[]
}

/**
 * The operated ears to which a sign told now may belong, likeliest first. A name alone is never a reason; a birth date
 * with the same breed or name is one here, because a new surname, a new phone and a chip read wrongly hide all others.
 * An ear operated less than `lateFrom` before the telling is none: what comes sooner belongs to its healing.
 *
 * @example indexEarsOf({ ...told, chip: '985112001234576' }, files, { count: 30, unit: 'days' })[0]?.ear.side
 * Reference: identity by chip, owner, name and birth date, never by the name alone; the order is a house judgement.
 */
export function indexEarsOf<File extends FileWithEars>(
  told: ToldOf,
  files: readonly File[],
  lateFrom: Period,
): IndexEar<File>[] {
  const found = files.flatMap((file) => {
    const likeness = of(told, file)
    if (!likeness) return []
    return file.ears
      .filter(({ on }) => dayAfter(on, lateFrom) <= told.day)
      .map((ear): IndexEar<File> => ({ file, ear, ...likeness, doubts: [...likeness.doubts, ...ofEar(told, ear)] }))
  })
  return onePerOperation(found.sort((a, b) => rankOf(a) - rankOf(b) || (a.ear.on < b.ear.on ? 1 : -1)))
}

type Likeness = Pick<IndexEar, 'strength' | 'reasons' | 'doubts'>

function of(told: ToldOf, file: FileWithEars): Likeness | null {
  if (told.streams.includes(file.stream)) return { strength: 'this-file', reasons: ['same-file'], doubts: [] }
  const { match, name, owner, birth } = likenessOf(told, file)
  const reasons: IndexReason[] = [
    ...match.reasons,
    ...(owner === 'given-name' && !match.reasons.includes('surname-changed') ? (['owner-first-name'] as const) : []),
    ...(name && !match.reasons.some((reason) => saysName.includes(reason)) ? (['same-name'] as const) : []),
    ...(sameBreed(told, file) ? (['same-breed'] as const) : []),
  ]
  const tied = match.reasons.some((reason) => reason !== 'same-birth')
  const byBirth = birth === true && (name || reasons.includes('same-breed'))
  const byNames = name && owner === 'given-name'
  if (!tied && !byBirth && !byNames) return null
  const otherOwner = told.ownerName !== null && file.ownerName !== null && owner !== 'same'
  const doubts: IndexDoubt[] = [...match.doubts, ...(otherOwner ? (['other-owner'] as const) : [])]
  return { strength: tied ? match.strength : 'possible', reasons, doubts }
}

/** Reasons that say already that the animals have one name. */
const saysName: readonly MatchReason[] = [
  'same-name-in-household',
  'surname-changed',
  'same-name-and-phone',
  'same-name-and-owner',
]

function sameBreed(told: ToldOf, file: FileWithEars): boolean {
  const [one, other] = [plainName(told.breed ?? ''), plainName(file.breed ?? '')]
  return one !== '' && one === other
}

function ofEar({ side }: ToldOf, ear: EarOnFile): IndexDoubt[] {
  const other = (side === 'LEFT' || side === 'RIGHT') && side !== ear.side
  return [...(other ? (['other-side'] as const) : []), ...(ear.died === null ? [] : (['died'] as const))]
}

const strengths = ['this-file', 'likely', 'possible'] as const

function rankOf({ strength, reasons, doubts }: IndexEar): number {
  const best = Math.min(...reasons.map((reason) => indexReasonCodes.indexOf(reason)))
  return strengths.indexOf(strength) * 10_000 + best * 100 + doubts.length
}

/** Files that are joined hold the same operation twice: it is offered once, where most speaks for it. */
function onePerOperation<Found extends IndexEar>(found: readonly Found[]): Found[] {
  return found.filter(({ ear }, at) => found.findIndex((one) => one.ear.operation === ear.operation) === at)
}
