import { type EmergencyGroup, emergencyDose, emergencyStock } from '#core/dosing/emergency-row.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { quantity } from '#core/units/quantity.ts'

const checked = '2026-11-25'
const both = ['dog', 'cat'] as const
const caulfield = {
  sources: ['caulfield-2022'],
  where: 'abstract',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked,
} as const satisfies Provenance
const texts = {
  sources: ['standard-emergency-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked,
} as const satisfies Provenance

/** Tremor, seizure, or collapse after a block, a splash or an infusion of a local anaesthetic. */
export const emergencyLocalAnaestheticToxicity = {
  call: 'local-anaesthetic-toxicity',
  steps: [
    { value: 'Stop the drug, secure the airway, give oxygen. No lidocaine, for no rhythm.', species: both, ...texts },
    {
      value:
        'Watch for a day: it came back ten hours later in one cat. No more than about 8 mL/kg of lipid in a day (one source).',
      species: both,
      ...caulfield,
      sources: ['caulfield-2022', 'vet360-2016-lipid'],
    },
  ],
  rows: [
    {
      drug: 'lipid-emulsion',
      name: 'Lipid emulsion 20 %',
      species: both,
      routes: ['IV'],
      dose: { value: emergencyDose('1.5', 'mL/kg'), ...caulfield },
      edition: 'Caulfield 2022; infusion 30 to 60 minutes in Vet360 2016',
      reason: 'The one number of the case report and of the page on lipid rescue.',
      otherEditions: [],
      stock: null,
      diluent: null,
      give: 'Over 1 to 5 minutes (cat: 5), then the infusion; the bolus may be repeated.',
      follow: { value: { rate: quantity('0.25', 'mL/kg/min'), minutes: quantity('25', 'min') }, ...caulfield },
    },
    {
      drug: 'diazepam',
      name: 'Diazepam',
      species: both,
      routes: ['IV'],
      dose: { value: emergencyDose('0.5', 'mg/kg'), ...texts, where: '0.5 to 1 mg/kg' },
      edition: 'standard emergency texts',
      reason: 'A first dose for a seizure; repeated to effect rather than doubled at once.',
      otherEditions: [{ value: emergencyDose('1', 'mg/kg'), edition: 'same texts, upper end', ...texts }],
      stock: emergencyStock('5', 'mg/mL'),
      diluent: null,
      give: 'For a seizure; may be repeated. In its own syringe, never diluted or mixed.',
    },
  ],
} as const satisfies EmergencyGroup
