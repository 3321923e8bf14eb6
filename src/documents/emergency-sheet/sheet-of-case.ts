import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { type EmergencySheet, emergencySheet } from '#core/dosing/emergency.ts'
import type { Suspicion } from '#core/dosing/emergency-row.ts'
import { ownDefaultsOf } from '#core/dosing/own-defaults.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'

/** The emergency sheet of a case with the weight it stands on; what is missing for it otherwise. */
export type SheetOfCase =
  | { readonly kind: 'sheet'; readonly sheet: EmergencySheet; readonly weighed: Line<BodyOf<'weight'>> }
  | { readonly kind: 'no-identity' }
  | { readonly kind: 'no-weight' }

/**
 * The emergency sheet of the animal of a case on its last weight, with the syringes of the house: the same for the
 * paper on the wall and for the screen beside the table.
 *
 * @example sheetOfCase(file).kind // 'no-weight' while nobody weighed
 */
export function sheetOfCase(file: CaseFile, suspected: readonly Suspicion[] = []): SheetOfCase {
  const identity = file.theCase.latest('identity')
  const weighed = file.theCase.latest('weight')
  if (!identity) return { kind: 'no-identity' }
  if (!weighed) return { kind: 'no-weight' }
  const { species } = identity.body
  const { weight, bodyCondition } = weighed.body
  const { syringes } = ownDefaultsOf(file.house, dosingRules, file.people)
  const facts = { ...emergencyFacts, ...(syringes && { syringes }) }
  const animal = { species, weight: fromStored(weight), suspected, ...(bodyCondition !== null && { bodyCondition }) }
  return { kind: 'sheet', sheet: emergencySheet(animal, facts), weighed }
}
