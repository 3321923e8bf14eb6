import { type EmergencyGroup, emergencyDose, emergencyStock } from '#core/dosing/emergency-row.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { quantity } from '#core/units/quantity.ts'

const checked = '2026-11-25'
const both = ['dog', 'cat'] as const
const merck = {
  sources: ['merck-cpr-table'],
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked,
} as const satisfies Provenance
const msd = { ...merck, sources: ['msd-cpr-table-earlier'] } as const
const fletcher = {
  sources: ['fletcher-2012'],
  where: 'drug chart by weight',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked,
} as const satisfies Provenance
const currentMerck = 'Merck table, current edition'

/** Ventricular tachycardia or fibrillation. */
export const emergencyFastWideRhythm = {
  call: 'fast-wide-rhythm',
  steps: [
    {
      value:
        'Without a pulse: one shock, then 2 minutes of compressions. Drugs of this group only after two failed shocks.',
      species: both,
      ...merck,
    },
    {
      value: 'There is no lidocaine row for the cat: the current table gives lidocaine to dogs only.',
      species: ['cat'],
      ...merck,
    },
  ],
  rows: [
    {
      drug: 'lidocaine',
      name: 'Lidocaine',
      species: ['dog'],
      routes: ['IV', 'IO'],
      dose: { value: emergencyDose('2', 'mg/kg'), ...merck },
      edition: currentMerck,
      reason: 'The one number of the current table; the earlier one gives 2 to 4.',
      otherEditions: [{ value: emergencyDose('4', 'mg/kg'), edition: 'earlier table, upper end of 2 to 4', ...msd }],
      stock: emergencyStock('20', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Slowly when there is a pulse. May be repeated; blocks count toward 8 mg/kg in all (remembered).',
      barredBy: 'local-anaesthetic-toxicity',
    },
    {
      drug: 'amiodarone',
      name: 'Amiodarone',
      species: ['cat'],
      routes: ['IV', 'IO'],
      dose: { value: emergencyDose('5', 'mg/kg'), ...merck },
      edition: currentMerck,
      reason: 'The one number of the current table, which names it for cats.',
      otherEditions: [{ value: emergencyDose('5', 'mg/kg'), edition: 'RECOVER 2012 chart', ...fletcher }],
      stock: emergencyStock('50', 'mg/mL'),
      diluent: null,
      give: 'Once.',
    },
    {
      drug: 'amiodarone',
      name: 'Amiodarone',
      species: ['dog'],
      routes: ['IV', 'IO'],
      dose: { value: emergencyDose('5', 'mg/kg'), ...msd, confidence: 'medium' },
      edition: 'earlier table; the current one lists cats only',
      reason: 'Second choice behind lidocaine; no current number for dogs was found.',
      otherEditions: [{ value: emergencyDose('5', 'mg/kg'), edition: 'RECOVER 2012 chart', ...fletcher }],
      stock: emergencyStock('50', 'mg/mL'),
      diluent: null,
      give: 'Second choice. Not the product with polysorbate 80 or benzyl alcohol while there is a pulse.',
    },
    {
      drug: 'esmolol',
      name: 'Esmolol',
      species: both,
      routes: ['IV', 'IO'],
      dose: { value: emergencyDose('0.5', 'mg/kg'), ...merck },
      edition: currentMerck,
      reason: 'The one number of the current table.',
      otherEditions: [],
      stock: emergencyStock('10', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Over 10 minutes, then the infusion; when the rhythm resists two shocks.',
      follow: { value: { rate: quantity('50', 'ug/kg/min') }, ...merck },
    },
  ],
} as const satisfies EmergencyGroup
