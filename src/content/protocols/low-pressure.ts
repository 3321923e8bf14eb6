import type { Provenance } from '#core/evidence/sourced.ts'
import type { LowPressure } from '#core/theatre/room-call.ts'

const checked = '2026-11-29'
const both = ['dog', 'cat'] as const
const aaha = {
  sources: ['aaha-2020-hypotension'],
  where: 'order and items of the page on hypotension',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked,
} as const satisfies Provenance
const abstract = { known: 'read', where: 'abstract', strength: 'study', confidence: 'high', checked } as const

/**
 * Low pressure under anaesthesia, step after step. It stands on the screen of the theatre and not on the sheet on the
 * wall: its drugs are ranges, so that a person chooses in the dose plan; only the fluid bolus is one number.
 */
export const lowPressure: LowPressure = {
  steps: [
    {
      value: 'Low is a mean below 60 to 70 mmHg, or a systolic below 80 to 90. Measure once more, then act.',
      species: both,
      ...aaha,
      where: 'definition on the page on hypotension',
    },
    { value: 'Lighten: vaporiser down; more pain relief or the block carries the rest.', species: both, ...aaha },
    { value: 'A fluid bolus, then look again.', species: both, ...aaha },
    {
      value:
        'Slow heart with it: an anticholinergic (see “Slow heart”), but not while an alpha-2 agonist holds the vessels tight.',
      species: both,
      ...aaha,
    },
    {
      value:
        'Still low: ephedrine, dopamine or dobutamine; then norepinephrine or phenylephrine. Each is a range: the dose is chosen in the dose plan.',
      species: both,
      ...aaha,
    },
    {
      value: 'In dogs under isoflurane ephedrine lasted less than 5 minutes in one study.',
      species: ['dog'],
      sources: ['chen-2007'],
      ...abstract,
    },
    {
      value: 'In cats dobutamine did not raise the mean pressure in one study.',
      species: ['cat'],
      sources: ['pascoe-2006'],
      ...abstract,
    },
    { value: 'Look for why: bleeding, temperature, glucose, electrolytes.', species: both, ...aaha },
  ],
  borrows: { call: 'bleeding', drugs: ['balanced-crystalloid'] },
}
