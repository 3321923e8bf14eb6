import type { InducibleRules, PrintedSum, StandsFor } from '#core/culture/rules.ts'
import { clsiByMemory, inDataset, ours } from './provenance.ts'

/** Erythromycin R with clindamycin S or I may hide resistance that the drug itself brings out. */
export const inducible: InducibleRules = {
  organisms: ['staphylococcus', 'streptococcus'],
  inducedBy: 'erythromycin',
  agent: 'clindamycin',
  untestedIsR: ['staphylococcus-aureus'],
  because: {
    ...clsiByMemory,
    sources: ['clsi-remembered', 'eucast-remembered', 'd-test-pet-mrsa-2008'],
    where:
      'D-test; 55 % of such S. aureus of pets were inducible, none of the S. pseudintermedius in that study, some in others',
  },
}

/** One drug standing for another, and what may not. */
export const standsFor: readonly StandsFor[] = [
  {
    tested: 'ampicillin',
    reports: { agents: ['amoxicillin'] },
    carries: 'all',
    because: { ...clsiByMemory, where: 'one result for both' },
  },
  {
    tested: 'tetracycline',
    of: { organisms: ['staphylococcus', 'streptococcus', 'enterococcus', 'enterobacterales', 'pasteurella'] },
    reports: { agents: ['doxycycline', 'minocycline'] },
    carries: 'S',
    openIfR: true,
    because: {
      ...inDataset,
      sources: ['mevis-2023-tables', 'amr-dataset-2025'],
      where: 'S carries over; R settles nothing by CLSI and by EUCAST from v12 on (its older expert rules 3.3 said R)',
    },
  },
  {
    tested: 'erythromycin',
    reports: { agents: ['azithromycin', 'clarithromycin'] },
    carries: 'all',
    because: { ...inDataset, where: 'rules for macrolides' },
  },
  {
    tested: 'erythromycin',
    reports: { agents: ['clindamycin'] },
    carries: 'nothing',
    because: { ...inDataset, where: 'rules for macrolides' },
  },
  {
    tested: 'cefalexin',
    reports: { agents: ['cefadroxil'] },
    carries: 'all',
    because: { ...clsiByMemory, confidence: 'medium' },
  },
  {
    tested: 'cefalotin',
    of: { organisms: ['staphylococcus'] },
    reports: { agents: ['cefalexin'] },
    carries: 'nothing',
    because: {
      ...inDataset,
      sources: ['papich-lindeman-2018'],
      where: '66.3 % of PBP2a isolates had cefalotin at 2 mg/L or less, 4.3 % cefalexin',
      strength: 'study',
    },
  },
  {
    tested: 'cefazolin',
    reports: { agents: ['cefalexin'] },
    carries: 'nothing',
    because: { ...clsiByMemory, where: 'only in urine, and by a human rule', confidence: 'medium' },
  },
  {
    tested: 'cefpodoxime',
    reports: { agents: ['cefovecin'] },
    carries: 'nothing',
    because: { ...clsiByMemory, confidence: 'medium' },
  },
  {
    tested: 'cefovecin',
    reports: { agents: ['cefpodoxime'] },
    carries: 'nothing',
    because: { ...clsiByMemory, confidence: 'medium' },
  },
  {
    tested: 'ciprofloxacin',
    reports: { agents: ['enrofloxacin', 'marbofloxacin'] },
    carries: 'nothing',
    because: { ...inDataset, sources: ['cole-2006'], where: 'disks of 12 of 29 dogs did not agree', strength: 'study' },
  },
  {
    tested: 'ciprofloxacin',
    of: { organisms: ['enterobacterales'] },
    reports: { families: ['fluoroquinolone'] },
    carries: 'R',
    because: { ...inDataset, where: 'expert rules 3.3' },
  },
  {
    tested: 'levofloxacin',
    of: { organisms: ['staphylococcus'] },
    reports: { families: ['fluoroquinolone'] },
    carries: 'R',
    because: { ...inDataset, where: 'expert rules' },
  },
  {
    tested: 'moxifloxacin',
    of: { organisms: ['staphylococcus'] },
    reports: { families: ['fluoroquinolone'] },
    carries: 'R',
    because: { ...inDataset, where: 'expert rules' },
  },
  {
    tested: 'benzylpenicillin',
    of: { organisms: ['beta-haemolytic-streptococcus-groups-abcg'] },
    reports: {
      families: [
        'aminopenicillin',
        'aminopenicillin-with-inhibitor',
        'first-generation-cephalosporin',
        'second-generation-cephalosporin',
        'third-generation-cephalosporin',
        'fourth-generation-cephalosporin',
        'carbapenem',
      ],
      except: ['ceftazidime'],
    },
    carries: 'S',
    because: { ...inDataset, where: 'streptococci of groups A, B, C and G' },
  },
  {
    tested: 'enrofloxacin',
    reports: { agents: ['pradofloxacin', 'ciprofloxacin'] },
    carries: 'nothing',
    because: ours,
  },
]

/** Some laboratories print trimethoprim with its sulfonamide as one sum: 20 parts for every part of trimethoprim. */
export const printedSums: readonly PrintedSum[] = [
  {
    value: {
      agent: 'trimethoprim-sulfonamide',
      amounts: ['5', '10', '20', '40', '80', '160', '320'],
      partnerIsLarger: true,
    },
    ...clsiByMemory,
    where: 'ratio 1:19; no step of the dilutions of trimethoprim has these numbers',
  },
]
