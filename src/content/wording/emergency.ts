import type { EmergencyCode } from '#core/dosing/emergency.ts'
import type { EmergencyCall, Suspicion } from '#core/dosing/emergency-row.ts'
import type { BloodMarkCode } from '#core/theatre/blood-marks.ts'

/** The call as it is shouted and printed. */
export const emergencyTitles = {
  'no-pulse': 'No pulse',
  'fast-wide-rhythm': 'Fast and wide on the screen',
  'slow-rhythm': 'Slow heart',
  undo: 'Undo what was given',
  bleeding: 'Bleeding',
  'local-anaesthetic-toxicity': 'Local anaesthetic in the blood',
  airway: 'Airway',
} as const satisfies Record<EmergencyCall, string>

/** An odd weight never silences the sheet: it is printed beside it. */
export const emergencyNotes = {
  'weight-unusual':
    '{weight} is unusual for a {species} (usual {low} to {high}). Is it the weight of today, in kilograms?',
  'weight-impossible':
    '{weight} lies outside what a {species} can weigh ({low} to {high}). Every volume below follows it: weigh again or correct the unit.',
  'blood-on-lean-weight':
    'Blood volume and the marks of its loss are counted on the lean weight, about {lean}, because fat holds little blood; every dose is counted on {weight}.',
  'house-syringes': 'House policy of {by}, {on}: syringes in mL are {syringes}. Because: {because}.',
} as const satisfies Record<EmergencyCode, string>

export const emergencyBars = {
  'local-anaesthetic-toxicity': 'Barred: local-anaesthetic toxicity is suspected. Not into a vein for any rhythm.',
} as const satisfies Record<Suspicion, string>

/** Pieces of the note behind a row. */
export const emergencyRowNotes = {
  edition: 'Edition: {edition}.',
  otherEdition: 'Another edition: {dose} ({edition}).',
  sameEdition: 'The same in another edition: {edition}.',
  barWhen: 'Not when local-anaesthetic toxicity is suspected.',
  diluteOnce:
    'Too little to draw from {from} ({undiluted}): mix 1 mL with 9 mL of {diluent}; this gives {strength}, and the volume here is of that mixture.',
  diluteAgain:
    'Too little to draw from {from} ({undiluted}): mix 1 mL with 9 mL of {diluent}, {times} times over, each time 1 mL of the last mixture; this gives {strength}, and the volume here is of that mixture.',
  tooSmall: 'Less than {least}, and this product must not be diluted: use the finest syringe and expect a large error.',
  followOpen: 'Then {perKg}: {rate}.',
  followFor: 'Then {perKg} for {minutes}: {rate}, in all {total}.',
} as const

/** What a loss of this size asks for, on the sheet. */
export const lossActs = {
  inform: 'say it aloud',
  replace: 'crystalloid, packed cell volume again',
  'transfusion-ready': 'blood ready',
  critical: 'critical',
} as const satisfies Record<BloodMarkCode, string>
