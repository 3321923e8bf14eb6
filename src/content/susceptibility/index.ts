import type { SusceptibilityFacts } from '#core/culture/facts.ts'
import { agents } from './agents.ts'
import { editions } from './editions/index.ts'
import { organisms } from './organisms.ts'
import { preferences } from './preferences.ts'
import { rules } from './rules.ts'
import { tiers } from './tiers.ts'

/** All that is known here of organisms, drugs and breakpoints, as the reading of a culture takes it. */
export const susceptibility: SusceptibilityFacts = {
  editions,
  organisms,
  agents,
  rules,
  people: ['clsi-m100-35', 'clsi-m45', 'eucast-15'],
  usual: 'clsi-vet01s-7',
  tiers,
  preferences,
}
