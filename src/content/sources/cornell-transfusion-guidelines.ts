import type { Source } from '#core/evidence/sourced.ts'

export const cornellTransfusionGuidelines = {
  id: 'cornell-transfusion-guidelines',
  citation: 'Cornell University, Animal Health Diagnostic Center, comparative coagulation: transfusion guidelines',
  seenAt: 'excerpt of the page at vet.cornell.edu',
  strength: 'handout',
} as const satisfies Source
