import type { SusceptibilityFacts } from '#core/culture/facts.ts'
import { agents } from './agents.ts'
import { editions } from './editions/index.ts'
import { organisms } from './organisms.ts'
import { preferences } from './preferences.ts'
import { tiers } from './tiers.ts'

/** All that is known here of organisms, drugs and breakpoints, as the reading of a culture takes it. */
export const susceptibility: SusceptibilityFacts = { editions, organisms, agents, tiers, preferences }
