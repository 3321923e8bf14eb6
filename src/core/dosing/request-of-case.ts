import { Temporal } from 'temporal-polyfill'
import type { CaseFile } from '#core/journal/clinic.ts'
import { emergencyAt } from './emergency-on-file.ts'
import { dosedAnimalOf, givenOf } from './from-journal.ts'
import type { DoseRequest, DosingKnowledge, PlannedLine } from './request.ts'

type About = { readonly operation: string; readonly at: string }

/**
 * The question that lines of one operation ask of the engine: the animal and all it was given as the case knew them at
 * that instant, and the emergency that counts then. Null without an identity: a species is never guessed.
 *
 * @example requestOfCase(file, { operation: operation.id, at }, lines, rules)?.animal.weight // 8.2 kg
 */
export function requestOfCase(
  file: CaseFile,
  { operation, at }: About,
  lines: readonly PlannedLine[],
  rules: DosingKnowledge['rules'],
): DoseRequest | null {
  const animal = dosedAnimalOf(file.theCase, at, rules)
  if (!animal) return null
  const emergency = emergencyAt(file, operation, at, rules)
  return {
    animal,
    given: givenOf(file.theCase, at),
    at: Temporal.Instant.from(at),
    ...(emergency && { emergency }),
    lines,
  }
}
