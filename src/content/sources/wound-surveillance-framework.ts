import type { Source } from '#core/evidence/sourced.ts'

export const woundSurveillanceFramework = {
  id: 'wound-surveillance-framework',
  citation: 'Surveillance framework for surgical wounds in animals: definitions and two advised wound checks',
  seenAt: 'page of definitions',
  strength: 'web',
} as const satisfies Source
