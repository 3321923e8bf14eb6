import type { OwnOutcome } from '#core/evidence/own/own-outcome.ts'

/** Our own counts, for the surgeon: what each counts as here. */
export const ownOutcomeNames = {
  facial_nerve_deficit_any: 'Weak face, new or worse, of any duration',
  facial_nerve_deficit_permanent: 'Weak face that stayed',
  horner_any: 'Horner’s syndrome, of any duration',
  horner_permanent: 'Horner’s syndrome that stayed',
  vestibular_any: 'Head tilt or poor balance, of any duration',
  vestibular_permanent: 'Head tilt or poor balance that stayed',
  corneal_ulcer: 'Corneal ulcer',
  wound_infection_or_dehiscence: 'Wound infected or open',
  haemorrhage_intraop_any: 'Bleeding in theatre',
  perioperative_death: 'Death around the operation',
  deep_recurrence: 'Late swelling, abscess or draining tract',
  revision_surgery: 'Operated again',
  resolution_or_improved: 'Ear solved or improved after a year',
} as const satisfies Record<OwnOutcome, string>

export const countUnitNames = { ear: 'ears', animal: 'animals', procedure: 'operations' } as const
