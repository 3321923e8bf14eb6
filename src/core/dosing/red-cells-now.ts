import type { BloodGroup } from '#core/animal/blood-group.ts'
import type { Species } from '#core/animal/species.ts'
import type { Drug } from '#core/formulary/drug.ts'
import type { Case } from '#core/journal/fold.ts'
import { judgeBlood } from './blood-match.ts'
import type { DoseFinding } from './findings.ts'
import { dosedAnimalOf } from './from-journal.ts'
import type { DosingRules } from './rules.ts'

export type RedCellsNow = {
  readonly species: Species
  /** Undefined while nobody typed the animal. */
  readonly group: BloodGroup | undefined
  /** What is still missing or speaks against red cells, before any donor is named. */
  readonly findings: readonly DoseFinding[]
}

/**
 * Whether red cells could be given to this animal now, as a dose plan would judge them without a donor. Undefined
 * while nobody wrote which animal it is.
 *
 * @example redCellsNow(theCase, at, formulary, rules)?.findings[0]?.code // 'blood-untyped' for a cat nobody typed
 */
export function redCellsNow(
  theCase: Case,
  at: string,
  drugs: readonly Drug[],
  rules: DosingRules,
): RedCellsNow | undefined {
  const animal = dosedAnimalOf(theCase, at)
  const cells = drugs.find(({ groups }) => groups.includes('red-cells'))
  if (!animal || !cells) return undefined
  const line = { id: 'red-cells', drug: cells.id, use: 'blood_product' } as const
  const findings = judgeBlood(cells, line, { animal, given: [], lines: [line] }, rules)
  return { species: animal.species, group: animal.bloodGroup, findings }
}
