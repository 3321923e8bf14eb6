import type { Species } from '#core/animal/species.ts'
import type { EmergencyFacts, EmergencySheet } from '#core/dosing/emergency.ts'
import type { EmergencyLine } from '#core/dosing/emergency-line.ts'
import { type EmergencyCall, type EmergencyStep, emergencyCalls } from '#core/dosing/emergency-row.ts'

/** What is shouted in the theatre: the calls of the sheet on the wall, and low pressure, which has steps only. */
export const roomCalls = [...emergencyCalls, 'low-pressure'] as const
export type RoomCall = (typeof roomCalls)[number]

/** Whether a word of an address is something that is shouted. Example: `isRoomCall('bleeding') // true`. */
export function isRoomCall(word: string): word is RoomCall {
  return (roomCalls as readonly string[]).includes(word)
}

/** Steps of its own, and rows of the sheet that belong to another call. */
export type LowPressure = {
  readonly steps: readonly EmergencyStep[]
  readonly borrows: { readonly call: EmergencyCall; readonly drugs: readonly string[] }
}

/** What to do at a call, in order. Where nobody knows the species, only what holds for both. */
export function stepsOf(
  call: RoomCall,
  species: Species | undefined,
  { groups }: Pick<EmergencyFacts, 'groups'>,
  lowPressure: LowPressure,
): readonly EmergencyStep[] {
  const steps = call === 'low-pressure' ? lowPressure.steps : (groups.find((one) => one.call === call)?.steps ?? [])
  const needed: readonly Species[] = species === undefined ? ['dog', 'cat'] : [species]
  return steps.filter((step) => needed.every((one) => step.species.includes(one)))
}

/**
 * The rows of the sheet that are drawn up at a call, as the sheet of this animal gives them.
 *
 * @example linesOf('low-pressure', sheet, lowPressure)[0]?.row.drug // 'balanced-crystalloid'
 */
export function linesOf(call: RoomCall, sheet: EmergencySheet, { borrows }: LowPressure): readonly EmergencyLine[] {
  const of = (wanted: EmergencyCall) => sheet.groups.find((one) => one.call === wanted)?.lines ?? []
  if (call !== 'low-pressure') return of(call)
  return of(borrows.call).filter(({ row }) => borrows.drugs.includes(row.drug))
}
