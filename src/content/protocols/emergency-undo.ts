import { type EmergencyGroup, emergencyDose, emergencyStock } from '#core/dosing/emergency-row.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

const checked = '2026-11-25'
const both = ['dog', 'cat'] as const
const msd = {
  sources: ['msd-cpr-table-earlier'],
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked,
} as const satisfies Provenance
const fletcher = {
  sources: ['fletcher-2012'],
  where: 'drug chart by weight',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked,
} as const satisfies Provenance
const chart2012 = 'RECOVER 2012 chart'

/** Take back what was given: opioid, benzodiazepine, alpha-2 agonist. */
export const emergencyUndo = {
  call: 'undo',
  steps: [
    {
      value: 'Turn the vaporiser off and flush the circuit with oxygen.',
      species: both,
      sources: ['standard-emergency-texts'],
      known: 'remembered',
      strength: 'textbook',
      confidence: 'high',
      checked,
    },
  ],
  rows: [
    {
      drug: 'naloxone',
      name: 'Naloxone',
      species: both,
      routes: ['IV', 'IM', 'IO'],
      dose: { value: emergencyDose('0.04', 'mg/kg'), ...msd, where: 'upper end of 0.02 to 0.04 mg/kg' },
      edition: 'earlier table and RECOVER 2012 chart',
      reason: 'The one number that both editions hold; for an arrest or a stopped breath.',
      otherEditions: [
        { value: emergencyDose('0.04', 'mg/kg'), edition: chart2012, ...fletcher },
        { value: emergencyDose('0.02', 'mg/kg'), edition: 'earlier table, lower end', ...msd },
      ],
      stock: emergencyStock('0.4', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Repeat every 2 to 3 minutes to effect. It takes all opioid pain relief away and may wear off before the opioid; without an arrest give small steps.',
    },
    {
      drug: 'flumazenil',
      name: 'Flumazenil',
      species: both,
      routes: ['IV'],
      dose: { value: emergencyDose('0.01', 'mg/kg'), ...msd, where: 'lower end of 0.01 to 0.02 mg/kg' },
      edition: 'earlier table and RECOVER 2012 chart',
      reason: 'The one number that both editions hold.',
      otherEditions: [
        { value: emergencyDose('0.01', 'mg/kg'), edition: chart2012, ...fletcher },
        { value: emergencyDose('0.02', 'mg/kg'), edition: 'earlier table, upper end', ...msd },
      ],
      stock: emergencyStock('0.1', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Once, may be repeated hourly. Careful in an animal that has seizures.',
    },
    {
      drug: 'atipamezole',
      name: 'Atipamezole',
      species: both,
      routes: ['IV', 'IM'],
      dose: { value: emergencyDose('50', 'ug/kg'), ...msd, where: '0.05 mg/kg or the volume of the agonist' },
      edition: 'earlier table',
      reason: 'The number that was read; the chart of 2012 is remembered and twice as high.',
      otherEditions: [{ value: emergencyDose('100', 'ug/kg'), edition: chart2012, ...fletcher }],
      stock: emergencyStock('5', 'mg/mL'),
      diluent: 'sodium chloride 0.9 %',
      give: 'Once, with an alpha-2 agonist aboard. It takes the pain relief away too. Outside an arrest by the label: into the muscle, and not within 30 to 40 minutes of ketamine.',
    },
  ],
} as const satisfies EmergencyGroup
