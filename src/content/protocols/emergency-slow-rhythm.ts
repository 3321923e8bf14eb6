import { type EmergencyGroup, emergencyDose, emergencyStock } from '#core/dosing/emergency-row.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

const checked = '2026-11-25'
const both = ['dog', 'cat'] as const
const handout = {
  sources: ['sa-anesthesia-drug-dosages-2022'],
  known: 'read',
  strength: 'handout',
  confidence: 'medium',
  checked,
} as const satisfies Provenance

/** Slow heart with a low pressure, mostly vagal: traction at the bulla or the brainstem nearby. */
export const emergencySlowRhythm = {
  call: 'slow-rhythm',
  steps: [
    {
      value: 'Stop pulling and let go of the bulla first. Look at depth of anaesthesia, oxygen and temperature.',
      species: both,
      sources: ['house-judgement'],
      where: 'vagal or brainstem bradycardia is warned of during bulla curettage',
      known: 'house',
      strength: 'practice',
      confidence: 'medium',
      checked,
    },
    {
      value: 'Slow with a high pressure after an alpha-2 agonist: no anticholinergic; undo the agonist instead.',
      species: both,
      sources: ['house-judgement', 'sa-anesthesia-drug-dosages-2022'],
      known: 'remembered',
      strength: 'handout',
      confidence: 'medium',
      checked,
    },
  ],
  rows: [
    {
      drug: 'atropine',
      name: 'Atropine',
      species: both,
      routes: ['IV', 'IM'],
      dose: { value: emergencyDose('0.04', 'mg/kg'), ...handout, where: '0.02 to 0.04 mg/kg' },
      edition: 'teaching hand-out 2022, and the earlier arrest table',
      reason:
        'The one number that the hand-out and the earlier arrest table share; a small dose may slow the heart further.',
      otherEditions: [
        { value: emergencyDose('0.02', 'mg/kg'), edition: 'teaching hand-out 2022, lower end', ...handout },
      ],
      stock: emergencyStock('0.54', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Once, may be repeated. Tears are fewer for up to a day: more eye ointment, tear test later.',
    },
    {
      drug: 'glycopyrronium',
      name: 'Glycopyrronium',
      species: both,
      routes: ['IV', 'IM'],
      dose: { value: emergencyDose('0.01', 'mg/kg'), ...handout, where: '0.01 to 0.02 mg/kg as premedication' },
      edition: 'teaching hand-out 2022',
      reason: 'The one number that the hand-out (0.01 to 0.02) and the usual intravenous range (0.005 to 0.01) share.',
      otherEditions: [
        {
          value: emergencyDose('0.005', 'mg/kg'),
          edition: 'usual intravenous range, lower end',
          sources: ['anaesthesia-texts'],
          known: 'remembered',
          strength: 'textbook',
          confidence: 'medium',
          checked,
        },
      ],
      stock: emergencyStock('0.2', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Once, may be repeated. The heart may slow for a moment first.',
    },
  ],
} as const satisfies EmergencyGroup
