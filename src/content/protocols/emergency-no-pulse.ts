import { type EmergencyGroup, emergencyDose, emergencyStock } from '#core/dosing/emergency-row.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

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

/** Arrest: what is drawn first, and what only late. */
export const emergencyNoPulse = {
  call: 'no-pulse',
  steps: [
    {
      value:
        'Compress 100 to 120 times a minute, breathe 10 times a minute, change hands every 2 minutes; 30 to 2 when there is no tube.',
      species: both,
      sources: ['recover-public-summaries'],
      known: 'read',
      strength: 'web',
      confidence: 'high',
      checked,
    },
  ],
  rows: [
    {
      drug: 'epinephrine',
      name: 'Epinephrine',
      species: both,
      routes: ['IV', 'IO'],
      dose: { value: emergencyDose('0.01', 'mg/kg'), ...merck },
      edition: currentMerck,
      reason: 'The only dose of the current table; the 2024 guidelines no longer advise the high one.',
      otherEditions: [
        {
          value: emergencyDose('0.1', 'mg/kg'),
          edition: 'high dose of 2012, no longer advised in 2024',
          sources: ['angell-2025-recover-2024-summary'],
          known: 'read',
          strength: 'web',
          confidence: 'high',
          checked,
        },
      ],
      stock: emergencyStock('1', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Every 3 to 5 minutes, that is every other 2-minute round.',
    },
    {
      drug: 'vasopressin',
      name: 'Vasopressin',
      species: both,
      routes: ['IV', 'IO'],
      dose: { value: emergencyDose('0.8', '[iU]/kg'), ...merck },
      edition: currentMerck,
      reason: 'The one number of the current table; the earlier one gives 0.4 to 0.9.',
      otherEditions: [{ value: emergencyDose('0.8', '[iU]/kg'), edition: 'RECOVER 2012 chart', ...fletcher }],
      stock: emergencyStock('20', '[iU]/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Instead of or together with epinephrine, every 3 to 5 minutes.',
    },
    {
      drug: 'atropine',
      name: 'Atropine',
      species: both,
      routes: ['IV', 'IO'],
      dose: { value: emergencyDose('0.05', 'mg/kg'), ...merck },
      edition: currentMerck,
      reason: 'The current table; it gives one early dose and no repeats.',
      otherEditions: [
        { value: emergencyDose('0.04', 'mg/kg'), edition: 'earlier table, repeatable', ...msd },
        { value: emergencyDose('0.04', 'mg/kg'), edition: 'RECOVER 2012 chart, repeatable', ...fletcher },
      ],
      stock: emergencyStock('0.54', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Once, early, when a high vagal tone is likely (pulling at the bulla).',
    },
    {
      drug: 'sodium-bicarbonate',
      name: 'Sodium bicarbonate 8.4 %',
      species: both,
      routes: ['IV'],
      dose: { value: emergencyDose('1', 'mmol/kg'), ...merck },
      edition: currentMerck,
      reason: 'The one number of the current table.',
      otherEditions: [],
      stock: emergencyStock('1', 'mmol/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Late only: after 15 minutes with a pH below 7.0, or for high potassium. Never in one line with calcium or catecholamines.',
    },
  ],
} as const satisfies EmergencyGroup
