import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side, Species } from '#core/animal/species.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import type { KnownOutcome, OwnOutcome } from '#core/evidence/own/own-outcome.ts'
import { hashText } from '#core/journal/canonical.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { daysBetween } from '#core/time/calendar-day.ts'

/** One operated ear that leads back to nobody: no owner, chip, name, free text, date or id of ours. */
export type DeIdentifiedEar = {
  /** Of the row, the animal and the anaesthetic: their order says nothing of time or name. */
  readonly ear: number
  readonly animal: number
  readonly anaesthetic: number
  readonly species: Species
  readonly procedure: ProcedureId
  readonly side: Side
  /** Of the operation; null where too few animals share it. */
  readonly year: string | null
  /** Days from the operation to the death; null when no death is on record. */
  readonly diedAfterDays: number | null
  /** Days from the operation to the last day on which somebody knew how the ear was. */
  readonly followedForDays: number | null
  /** Days from the operation to the first late swelling, abscess or tract; null when none is on record. */
  readonly tractAfterDays: number | null
  readonly blinkLostAfterDays: number | null
  readonly blinkBackAfterDays: number | null
  readonly known: Readonly<Record<OwnOutcome, KnownOutcome>>
}

/** Species, operation and year of so few animals that somebody could be known again. The number itself is not given. */
export type SmallCell = {
  readonly species: Species
  readonly procedure: ProcedureId
  /** Null: fewer over all years together, so that even without the year the rows are few. */
  readonly year: string | null
}

export type DeIdentified = {
  readonly ears: readonly DeIdentifiedEar[]
  /** A cell of fewer animals than this is small. */
  readonly smallBelow: number
  readonly smallCells: readonly SmallCell[]
}

export type DeIdentifyRefusal = { readonly because: 'salt-too-short' | 'small-below-two' }

/** Shorter words could be guessed, and with them which number is which animal. */
export const shortestSalt = 16

/**
 * Rows for somebody outside. The same salt gives the same numbers again; who does not know it cannot lead a number back
 * to an id. The year is withheld where fewer than `smallBelow` animals of that species and operation share it.
 *
 * @example deIdentify(ears, { salt: 'kept by the clinic alone', smallBelow: 5 })
 */
export function deIdentify(
  ears: readonly OperatedEar[],
  { salt, smallBelow }: { readonly salt: string; readonly smallBelow: number },
): Outcome<DeIdentified, DeIdentifyRefusal> {
  if (salt.length < shortestSalt) return refuse({ because: 'salt-too-short' })
  if (!Number.isInteger(smallBelow) || smallBelow < 2) return refuse({ because: 'small-below-two' })
  const numbered = (what: string, ids: readonly string[]) => saltedNumbers(salt, what, ids)
  const earOf = numbered('ear', ears.map(idOfEar))
  const animalOf = numbered(
    'animal',
    ears.map(({ animal }) => animal),
  )
  const anaestheticOf = numbered(
    'anaesthetic',
    ears.map(({ session }) => session),
  )
  const years = cellsBelow(smallBelow, ears, yearOf)
  const kinds = cellsBelow(smallBelow, ears, () => null)
  const rows = ears.map((ear): DeIdentifiedEar => {
    const { species, procedure, side, known } = ear
    return {
      ear: earOf.get(idOfEar(ear)) ?? 0,
      animal: animalOf.get(ear.animal) ?? 0,
      anaesthetic: anaestheticOf.get(ear.session) ?? 0,
      species,
      procedure,
      side,
      year: years.has(cellOf(ear, yearOf(ear))) ? null : yearOf(ear),
      diedAfterDays: after(ear, ear.died),
      followedForDays: after(ear, ear.followedUntil),
      tractAfterDays: after(ear, ear.tractOn),
      blinkLostAfterDays: after(ear, ear.blink?.lostOn ?? null),
      blinkBackAfterDays: after(ear, ear.blink?.backOn ?? null),
      known,
    }
  })
  const smallCells = [...kinds, ...years].sort(([a], [b]) => compareText(a, b)).map(([, cell]) => cell)
  return answer({ ears: rows.sort((a, b) => a.ear - b.ear), smallBelow, smallCells })
}

function after({ on }: OperatedEar, day: string | null): number | null {
  return day === null ? null : daysBetween(on, day)
}

/** One operation of one ear: what a row of figures is about. */
export function idOfEar({ animal, operation, side }: OperatedEar): string {
  return `${animal}\u0000${operation}\u0000${side}`
}

function yearOf({ on }: OperatedEar): string {
  return on.slice(0, 4)
}

/**
 * 1, 2, 3 … in the order of the salted hashes, which is no order of anything else.
 *
 * @example saltedNumbers('kept by the clinic alone', 'animal', ['animal-7', 'animal-3']).get('animal-3')
 */
export function saltedNumbers(salt: string, what: string, ids: readonly string[]): ReadonlyMap<string, number> {
  const byHash = [...new Set(ids)].map((id) => [hashText(`${salt}\u0000${what}\u0000${id}`), id] as const)
  byHash.sort(([a], [b]) => compareText(a, b))
  return new Map(byHash.map(([, id], place) => [id, place + 1]))
}

/** Cells with fewer animals than that; animals, because two ears of one are no two who share something. */
function cellsBelow(
  smallBelow: number,
  ears: readonly OperatedEar[],
  yearIn: (ear: OperatedEar) => string | null,
): ReadonlyMap<string, SmallCell> {
  const cells = new Map<string, { readonly cell: SmallCell; readonly animals: Set<string> }>()
  for (const ear of ears) {
    const { species, procedure, animal } = ear
    const year = yearIn(ear)
    const key = cellOf(ear, year)
    const found = cells.get(key) ?? { cell: { species, procedure, year }, animals: new Set<string>() }
    cells.set(key, found)
    found.animals.add(animal)
  }
  const small = [...cells].filter(([, { animals }]) => animals.size < smallBelow)
  return new Map(small.map(([key, { cell }]) => [key, cell]))
}

function cellOf({ species, procedure }: OperatedEar, year: string | null): string {
  return [species, procedure, year ?? ''].join('\u0000')
}
