import { type EmergencyGroup, emergencyDose, emergencyStock } from '#core/dosing/emergency-row.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

const checked = '2026-11-25'
const both = ['dog', 'cat'] as const
const aaha2020 = {
  sources: ['aaha-2020-hypotension'],
  where: '5 to 20 mL/kg',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked,
} as const satisfies Provenance

/** Sudden bleeding in the depth of the wound. */
export const emergencyBleeding = {
  call: 'bleeding',
  steps: [
    {
      value:
        'Brisk and unseen at the front of the bony canal: think of the retroglenoid vein. Press with a swab tip at the very source; then wax or haemostatic, pack, and wait.',
      species: both,
      sources: ['smeak-inpanbutr-2005'],
      where: 'abstract and figures; wax, packing and waiting are trade practice',
      known: 'read',
      strength: 'study',
      confidence: 'medium',
      checked,
    },
    {
      value:
        'Pulsing: a carotid or maxillary branch. Press, suck, clip only what is seen, never blind. Tying the carotid is the last resort and far less safe in the cat.',
      species: both,
      sources: ['house-judgement'],
      where: 'trade practice, remembered',
      known: 'remembered',
      strength: 'practice',
      confidence: 'medium',
      checked,
    },
    {
      value:
        'Change the suction jar, weigh the swabs, say the loss aloud every 5 to 10 minutes. Stop opening bone in a red field.',
      species: both,
      sources: ['house-judgement'],
      known: 'house',
      strength: 'practice',
      confidence: 'medium',
      checked,
    },
    {
      value: 'Type and match before blood is given. A cat is always typed, also before its first transfusion.',
      species: both,
      sources: ['transfusion-texts'],
      known: 'remembered',
      strength: 'textbook',
      confidence: 'high',
      checked,
    },
  ],
  rows: [
    {
      drug: 'tranexamic-acid',
      name: 'Tranexamic acid',
      species: ['dog'],
      routes: ['IV'],
      dose: {
        value: emergencyDose('10', 'mg/kg'),
        sources: ['kelmer-2015', 'tranexamic-acid-dogs-cats-2018-2019'],
        where: 'abstracts',
        known: 'read',
        strength: 'study',
        confidence: 'high',
        checked,
      },
      edition: 'abstracts of 2015 and 2018–2019',
      reason: 'The one number of both studies; vomiting was seen at 15 to 20 mg/kg given fast.',
      otherEditions: [],
      stock: emergencyStock('100', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Slowly, over 10 to 20 minutes.',
    },
    {
      drug: 'tranexamic-acid',
      name: 'Tranexamic acid',
      species: ['cat'],
      routes: ['IV'],
      dose: {
        value: emergencyDose('10', 'mg/kg'),
        sources: ['tranexamic-acid-28-cats', 'tranexamic-acid-dogs-cats-2018-2019'],
        where: 'median dose',
        known: 'read',
        strength: 'study',
        confidence: 'medium',
        checked,
      },
      edition: 'retrospective series',
      reason: 'The median of both series.',
      otherEditions: [],
      stock: emergencyStock('100', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Slowly. Drooling is seen.',
    },
    {
      drug: 'balanced-crystalloid',
      name: 'Balanced crystalloid',
      species: ['dog'],
      routes: ['IV'],
      dose: { value: emergencyDose('10', 'mL/kg'), ...aaha2020 },
      edition: 'AAHA 2020, within 5 to 20; Today’s Veterinary Practice 2018, 10 to 20',
      reason: 'A first step that both ranges hold; judged again before the next.',
      otherEditions: [
        {
          value: emergencyDose('20', 'mL/kg'),
          edition: 'upper end of both ranges',
          ...aaha2020,
          sources: ['aaha-2020-hypotension', 'tvp-2018-fluids'],
        },
      ],
      stock: null,
      diluent: null,
      give: 'Over 15 to 20 minutes, then look again. Not in heart failure.',
    },
    {
      drug: 'balanced-crystalloid',
      name: 'Balanced crystalloid',
      species: ['cat'],
      routes: ['IV'],
      dose: { value: emergencyDose('5', 'mL/kg'), ...aaha2020, confidence: 'medium' },
      edition: 'AAHA 2020, within 5 to 20; the 2024 guidelines go 5 to 10 in cats (remembered)',
      reason: 'A small first step, because cats overload easily; judged again before the next.',
      otherEditions: [
        {
          value: emergencyDose('10', 'mL/kg'),
          edition: 'Today’s Veterinary Practice 2018, lower end for cats',
          ...aaha2020,
          sources: ['tvp-2018-fluids'],
          where: '10 to 15 mL/kg',
          strength: 'web',
        },
      ],
      stock: null,
      diluent: null,
      give: 'Over 15 to 20 minutes, listen to the chest, then look again. Not in heart disease.',
    },
  ],
} as const satisfies EmergencyGroup
