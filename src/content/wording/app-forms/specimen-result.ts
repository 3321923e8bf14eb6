import type { FormWords } from '#core/forms/words.ts'
import { tissueDiagnoses } from '../../follow-up/tissue-diagnoses.ts'
import { specimenWords } from '../report.ts'

export const specimenResult = {
  kind: 'specimen-result',
  purpose: 'What the laboratory wrote, raw. Reading and deciding is another entry.',
  sections: { report: 'The report', isolates: 'What grew', tissue: 'Tissue or cells', words: 'Text of the report' },
  fields: {
    specimen: { label: 'Which specimen?' },
    laboratory: { label: 'Laboratory', none: 'not named' },
    accession: {
      label: 'Number of the report',
      help: 'The laboratory’s own. A later report under it replaces this one.',
    },
    status: { label: 'Report', options: specimenWords.status },
    came: {
      label: 'How it came in',
      options: {
        typed: 'typed',
        'from-paper': 'typed from paper that is kept beside it',
        pasted: 'pasted',
        table: 'a table of the laboratory',
        hl7: 'a message of the laboratory',
      },
    },
    growth: { label: 'Growth', options: { none: 'no growth', growth: 'growth', 'not-a-culture': 'not a culture' } },
    standard: {
      label: 'Standard and edition, as printed',
      help: 'For example CLSI VET01S ed7. Empty when none is printed.',
    },
    isolates: { label: 'What grew', add: 'Add an organism', item: 'Organism {number}' },
    'isolates.key': { label: 'Number of the isolate' },
    'isolates.organism': { label: 'Organism, as printed' },
    'isolates.species': { label: 'Read as' },
    'isolates.amount': { label: 'Amount of growth, as printed' },
    'isolates.results': { label: 'Drugs tested', add: 'Add a drug', item: 'Drug {number}' },
    'isolates.results.drug': { label: 'Drug, as printed' },
    'isolates.results.agent': { label: 'Read as' },
    'isolates.results.method': {
      label: 'What the number is',
      none: 'no number, or not said',
      options: { MIC: 'MIC, mg/L', DISK: 'zone, mm' },
    },
    'isolates.results.raw': { label: 'Result, as printed', help: 'With its sign and unit, for example <=0.5 mg/L.' },
    'isolates.results.disk': { label: 'Disk content, as printed' },
    'isolates.results.category': { label: 'Category of the laboratory, as printed' },
    'isolates.tests': { label: 'Other tests', add: 'Add a test', item: 'Test {number}' },
    'isolates.tests.test': {
      label: 'Test',
      options: {
        'd-test': 'inducible clindamycin resistance (D-test)',
        meca: 'mecA or mecC',
        pbp2a: 'PBP2a',
        'esbl-confirmation': 'ESBL, confirmed with clavulanate',
        ampc: 'AmpC',
        carbapenemase: 'carbapenemase',
        'beta-lactamase': 'beta-lactamase of staphylococci',
      },
    },
    'isolates.tests.result': { label: 'Result', options: { positive: 'positive', negative: 'negative' } },
    tissue: { label: 'Tissue or cells', none: 'words of the report only', open: 'diagnosis and edge' },
    'tissue.diagnosis': { label: 'Diagnosis, as printed' },
    'tissue.tumour': {
      label: 'Read as',
      none: 'none of these',
      options: Object.fromEntries(tissueDiagnoses.map(({ id, name }) => [id, name])),
    },
    'tissue.margins': {
      label: 'Edge of the tissue',
      options: {
        clear: 'free',
        narrow: 'free, but narrow',
        involved: 'not free',
        'not-stated': 'the report does not say',
      },
    },
    'tissue.marginMillimetres': { label: 'Narrowest free edge in mm' },
    text: { label: 'Text of the report', help: 'For histology and cytology: the wording that matters.' },
  },
} as const satisfies FormWords
