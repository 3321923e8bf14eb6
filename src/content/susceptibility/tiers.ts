import type { StewardshipTier } from '#core/culture/stewardship.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

/** What the copies of the summary page name themselves. */
const read = {
  sources: ['ema-ameg-2019'],
  where: 'the four categories and the classes that the summary page names',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-30',
} as const satisfies Provenance

/** What stands in the whole list, which was not at hand. */
const remembered = { ...read, where: 'the whole list, which was not read', known: 'remembered' } as const

/**
 * Which drugs to spare, by the European categories. National law can be stricter and is not in it.
 * Ceftaroline and ceftobiprole stand with A as drugs that no animal has.
 */
export const tiers = [
  {
    value: {
      category: 'A',
      families: [
        'carbapenem',
        'monobactam',
        'carboxypenicillin',
        'ureidopenicillin',
        'antipseudomonal-penicillin-with-inhibitor',
        'mrsa-cephalosporin',
        'glycopeptide',
        'oxazolidinone',
        'lipopeptide',
        'glycylcycline',
        'streptogramin',
        'phosphonic-acid',
        'mupirocin',
        'rifamycin',
      ],
      agents: [],
    },
    ...remembered,
  },
  {
    value: {
      category: 'B',
      families: [
        'fluoroquinolone',
        'quinolone',
        'third-generation-cephalosporin',
        'fourth-generation-cephalosporin',
        'polymyxin',
      ],
      agents: [],
    },
    ...read,
  },
  {
    value: {
      category: 'C',
      families: ['aminoglycoside', 'aminopenicillin-with-inhibitor', 'lincosamide', 'macrolide'],
      agents: [],
    },
    ...read,
  },
  {
    value: {
      category: 'C',
      families: ['first-generation-cephalosporin', 'second-generation-cephalosporin', 'cephamycin', 'phenicol'],
      agents: ['rifaximin'],
    },
    ...remembered,
  },
  {
    value: {
      category: 'D',
      families: [
        'aminopenicillin',
        'penicillin',
        'staphylococcal-penicillin',
        'tetracycline',
        'folate-inhibitor',
        'fusidane',
        'nitroimidazole',
        'nitrofuran',
        'bacitracin',
        'aminocyclitol',
      ],
      agents: [],
    },
    ...remembered,
  },
] as const satisfies readonly StewardshipTier[]
