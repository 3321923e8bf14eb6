import type { Sourced } from '#core/evidence/sourced.ts'

/** Days after an operation without an implant in which an infection of the wound is counted by surveillance. */
export const woundInfectionWindow = {
  value: 30,
  sources: ['wound-surveillance-framework'],
  where: 'definition of infection of a surgical wound, no implant',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-30',
} as const satisfies Sourced<number>
