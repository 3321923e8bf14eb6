import type { Source } from '#core/evidence/sourced.ts'

export const brodbelt2008 = {
  id: 'brodbelt-2008',
  citation:
    'Brodbelt D.C. et al. The risk of death: the confidential enquiry into perioperative small animal fatalities. Veterinary Anaesthesia and Analgesia 2008; 35: 365–373',
  seenAt: 'pubmed 18466167, abstract',
  strength: 'study',
} as const satisfies Source
