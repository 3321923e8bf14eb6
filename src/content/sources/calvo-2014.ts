import type { Source } from '#core/evidence/sourced.ts'

export const calvo2014 = {
  id: 'calvo-2014',
  citation:
    'Calvo G et al. Development of a behaviour-based measurement tool with defined intervention level for assessing acute pain in cats. J Small Anim Pract 2014;55:622–629',
  seenAt: 'summary at fitzpatrickreferrals.co.uk',
  strength: 'study',
} as const satisfies Source
